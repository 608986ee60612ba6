// A page that does nothing but watch for updates; the specs bundle it in place of the app's own page.
import { watchForUpdate } from '../../src/app/updates.ts';

const heading = document.createElement('h1');
heading.textContent = 'Strokespace';
document.body.append(heading);
const offer = document.createElement('button');
offer.textContent = 'Use the newer version';

const state = await watchForUpdate((apply) => {
  document.body.append(offer);
  offer.onclick = () => {
    apply().catch((error: unknown) => {
      offer.textContent = String(error);
    });
  };
});
document.body.dataset.offline = state;
