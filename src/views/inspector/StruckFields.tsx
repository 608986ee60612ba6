import { movePiece, raisePiece, setHands, tiltPiece } from '../../layout/edit/pieces.ts';
import { azimuthField, heightField, tiltField } from '../../layout/fields.ts';
import { isCymbal, isDrum, type Struck } from '../../layout/pieces/piece.ts';
import { handsField } from '../../layout/pieces/struck.ts';
import { edit } from '../../session/session.ts';
import { DIRECTION, LENGTH, TILT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { handsWords } from '../words/handWords.ts';
import { SpotFields } from './SpotFields.tsx';
import { turnTo } from './turnTo.ts';

/** Place, height, lean and hands of what hands strike. */
export function StruckFields({ piece }: { readonly piece: Struck }) {
  const { id, name } = piece;
  return (
    <>
      <Group title="Place" hint="Right is the player’s right.">
        <SpotFields of={name} spot={piece} apply={(layout, to) => movePiece(layout, id, to)} />
        <NumberField
          label={heightLabel(piece)}
          step={`Height of ${name}`}
          value={piece.z}
          measure={LENGTH}
          limits={limitsOf(heightField)}
          apply={(layout, z) => raisePiece(layout, id, z)}
        />
        <HandsField piece={piece} />
      </Group>
      <LeanFields piece={piece} />
    </>
  );
}

/** Which hands play it; where the player's way with the hi-hat says more, what comes of it. */
function HandsField({ piece }: { readonly piece: Struck }) {
  const { layout, report } = useOpen();
  const { id, name, kind, hands: now } = piece;
  const { player } = layout;
  const played = report.player.playedBy.find((each) => each.piece === id)?.hands ?? [];
  const [alone, ...others] = played;
  const byWay = kind === 'hiHat' && now === 'both' && others.length === 0 && alone !== undefined;
  return (
    <>
      <div className="wide">
        <SelectField
          label="Played by"
          value={now}
          options={handsField.options.map((value) => ({ value, text: handsWords(value, player) }))}
          onChoose={(value) => {
            const hands = handsField.options.find((option) => option === value);
            if (hands) edit(`Hands on ${name}`, (from) => setHands(from, id, hands));
          }}
        />
      </div>
      {byWay && (
        <p className="whole field-hint">
          This player plays the hi-hat {player.hiHat}: the {alone} hand alone. See Player.
        </p>
      )}
    </>
  );
}

function heightLabel(piece: Struck): string {
  if (isDrum(piece)) return 'Height of the head';
  return isCymbal(piece) || piece.kind === 'hiHat' ? 'Height of the edge' : 'Height';
}

function LeanFields({ piece }: { readonly piece: Struck }) {
  const { id, name } = piece;
  return (
    <Group title="Lean and turn" hint={DIRECTION_HINT}>
      <NumberField
        label="Lean from level"
        step={`Lean of ${name}`}
        value={piece.tilt}
        measure={TILT}
        limits={limitsOf(tiltField)}
        apply={(layout, tilt) => tiltPiece(layout, id, tilt)}
      />
      <NumberField
        label="Leans toward"
        step={`Lean of ${name}`}
        value={piece.tiltToward}
        measure={DIRECTION}
        limits={limitsOf(azimuthField)}
        round
        apply={(layout, toward) => tiltPiece(layout, id, piece.tilt, toward)}
      />
      <NumberField
        label="Turn with feet and clips"
        step={`Turn ${name}`}
        value={piece.tiltToward}
        measure={DIRECTION}
        limits={limitsOf(azimuthField)}
        round
        apply={(layout, toward) => turnTo(layout, id, toward)}
      />
    </Group>
  );
}
