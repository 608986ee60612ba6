import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** What was done with a file; each is an object of its own, so that the same twice is said twice. */
export interface News {
  readonly text: string;
}

const news = createStore<{ readonly last: News | null }>(() => ({ last: null }));

export const useNews = (): News | null => useStore(news, (state) => state.last);

export const sayNews = (text: string): void => news.setState({ last: { text } });

/** Says under which name a file was handed out. */
export const saySaved = (name: string): void => sayNews(`Saved as ${name}`);

export const forgetNews = (): void => news.setState({ last: null });
