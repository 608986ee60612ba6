import type { Vec2 } from '../geometry/vector.ts';
import { type FloorReport, floorOver } from '../report/floor.ts';
import type { LengthUnit } from '../units/lengthText.ts';
import { type KitView, kitToScreen } from './view/kitView.ts';
import { floorSpotText } from './words.ts';

interface Props {
  readonly floor: FloorReport;
  readonly spot: Vec2;
  readonly kitView: KitView;
  readonly unit: LengthUnit;
}

/** How low sticks, hands and forearms come over the tapped spot, written beside it. */
export function FloorHeight({ floor, spot, kitView, unit }: Props) {
  const { x, y } = kitToScreen(kitView, spot);
  return (
    <p className="plan-floor-height" role="status" style={{ left: x, top: y }}>
      {floorSpotText(floorOver(floor, spot), unit)}
    </p>
  );
}
