import type { Layout } from '../layout/layout.ts';
import type { CodeReader, HandOver } from '../session/handOver.ts';
import { layoutFile } from '../storage/files.ts';
import { canShareFiles, shareFile } from './handOut.ts';

/**
 * What screens ask to hand over what is open, connected. `openNow` is the open layout without what is only offered. Making and
 * reading of codes come when they are first asked for.
 */
export function handOverIn(openNow: () => Layout | null): HandOver {
  const needed = (): Layout => {
    const open = openNow();
    if (open === null) throw new Error('no layout is open.');
    return open;
  };
  return {
    pictures: async () => {
      const { codePictures } = await import('./codePictures.ts');
      return codePictures(needed());
    },
    startReading: lateReader,
    share: canShareFiles() ? () => shareFile(layoutFile(needed())) : null,
  };
}

function lateReader(): CodeReader {
  let reader: Promise<CodeReader> | null = null;
  return {
    look: async (picture) => {
      reader ??= import('./codeReader.ts').then(({ codeReader }) => codeReader());
      return (await reader).look(picture);
    },
  };
}
