import { useActions } from '../../parts/useActions.ts';
import { useTask } from '../../parts/useTask.ts';

/** The open layout to another tablet, without a network. */
export function HandOverPage() {
  const actions = useActions();
  const task = useTask();
  return (
    <section className="page-part">
      <h2>As a file</h2>
      <p>
        One small file with the whole layout. Send it by any way that works between the two tablets;
        there, open it from the list of layouts.
      </p>
      <button type="button" onClick={() => task.run('Export', () => actions.exportFile())}>
        Save the file
      </button>
      {task.failure !== '' && (
        <p className="field-problem" role="alert">
          {task.failure}
        </p>
      )}
    </section>
  );
}
