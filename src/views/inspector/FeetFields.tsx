import { heldBy, onStand } from '../../layout/catalogue/defaults/usualPieces.ts';
import { changePiece } from '../../layout/edit/change.ts';
import { turnFeet } from '../../layout/edit/pieces.ts';
import { azimuthField } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { isDrum, isStruck, type Struck } from '../../layout/pieces/piece.ts';
import { legsSupport, type Support, standSupport } from '../../layout/pieces/support.ts';
import { canBeHeldBy } from '../../layout/references.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { DIRECTION, LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Gives a piece another support; a hi-hat takes only a stand. */
export function changeSupport(layout: Layout, id: string, support: Support): Layout {
  return changePiece(layout, id, (piece) => {
    if (!isStruck(piece)) return piece;
    if (piece.kind !== 'hiHat') return { ...piece, support };
    return support.kind === 'stand' ? { ...piece, support } : piece;
  });
}

/** What carries a piece, and where its feet are. */
export function FeetFields({ piece }: { readonly piece: Struck }) {
  const { support } = piece;
  return (
    <Group title="What carries it" folded>
      {piece.kind !== 'hiHat' && <CarrierField piece={piece} />}
      {support.kind === 'stand' && <StandFeet piece={piece} support={support} />}
      {support.kind === 'legs' && (
        <NumberField
          label="Feet stand out"
          step={`Feet of ${piece.name}`}
          value={support.overhang}
          measure={LENGTH}
          limits={limitsOf(legsSupport.shape.overhang)}
          apply={(layout, overhang) => changeSupport(layout, piece.id, { ...support, overhang })}
        />
      )}
      {support.kind !== 'held' && (
        <NumberField
          label="First foot toward"
          step={`Feet of ${piece.name}`}
          value={support.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => turnFeet(layout, piece.id, turn)}
        />
      )}
    </Group>
  );
}

const STAND = 'stand';
const LEGS = 'legs';

function CarrierField({ piece }: { readonly piece: Struck }) {
  const { layout } = useOpen();
  const { id, name, support } = piece;
  const carriers = layout.pieces.filter(
    (other) => other.kind !== 'pedal' && canBeHeldBy(layout.pieces, id, other.id),
  );
  const options = [
    { value: STAND, text: 'A stand of its own' },
    ...(isDrum(piece) ? [{ value: LEGS, text: 'Legs on its shell' }] : []),
    ...carriers.map((other) => ({ value: `held:${other.id}`, text: `Held by ${other.name}` })),
  ];
  const choose = (value: string) => {
    const next: Support =
      value === STAND
        ? onStand(280, 90)
        : value === LEGS
          ? { kind: 'legs', overhang: 45, turn: 90 }
          : heldBy(value.slice('held:'.length));
    edit(`What carries ${name}`, (from) => changeSupport(from, id, next));
  };
  return (
    <div className="wide">
      <SelectField
        label="Carried by"
        value={support.kind === 'held' ? `held:${support.by}` : support.kind}
        options={options}
        onChoose={choose}
      />
    </div>
  );
}

interface StandFeetProps {
  readonly piece: Struck;
  readonly support: Extract<Support, { kind: 'stand' }>;
}

function StandFeet({ piece, support }: StandFeetProps) {
  const step = `Feet of ${piece.name}`;
  const part = (key: 'dx' | 'dy' | 'spread', label: string) => (
    <NumberField
      label={label}
      step={step}
      value={support[key]}
      measure={LENGTH}
      limits={limitsOf(standSupport.shape[key])}
      apply={(layout, value) => changeSupport(layout, piece.id, { ...support, [key]: value })}
    />
  );
  return (
    <>
      {part('dx', 'Stand to the right by')}
      {part('dy', 'Stand forward by')}
      {part('spread', 'Feet reach out')}
      <Choice
        label="Legs"
        value={support.legs === 2 ? '2' : '3'}
        options={[
          { value: '2', text: '2' },
          { value: '3', text: '3' },
        ]}
        onChoose={(value) =>
          edit(step, (layout) =>
            changeSupport(layout, piece.id, { ...support, legs: value === '2' ? 2 : 3 }),
          )
        }
      />
    </>
  );
}
