import { useEffect, useState } from 'react';
import type { CodePicture } from '../../session/handOver.ts';
import { Choice } from '../fields/Choice.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { useHandOver } from './HandOverContext.ts';
import { useKeepAwake } from './useKeepAwake.ts';

/** Never more than two changes a second: faster flashes of so large a field can trigger seizures (WCAG 2.2, 2.3.1: three). */
const PACES = { slow: 1000, fast: 500 } as const;
type Pace = keyof typeof PACES;

/** The open layout as codes, one after another, for the other tablet's camera. */
export function CodeShow() {
  const { layout } = useOpen();
  const handOver = useHandOver();
  const [pictures, setPictures] = useState<readonly CodePicture[] | null>(null);
  const [failure, setFailure] = useState('');
  useEffect(() => {
    let isCurrent = true;
    handOver.pictures().then(
      (made) => isCurrent && setPictures(made),
      (error: unknown) => isCurrent && setFailure(error instanceof Error ? error.message : ''),
    );
    return () => {
      isCurrent = false;
    };
  }, [handOver]);
  return (
    <section className="code-show" aria-labelledby="as-codes">
      <h2 id="as-codes">By camera</h2>
      <p>
        On the other tablet, in the list of layouts, tap “Read codes” and point its camera here. It
        tells you when it has all of them.
      </p>
      {failure !== '' && <p role="alert">The codes could not be made: {failure}</p>}
      {pictures === null && failure === '' && <p role="status">Making the codes…</p>}
      {pictures && <Codes pictures={pictures} name={layout.name} />}
    </section>
  );
}

function Codes({ pictures, name }: { pictures: readonly CodePicture[]; name: string }) {
  const count = pictures.length;
  const [at, setAt] = useState(0);
  const [pace, setPace] = useState<Pace>('fast');
  const [isPlaying, setPlaying] = useState(
    () => count > 1 && !matchMedia('(prefers-reduced-motion: reduce)').matches,
  );
  useKeepAwake(isPlaying);
  useEffect(() => {
    if (!isPlaying) return;
    const timer = setInterval(() => setAt((now) => (now + 1) % count), PACES[pace]);
    return () => clearInterval(timer);
  }, [isPlaying, pace, count]);
  const step = (by: number) => {
    setPlaying(false);
    setAt((now) => (now + by + count) % count);
  };
  const picture = pictures[at];
  return (
    <>
      {picture && (
        <svg
          className="code-picture"
          viewBox={`0 0 ${picture.size} ${picture.size}`}
          role="img"
          aria-label={`Code ${at + 1} of ${count} of ${name}`}
          shapeRendering="crispEdges"
        >
          <rect width={picture.size} height={picture.size} fill="#fff" />
          <path d={picture.path} fill="#000" />
        </svg>
      )}
      <p className="code-count">
        Code {at + 1} of {count}
      </p>
      {count > 1 && (
        <div className="page-buttons">
          <button type="button" onClick={() => step(-1)}>
            <Icon name="back" /> Back
          </button>
          <button type="button" onClick={() => setPlaying(!isPlaying)}>
            {isPlaying ? 'Pause' : 'Play'}
          </button>
          <button type="button" onClick={() => step(1)}>
            Next <Icon name="forward" />
          </button>
          <Choice
            label="Pace"
            hideLabel
            value={pace}
            options={[
              { value: 'slow', text: '1 a second' },
              { value: 'fast', text: '2 a second' },
            ]}
            onChoose={setPace}
          />
        </div>
      )}
    </>
  );
}
