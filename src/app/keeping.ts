import { session } from '../session/session.ts';

/** Asks the browser to promise that it keeps the data, and shows its answer. */
export async function askToKeep(): Promise<boolean> {
  const kept = await answer(() => navigator.storage.persist());
  session.setState({ kept });
  return kept;
}

/** Shows whether the browser has promised already, without asking. */
export async function lookWhetherKept(): Promise<void> {
  session.setState({ kept: await answer(() => navigator.storage.persisted()) });
}

/** A function that asks again, once, while no promise was given: to be called when there is something to keep. */
export function askOnceWhenThereIsSomething(): () => void {
  let asked = false;
  return () => {
    if (asked || session.getState().kept === true) return;
    asked = true;
    void askToKeep();
  };
}

/** Browsers without a storage manager, and pages without a secure context, have promised nothing. */
async function answer(ask: () => Promise<boolean>): Promise<boolean> {
  try {
    return await ask();
  } catch {
    return false;
  }
}
