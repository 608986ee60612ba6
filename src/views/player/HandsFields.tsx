import { mirrorKit, mirrorUnderPlayer } from '../../layout/edit/mirror.ts';
import { setHands } from '../../layout/edit/pieces.ts';
import { setPlayer } from '../../layout/edit/stage.ts';
import { isStruck, type Struck } from '../../layout/pieces/piece.ts';
import { handsField } from '../../layout/pieces/struck.ts';
import { hiHatField } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { SelectField } from '../fields/SelectField.tsx';
import { Group } from '../parts/Group.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { acrossWords, handsWords, hiHatNames, playedByWords } from '../words/handWords.ts';

/** Which hand leads, which plays the hi-hat, and what comes of it for every piece. */
export function HandsFields() {
  const { layout, report } = useOpen();
  const { player } = layout;
  const across = acrossWords(report.player.playedBy, layout);
  const other = player.leadHand === 'right' ? 'left' : 'right';
  return (
    <>
      <Group title="Hands">
        <Choice
          label="Lead hand"
          value={player.leadHand}
          options={[
            { value: 'left', text: 'Left' },
            { value: 'right', text: 'Right' },
          ]}
          onChoose={(leadHand) => edit('Lead hand', (from) => setPlayer(from, { leadHand }))}
        />
        <div className="wide">
          <Choice
            label="Hi-hat played"
            value={player.hiHat}
            options={hiHatField.options.map((value) => ({ value, text: hiHatNames[value] }))}
            onChoose={(hiHat) => edit('Hi-hat hand', (from) => setPlayer(from, { hiHat }))}
          />
        </div>
        <dl className="whole played-by" aria-label="Which hand plays what">
          {playedByWords(report.player.playedBy, layout).map(({ hands, pieces }) => (
            <div key={hands}>
              <dt>{hands}</dt>
              <dd>{pieces}</dd>
            </div>
          ))}
          {across !== '' && (
            <div>
              <dt>Reaches across</dt>
              <dd>{across}</dd>
            </div>
          )}
        </dl>
        <p className="whole field-hint">
          The lead hand changes who plays what; every piece stays where it is. Crossed: the lead
          hand plays the hi-hat. Open: the hand on the hi-hat’s side does.
        </p>
        <div className="whole">
          <button type="button" onClick={() => edit('Mirror the kit', mirrorKit)}>
            <Icon name="mirror" /> Mirror the whole kit
          </button>
          <p className="field-hint">
            Swaps left and right: pieces, mics, feet and the lead hand. The {other} hand then leads.
          </p>
        </div>
        <div className="whole">
          <button type="button" onClick={() => edit('Mirror the kit', mirrorUnderPlayer)}>
            <Icon name="mirror" /> Mirror it, the {player.leadHand} hand still leads
          </button>
        </div>
      </Group>
      <PieceHands pieces={layout.pieces.filter(isStruck)} />
    </>
  );
}

/** The hands of every piece in one place; each stands at its piece too. */
function PieceHands({ pieces }: { readonly pieces: readonly Struck[] }) {
  const { player } = useOpen().layout;
  if (pieces.length === 0) return null;
  return (
    <Group title="Hands, piece by piece" folded>
      {pieces.map(({ id, name, hands: now }) => (
        <SelectField
          key={id}
          label={name}
          value={now}
          options={handsField.options.map((value) => ({ value, text: handsWords(value, player) }))}
          onChoose={(value) => {
            const hands = handsField.options.find((option) => option === value);
            if (hands) edit(`Hands on ${name}`, (from) => setHands(from, id, hands));
          }}
        />
      ))}
    </Group>
  );
}
