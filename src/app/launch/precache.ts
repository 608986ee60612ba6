import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Precache } from '../precacheList.ts';

/** Name of the service worker's file at the top of the built folder. */
export const workerFile = 'serviceWorker.js';
const page = 'index.html';
const versionMark = /<meta name="version" content="[^"]*"/;

/**
 * Gives a built folder its version: the hash of every file in it, written into the page and, with the list of files, into
 * the first line of the service worker.
 *
 * The page's own mark is left out of the hash, so that stamping a folder again without a change gives the same version.
 *
 * @param folder Folder of built files; must hold the page.
 * @param workerCode The service worker, compiled, without its first line.
 */
export function stampFolder(folder: string, workerCode: string): Precache {
  const markedPage = readFileSync(join(folder, page), 'utf8');
  if (!versionMark.test(markedPage))
    throw new Error(`${page} must hold <meta name="version" content="">`);
  const mark = (text: string) =>
    markedPage.replace(versionMark, `<meta name="version" content="${text}"`);
  const paths = filesUnder(folder).filter((path) => path !== workerFile);
  const all = createHash('sha256').update(workerCode);
  for (const path of paths) {
    all.update(`${path}\0`).update(path === page ? mark('') : readFileSync(join(folder, path)));
  }
  const version = all.digest('hex').slice(0, 16);
  writeFileSync(join(folder, page), mark(version));
  const files = paths.map((path) => ({
    address: path === page ? '/' : `/${path.split('/').map(encodeURIComponent).join('/')}`,
    integrity: `sha256-${createHash('sha256')
      .update(readFileSync(join(folder, path)))
      .digest('base64')}`,
  }));
  const precache: Precache = { version, files };
  writeFileSync(
    join(folder, workerFile),
    `self.PRECACHE = ${JSON.stringify(precache)};\n${workerCode}`,
  );
  return precache;
}

/** The compiled service worker of a stamped folder, without its first line. */
export function workerCodeOf(folder: string): string {
  const text = readFileSync(join(folder, workerFile), 'utf8');
  return text.slice(text.indexOf('\n') + 1);
}

/** Paths of all files in a folder, with `/` between parts, in a fixed order. */
function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile())
    .map((found) => relative(folder, join(found.parentPath, found.name)).split(sep).join('/'))
    .sort();
}
