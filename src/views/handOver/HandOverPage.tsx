import { FieldProblem } from '../fields/FieldProblem.tsx';
import { useActions } from '../parts/useActions.ts';
import { useTask } from '../parts/useTask.ts';
import { CodeShow } from './CodeShow.tsx';
import { useHandOver } from './HandOverContext.ts';

/** The open layout to another tablet, without a network. */
export function HandOverPage() {
  return (
    <div className="hand-over">
      <CodeShow />
      <AsFile />
    </div>
  );
}

function AsFile() {
  const actions = useActions();
  const { share } = useHandOver();
  const task = useTask();
  return (
    <section className="page-part" aria-labelledby="as-file">
      <h2 id="as-file">As a file</h2>
      <p>
        One small file with the whole layout, for any way that works between the two tablets. There,
        open the file, drop it on the list of layouts, or tap “Import files”.
      </p>
      <div className="page-buttons">
        <button type="button" onClick={() => task.run('Export', () => actions.exportFile())}>
          Save the file
        </button>
        {share && (
          <button type="button" onClick={() => task.run('Sharing', share)}>
            Share the file
          </button>
        )}
      </div>
      <FieldProblem text={task.failure} />
    </section>
  );
}
