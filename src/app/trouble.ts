import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { messageOf } from './messageOf.ts';

/** Something that went wrong outside of what a screen asked for, until it is dismissed. */
export interface Trouble {
  readonly title: string;
  readonly detail: string;
}

const trouble = createStore<{ readonly current: Trouble | null }>(() => ({ current: null }));

export const useTrouble = (): Trouble | null => useStore(trouble, (state) => state.current);

export const sayTrouble = (title: string, error: unknown): void =>
  trouble.setState({ current: { title, detail: messageOf(error) } });

export const dismissTrouble = (): void => trouble.setState({ current: null });

/** Says every error that nothing else dealt with. The page goes on: what is open can still be exported. */
export function listenForTrouble(target: Window): void {
  target.addEventListener('error', (event) => {
    // Browsers report this one when a size changes while sizes are being told; nothing is wrong.
    if (event.message.startsWith('ResizeObserver loop')) return;
    sayTrouble('Something in the app failed', event.error ?? event.message);
  });
  target.addEventListener('unhandledrejection', (event) => {
    sayTrouble('Something in the app failed', event.reason);
  });
}
