import { nominalSizeOf, nominalSizes, type SizedKind } from '../../layout/catalogue/sizes.ts';
import { changePiece } from '../../layout/edit/change.ts';
import { resizePiece } from '../../layout/edit/pieces.ts';
import { cymbalSchema } from '../../layout/pieces/cymbal.ts';
import { drumSchema } from '../../layout/pieces/drum.ts';
import { hiHatSchema } from '../../layout/pieces/hiHat.ts';
import { kickSchema } from '../../layout/pieces/kick.ts';
import { percussionSchema } from '../../layout/pieces/percussion.ts';
import { isCymbal, isDrum, type Piece } from '../../layout/pieces/piece.ts';
import { edit } from '../../session/session.ts';
import { FINE_LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { type Limits, limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { Group } from '../parts/Group.tsx';
import { kindWords } from '../words/kindWords.ts';
import { nominalWords } from '../words/sizeWords.ts';

type Sized = Extract<Piece, { kind: SizedKind }>;

const OTHER = 'other';

/** The size: by the trade's list, or any number. */
export function SizeFields({ piece }: { readonly piece: Sized }) {
  const { id, name } = piece;
  const depth = 'depth' in piece ? piece.depth : null;
  const limits = sizeLimits(piece);
  return (
    <Group title="Size">
      <NominalField piece={piece} depth={depth} />
      <NumberField
        label="Diameter"
        step={`Size of ${name}`}
        value={piece.diameter}
        measure={FINE_LENGTH}
        limits={limits.diameter}
        apply={(layout, diameter) => resizePiece(layout, id, diameter)}
      />
      {depth !== null && limits.depth && (
        <NumberField
          label="Depth"
          step={`Size of ${name}`}
          value={depth}
          measure={FINE_LENGTH}
          limits={limits.depth}
          apply={(layout, to) => resizePiece(layout, id, piece.diameter, to)}
        />
      )}
      {piece.kind === 'hiHat' && (
        <NumberField
          label="Opens by"
          step={`Opening of ${name}`}
          value={piece.opening}
          measure={FINE_LENGTH}
          limits={limitsOf(hiHatSchema.shape.opening)}
          apply={(layout, opening) =>
            changePiece(layout, id, (from) => (from.kind === 'hiHat' ? { ...from, opening } : from))
          }
        />
      )}
    </Group>
  );
}

interface NominalFieldProps {
  readonly piece: Sized;
  readonly depth: number | null;
}

function NominalField({ piece, depth }: NominalFieldProps) {
  const sizes = nominalSizes(piece.kind);
  const now = nominalSizeOf(piece.kind, piece.diameter, depth);
  const options = sizes.map((size, index) => ({ value: String(index), text: nominalWords(size) }));
  return (
    <div className="wide">
      <SelectField
        label={`${kindWords(piece.kind)} sizes`}
        value={now ? String(sizes.indexOf(now)) : OTHER}
        options={now ? options : [{ value: OTHER, text: 'Another size' }, ...options]}
        onChoose={(value) => {
          const size = sizes[Number(value)];
          if (!size) return;
          edit(`Size of ${piece.name}`, (layout) =>
            resizePiece(layout, piece.id, size.diameter, size.depth ?? undefined),
          );
        }}
      />
    </div>
  );
}

function sizeLimits(piece: Sized): { readonly diameter: Limits; readonly depth?: Limits } {
  if (isDrum(piece)) return both(drumSchema.shape);
  if (isCymbal(piece)) return { diameter: limitsOf(cymbalSchema.shape.diameter) };
  switch (piece.kind) {
    case 'kick':
      return both(kickSchema.shape);
    case 'percussion':
      return both(percussionSchema.shape);
    case 'hiHat':
      return { diameter: limitsOf(hiHatSchema.shape.diameter) };
  }
}

type NumberShape = Parameters<typeof limitsOf>[0];

const both = (shape: { readonly diameter: NumberShape; readonly depth: NumberShape }) => ({
  diameter: limitsOf(shape.diameter),
  depth: limitsOf(shape.depth),
});
