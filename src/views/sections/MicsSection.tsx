import { AddMic } from '../mics/AddMic.tsx';
import { MicLine } from '../mics/MicLine.tsx';
import { OfferedMics } from '../mics/OfferedMics.tsx';
import { OwnClasses } from '../mics/OwnClasses.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Every mic, and what has none yet. */
export function MicsSection() {
  const { mics } = useOpen().layout;
  return (
    <>
      <h2 className="spoken">Mics</h2>
      {mics.length > 0 && (
        <ul className="lines">
          {mics.map((mic) => (
            <MicLine key={mic.id} mic={mic} />
          ))}
        </ul>
      )}
      <OfferedMics />
      <AddMic />
      <OwnClasses />
    </>
  );
}
