import { StartChoices } from './StartChoices.tsx';
import type { Library } from './useLibrary.ts';

/** What the app is for, shown while there is no layout, with the ways to start one. */
export function FirstRun({ library }: { readonly library: Library }) {
  return (
    <section className="first-run" aria-labelledby="first-title">
      <h2 id="first-title">No layouts yet. Start with the kit nearest to yours.</h2>
      <p>
        Place the drums, mics, stands and cables, and see at once which mic a stick, hand or arm
        would strike, by how many millimetres and in which move. Then read off every cable run, and
        set it up the same way on the next stage.
      </p>
      <StartChoices disabled={library.task.busy} onStart={library.start} />
    </section>
  );
}
