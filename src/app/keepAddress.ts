import { type SessionState, session, showPage } from '../session/session.ts';
import type { BackSteps } from '../views/parts/backSteps.ts';
import { LIST_ADDRESS, type Place, placeAddress, placeAt } from './address.ts';
import { leaveField } from './leaveField.ts';
import { sayTrouble } from './trouble.ts';

/** Keeps address, title and what is open together: opening writes the address, Back and Forward open what it names. */
export async function keepAddress(
  steps: BackSteps,
  goTo: (id: string | null) => Promise<void>,
): Promise<void> {
  // While an address is followed, what opens on the way is no step of its own.
  let following = 0;
  const follow = async () => {
    const place = placeAt(location.pathname);
    following += 1;
    try {
      await goTo(place?.layout ?? null);
      if (placeNow(session.getState())?.layout === place?.layout) showPage(place?.page ?? null);
    } catch (error) {
      sayTrouble('This address could not be opened', error);
    }
    following -= 1;
    if (following === 0) showAddress(steps);
  };
  await follow();
  window.addEventListener('popstate', () => {
    if (!steps.moved()) {
      // The screen with the field goes away, and a field that goes away is not left.
      leaveField();
      void follow();
    } else if (following === 0) showAddress(steps);
  });
  session.subscribe((now, before) => {
    if (following === 0 && addressOf(now) !== addressOf(before)) showAddress(steps);
    if (now.open?.layout.name !== before.open?.layout.name) showTitle();
  });
  showTitle();
}

const placeNow = ({ open, page }: SessionState): Place | null =>
  open && { layout: open.layout.id, page };

function addressOf(state: SessionState): string {
  const place = placeNow(state);
  return place ? placeAddress(place) : LIST_ADDRESS;
}

function showAddress(steps: BackSteps): void {
  const wanted = addressOf(session.getState());
  const there = placeAt(location.pathname);
  const shown = there ? placeAddress(there) : LIST_ADDRESS;
  const isOurs = there !== null || location.pathname === LIST_ADDRESS;
  if (shown !== wanted || !isOurs) steps.write(wanted);
}

function showTitle(): void {
  const name = session.getState().open?.layout.name;
  document.title = name === undefined ? 'Strokespace' : `${name} - Strokespace`;
}
