import { planCoordinate } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

interface SpotFieldsProps {
  /** Whose place it is, for the undo button. */
  readonly of: string;
  readonly spot: Spot;
  readonly apply: (layout: Layout, to: Spot) => Layout;
  /** Where x and y count from: the throne unless said otherwise. */
  readonly labels?: { readonly x: string; readonly y: string };
}

const fromThrone = { x: 'Right of the throne', y: 'In front of the throne' };

/** A place on the plan in two numbers; left and behind are negative. */
export function SpotFields({ of, spot, apply, labels = fromThrone }: SpotFieldsProps) {
  const limits = limitsOf(planCoordinate);
  return (
    <>
      <NumberField
        label={labels.x}
        step={`Move ${of}`}
        value={spot.x}
        measure={LENGTH}
        limits={limits}
        apply={(layout, x) => apply(layout, { x, y: spot.y })}
      />
      <NumberField
        label={labels.y}
        step={`Move ${of}`}
        value={spot.y}
        measure={LENGTH}
        limits={limits}
        apply={(layout, y) => apply(layout, { x: spot.x, y })}
      />
    </>
  );
}
