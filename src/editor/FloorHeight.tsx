import { useMemo } from 'react';
import type { Vec2 } from '../geometry/vector.ts';
import { type FloorReport, floorOver } from '../report/floor.ts';
import type { LengthUnit } from '../units/lengthText.ts';
import { boxBeside } from './labels/boxBeside.ts';
import { FONTS } from './labels/lettering.ts';
import { measureText } from './labels/measureText.ts';
import { type Furniture, reservedZones } from './labels/reserved.ts';
import { type KitView, kitToScreen } from './view/kitView.ts';
import { floorSpotText } from './words.ts';

interface Props {
  readonly floor: FloorReport;
  readonly spot: Vec2;
  readonly kitView: KitView;
  readonly furniture: Furniture;
  readonly unit: LengthUnit;
}

/** Round the text, px; plan.css has no padding of its own. */
const ROUND = 12;
const HEIGHT = 32;

/** How low sticks, hands and forearms come over the tapped spot, written beside it, wherever there is room for all of it. */
export function FloorHeight({ floor, spot, kitView, furniture, unit }: Props) {
  const { size } = kitView.view;
  const text = floorSpotText(floorOver(floor, spot), unit);
  const { x, y } = kitToScreen(kitView, spot);
  const box = useMemo(() => {
    const form = {
      text,
      width: Math.ceil(measureText(text, FONTS.side)) + 2 * ROUND,
      height: HEIGHT,
    };
    return boxBeside({ x, y }, form, { size, reserved: reservedZones(size, furniture) });
  }, [text, x, y, size, furniture]);
  if (!box) return null;
  return (
    <>
      <p className="plan-floor-height" role="status" style={{ ...box, font: FONTS.side }}>
        {text}
      </p>
      <span className="plan-floor-spot" aria-hidden="true" style={{ left: x, top: y }} />
    </>
  );
}
