import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** A file that was handed out; each is an object of its own, so that the same name twice is said twice. */
export interface SavedFile {
  readonly name: string;
}

const saved = createStore<{ readonly last: SavedFile | null }>(() => ({ last: null }));

export const useSavedFile = (): SavedFile | null => useStore(saved, (state) => state.last);

export const saySaved = (name: string): void => saved.setState({ last: { name } });

export const forgetSaved = (): void => saved.setState({ last: null });
