import { usualPort } from '../../layout/catalogue/defaults/usualPieces.ts';
import { changePiece } from '../../layout/edit/change.ts';
import { movePiece, raisePiece, tiltPiece } from '../../layout/edit/pieces.ts';
import { azimuthField, heightField } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { type Kick, kickSchema, portField } from '../../layout/pieces/kick.ts';
import { edit } from '../../session/session.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { DIRECTION, FINE_LENGTH, LENGTH, TILT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { DIRECTION_HINT, Group } from '../parts/Group.tsx';
import { SpotFields } from './SpotFields.tsx';
import { turnTo } from './turnTo.ts';

const changeKick = (layout: Layout, id: string, patch: Partial<Kick>): Layout =>
  changePiece(layout, id, (piece) => (piece.kind === 'kick' ? { ...piece, ...patch } : piece));

/** Place, turn, port and spurs of a kick drum. */
export function KickFields({ kick }: { readonly kick: Kick }) {
  const { id, name } = kick;
  return (
    <>
      <Group title="Place" hint={DIRECTION_HINT}>
        <SpotFields of={name} spot={kick} apply={(layout, to) => movePiece(layout, id, to)} />
        <NumberField
          label="Height of the centre"
          step={`Height of ${name}`}
          value={kick.z}
          measure={LENGTH}
          limits={limitsOf(heightField)}
          apply={(layout, z) => raisePiece(layout, id, z)}
        />
        <NumberField
          label="Front head faces"
          step={`Turn ${name}`}
          value={kick.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => turnTo(layout, id, turn)}
        />
        <NumberField
          label="Front raised by"
          step={`Lean of ${name}`}
          value={kick.rise}
          measure={TILT}
          limits={limitsOf(kickSchema.shape.rise)}
          apply={(layout, rise) => tiltPiece(layout, id, rise)}
        />
        <NumberField
          label="Spurs stand out"
          step={`Spurs of ${name}`}
          value={kick.spurs}
          measure={LENGTH}
          limits={limitsOf(kickSchema.shape.spurs)}
          apply={(layout, spurs) => changeKick(layout, id, { spurs })}
        />
      </Group>
      <PortFields kick={kick} />
    </>
  );
}

function PortFields({ kick }: { readonly kick: Kick }) {
  const { id, name, port } = kick;
  const step = `Port of ${name}`;
  const part = (key: 'diameter' | 'right' | 'up', label: string) =>
    port && (
      <NumberField
        label={label}
        step={step}
        value={port[key]}
        measure={FINE_LENGTH}
        limits={limitsOf(portField.shape[key])}
        apply={(layout, value) => changeKick(layout, id, { port: { ...port, [key]: value } })}
      />
    );
  return (
    <Group title="Port in the front head" hint="Right as the audience sees it.">
      <div className="wide">
        <CheckField
          label="The front head has a port"
          checked={port !== null}
          onSet={(has) =>
            edit(step, (layout) => changeKick(layout, id, { port: has ? usualPort : null }))
          }
        />
      </div>
      {part('diameter', 'Port diameter')}
      {part('right', 'Right of the centre')}
      {part('up', 'Above the centre')}
    </Group>
  );
}
