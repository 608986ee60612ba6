import { session } from '../session/session.ts';
import { LIST_ADDRESS, layoutAddress, layoutAt } from './address.ts';
import { sayTrouble } from './trouble.ts';

/** Keeps address, title and what is open together: opening writes the address, Back and Forward open what it names. */
export async function keepAddress(goTo: (id: string | null) => Promise<void>): Promise<void> {
  const follow = async () => {
    try {
      await goTo(layoutAt(location.pathname));
    } catch (error) {
      sayTrouble('This address could not be opened', error);
    }
    showAddress();
  };
  await follow();
  window.addEventListener('popstate', () => void follow());
  session.subscribe((now, before) => {
    if (now.open?.layout.id !== before.open?.layout.id) showAddress();
    if (now.open?.layout.name !== before.open?.layout.name) showTitle();
  });
  showTitle();
}

function showAddress(): void {
  const id = session.getState().open?.layout.id ?? null;
  if (layoutAt(location.pathname) === id && (id !== null || location.pathname === LIST_ADDRESS)) {
    return;
  }
  history.pushState(null, '', id === null ? LIST_ADDRESS : layoutAddress(id));
}

function showTitle(): void {
  const name = session.getState().open?.layout.name;
  document.title = name === undefined ? 'Strokespace' : `${name} - Strokespace`;
}
