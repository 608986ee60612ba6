import { deleteMic, duplicateMic } from '../../layout/edit/mics.ts';
import { mirrorMic } from '../../layout/edit/mirror.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { edit, select, session } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { ThingActions } from './ThingActions.tsx';
import { useMicName } from './useMicName.ts';

/** Copy, mirror or remove a mic. */
export function MicActions({ mic }: { readonly mic: Mic }) {
  const { layout } = useOpen();
  const { id } = mic;
  const name = useMicName(mic);
  const duplicate = () => {
    edit(`Duplicate ${name}`, (from) => duplicateMic(from, id));
    const after = session.getState().open?.layout;
    const copy = after?.mics.at(-1);
    if (copy && after !== layout) select({ kind: 'mic', id: copy.id });
  };
  return (
    <ThingActions
      name={name}
      onDuplicate={duplicate}
      {...(mic.mount.kind !== 'plateInKick' && {
        onMirror: () => edit(`Mirror ${name}`, (from) => mirrorMic(from, id)),
      })}
      onDelete={() => {
        edit(`Delete ${name}`, (from) => deleteMic(from, id));
        select(null);
      }}
    />
  );
}
