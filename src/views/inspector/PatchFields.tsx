import { renameMic, setHears, setInput } from '../../layout/edit/mics.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import { edit } from '../../session/session.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { SelectField } from '../fields/SelectField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { useMicName } from './useMicName.ts';

const NONE = 'none';

/** What a mic is called, where it is plugged, and what it hears. */
export function PatchFields({ mic }: { readonly mic: Mic }) {
  const { layout } = useOpen();
  const { id } = mic;
  const name = useMicName(mic);
  return (
    <Group title="Name and input">
      <div className="wide">
        <TextField
          label="Name"
          value={mic.name}
          most={80}
          onSet={(to) => edit(`Rename ${name}`, (from) => renameMic(from, id, to))}
        />
      </div>
      <div className="wide">
        <SelectField
          label="Input of the box"
          value={mic.input === null ? NONE : String(mic.input)}
          options={inputOptions(layout, mic)}
          onChoose={(value) =>
            edit(`Input of ${name}`, (from) =>
              setInput(from, id, value === NONE ? null : Number(value)),
            )
          }
        />
      </div>
      <HearsFields mic={mic} />
    </Group>
  );
}

function inputOptions(layout: Layout, mic: Mic) {
  const users = new Map(
    layout.mics.filter(({ id }) => id !== mic.id).map((other) => [other.input, other.name]),
  );
  const most = Math.max(layout.box.inputs, mic.input ?? 0);
  const numbers = Array.from({ length: most }, (_, index) => index + 1);
  return [
    { value: NONE, text: 'Not plugged' },
    ...numbers.map((number) => {
      const user = users.get(number);
      return { value: String(number), text: user ? `${number}: taken by ${user}` : `${number}` };
    }),
  ];
}

function HearsFields({ mic }: { readonly mic: Mic }) {
  const { layout } = useOpen();
  const { id, hears } = mic;
  const sources = layout.pieces.filter((piece) => isStruck(piece) || piece.kind === 'kick');
  const step = `What ${useMicName(mic)} hears`;
  const setOwn = (own: string) => {
    const others = hears.filter((each) => each !== own && each !== hears[0]);
    edit(step, (from) => setHears(from, id, own === NONE ? others : [own, ...others]));
  };
  const setAlso = (piece: string, also: boolean) =>
    edit(step, (from) =>
      setHears(from, id, also ? [...hears, piece] : hears.filter((each) => each !== piece)),
    );
  return (
    <>
      <div className="wide">
        <SelectField
          label="Its own source"
          value={hears[0] ?? NONE}
          options={[
            ...(hears.length === 0 ? [{ value: NONE, text: 'None' }] : []),
            ...sources.map((piece) => ({ value: piece.id, text: piece.name })),
          ]}
          onChoose={setOwn}
        />
      </div>
      {hears.length > 0 && (
        <fieldset className="whole">
          <legend className="field-label">Meant to hear as well</legend>
          <div className="check-grid">
            {sources
              .filter((piece) => piece.id !== hears[0])
              .map((piece) => (
                <CheckField
                  key={piece.id}
                  label={piece.name}
                  checked={hears.includes(piece.id)}
                  onSet={(also) => setAlso(piece.id, also)}
                />
              ))}
          </div>
        </fieldset>
      )}
    </>
  );
}
