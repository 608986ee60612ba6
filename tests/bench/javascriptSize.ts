import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Scripts that a first visit waits for, with their sizes. */
export interface JavascriptSize {
  readonly files: readonly string[];
  readonly kilobytes: number;
  readonly gzippedKilobytes: number;
}

/** Static imports of a built script: `import"./x.js"` and `from"./x.js"`, not `import("./x.js")`. */
const staticImports = (text: string): readonly string[] =>
  [...text.matchAll(/(?:\bimport|\bfrom)\s*["'](\.{1,2}\/[^"']+\.js)["']/g)].flatMap(
    ([, path]) => path ?? [],
  );

/** The entry scripts of the built page and everything they import statically; undefined before a build. */
export function initialJavascript(dist: string): JavascriptSize | undefined {
  const page = join(dist, 'index.html');
  if (!existsSync(page)) return undefined;
  const entries = [...readFileSync(page, 'utf8').matchAll(/<script[^>]*\ssrc="\/([^"]+)"/g)];
  const open = entries.flatMap(([, path]) => path ?? []);
  const found = new Map<string, Buffer>();
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (found.has(path)) continue;
    const text = readFileSync(join(dist, path));
    found.set(path, text);
    const from = posix.dirname(path);
    open.push(...staticImports(text.toString()).map((target) => posix.join(from, target)));
  }
  const texts = [...found.values()];
  const sum = (sizes: readonly number[]): number => sizes.reduce((a, b) => a + b, 0) / 1000;
  return {
    files: [...found.keys()].toSorted(),
    kilobytes: sum(texts.map(({ length }) => length)),
    gzippedKilobytes: sum(texts.map((text) => gzipSync(text, { level: 9 }).length)),
  };
}
