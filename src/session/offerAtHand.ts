import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/**
 * What takes the offer that is shown, in words, while the buttons that ask for it are scrolled out of view: then the drawing has them. Null while they are
 * in view, and while nothing is on offer.
 */
const outOfReach = createStore<{ readonly take: string | null }>(() => ({ take: null }));

export const useOfferOutOfReach = (): string | null => useStore(outOfReach, ({ take }) => take);

/** Tells whether the buttons of the offer are out of view: what the first of them says, or null. */
export const tellOutOfReach = (take: string | null): void => outOfReach.setState({ take });
