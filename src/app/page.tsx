import { createRoot } from 'react-dom/client';
import '../views/style.css';
import './page.css';
import { paintBeside } from '../editor/canvas/paintedBeside.ts';
import { answerBeside, session } from '../session/session.ts';
import { newLayoutId } from '../storage/ids.ts';
import { indexedDbStorage } from '../storage/indexedDb.ts';
import { journaled } from '../storage/journaled.ts';
import { memoryStorage } from '../storage/memory.ts';
import { sheltered } from '../storage/sheltered.ts';
import { createBackSteps } from '../views/parts/backSteps.ts';
import { App } from './App.tsx';
import { Autosave } from './autosave.ts';
import { BoxSpotKeeper } from './boxSpotKeeper.ts';
import { ClearSpotKeeper } from './clearSpotKeeper.ts';
import { FieldKeeper } from './fieldKeeper.ts';
import { floorRule, ringRule, zoneRule } from './fieldRules.ts';
import { handOut } from './handOut.ts';
import { handOverIn } from './handOverIn.ts';
import { tasksInTurn } from './inTurn.ts';
import { keepAddress } from './keepAddress.ts';
import { askOnceWhenThereIsSomething, askToKeep, lookWhetherKept } from './keeping.ts';
import { keepSelection } from './keepSelection.ts';
import { keepSigning } from './keepSigning.ts';
import { leaveNotes } from './leaveNotes.ts';
import { libraryActions } from './libraryActions.ts';
import { NeedKeeper } from './needKeeper.ts';
import { openFiles, takeDroppedFiles, takeOpenedFiles } from './openedFiles.ts';
import { keepPreferences } from './preferences.ts';
import { listenForSteps } from './shortcuts.ts';
import { startAnswerWorker } from './startAnswerWorker.ts';
import { startBoxWorker } from './startBoxWorker.ts';
import { startClearWorker } from './startClearWorker.ts';
import { startFieldWorker } from './startFieldWorker.ts';
import { startJournal } from './startJournal.ts';
import { startNeedWorker } from './startNeedWorker.ts';
import { startPaintWorker } from './startPaintWorker.ts';
import { watchForLoss } from './storedBefore.ts';
import { listenForTrouble, sayTrouble } from './trouble.ts';
import { versionHere, watchForUpdate } from './updates.ts';
import { watchPage } from './watchPage.ts';
import { watchPointer } from './watchPointer.ts';
import { Workbench } from './workbench.ts';

const DAY = 24 * 60 * 60 * 1000;

listenForTrouble(window);
listenForSteps(window);
watchPointer(window, document.documentElement);
keepPreferences(() => localStorage);
keepSigning(() => localStorage);
keepSelection(() => sessionStorage);
watchForLoss(
  () => localStorage,
  (before) =>
    sayTrouble(
      'The layouts that were kept here are gone',
      new Error(
        `There were ${before} when this page was last open, and the browser's storage is empty now. Import them from exported files.`,
      ),
    ),
);

const full = journaled(indexedDbStorage('strokespace', Date.now), startJournal(), {
  startsAfter: 500,
  onState: (copy) => session.setState({ copy }),
  onRestored(restored) {
    session.setState({ restored });
    inTurn(() => workbench.refresh()).catch((error: unknown) => sayTrouble('The list', error));
  },
});
const storage = sheltered(full, memoryStorage(Date.now));
const autosave = new Autosave({
  storage,
  unreliable: window.isSecureContext
    ? null
    : 'this address is neither https nor localhost, so the browser promises nothing',
  onSaved: askOnceWhenThereIsSomething(),
  onCleared: () =>
    sayTrouble(
      'The browser’s storage was cleared while this page was open',
      new Error(
        'What is open here is stored again. Other layouts that were kept in this browser are gone: import them from exported files.',
      ),
    ),
});
const workbench = new Workbench(storage, autosave);
const inTurn = tasksInTurn();
const notes = leaveNotes(() => localStorage, newLayoutId());
let update: (() => Promise<void>) | null = null;
const actions = libraryActions({
  storage,
  full,
  autosave,
  workbench,
  handOut,
  askToKeep,
  update: () => update,
  inTurn,
});
answerBeside(startAnswerWorker());
paintBeside(startPaintWorker);
new FieldKeeper(zoneRule, startFieldWorker('zone'));
new FieldKeeper(ringRule, startFieldWorker('ring'));
new FieldKeeper(floorRule, startFieldWorker('floor'));
const clearSpots = new ClearSpotKeeper(startClearWorker);
const backSteps = createBackSteps(window.history);
new NeedKeeper({
  load: (id) => storage.load(id),
  start: startNeedWorker,
  storage: () => localStorage,
  version: versionHere(),
});
const boxSpots = new BoxSpotKeeper(startBoxWorker);

const place = document.getElementById('page');
if (place === null) throw new Error('index.html must hold an element with the id "page"');
createRoot(place).render(
  <App
    actions={actions}
    clearSpots={clearSpots}
    boxSpots={boxSpots}
    backSteps={backSteps}
    handOver={handOverIn(() => workbench.openNow())}
  />,
);

async function start(): Promise<void> {
  watchPage({ storage, autosave, workbench, notes, inTurn });
  await inTurn(() => notes.takeUp((unstored) => workbench.takeUp(unstored)));
  await keepAddress(backSteps, (id) =>
    inTurn(() => (id === null ? workbench.close() : workbench.open(id))),
  );
  await inTurn(() => workbench.refresh());
  takeOpenedFiles(window, (files) => openFiles(actions, files));
  takeDroppedFiles(window, (files) => openFiles(actions, files));
  await lookWhetherKept();
  await storage.forget(Date.now() - 30 * DAY);
  await storage.thin();
  await watchForUpdate((apply) => {
    update = apply;
    session.setState({ updateWaiting: true });
  });
}
start().catch((error: unknown) => sayTrouble('The app could not start in full', error));
