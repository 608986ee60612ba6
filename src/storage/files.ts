import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { MOST_CHARACTERS, type ReadResult, readLayout, writeLayout } from '../layout/read.ts';

/** A file on its way out. */
export interface TextFile {
  readonly name: string;
  readonly text: string;
}

/** A file on its way in; browsers' own `File` is one. */
export interface OfferedFile {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

export const layoutFile = (layout: Layout): TextFile => ({
  name: fileName(layout.name),
  text: writeLayout(layout),
});

/** Reads a file as a new layout of its own: whatever id the file has, `id` replaces it, so that nothing stored is touched. */
export async function readLayoutFile(file: OfferedFile, id: Id): Promise<ReadResult> {
  if (file.size > MOST_CHARACTERS) {
    const [expected, actual] = [`at most ${MOST_CHARACTERS} bytes`, `${file.size} bytes`];
    return { ok: false, problems: [{ code: 'too-large', path: '', expected, actual }], more: 0 };
  }
  const read = readLayout(await file.text());
  return read.ok ? { ok: true, layout: { ...read.layout, id } } : read;
}

/** Names that some systems keep for devices, whatever follows the dot. */
const deviceName = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A file name for a layout that every common system takes: letters and digits of any script, spaces, hyphens and underscores,
 * 60 at most.
 */
export function fileName(name: string): string {
  const safe = [...name.normalize('NFC')]
    .map((letter) => (/[\p{L}\p{M}\p{N} _-]/u.test(letter) ? letter : '-'))
    .slice(0, 60)
    .join('')
    .replace(/[\s-]*-[\s-]*/g, (gap) => (gap.includes(' ') ? ' - ' : '-'))
    .replace(/^[\s-]+|[\s-]+$/g, '');
  if (safe === '') return 'layout.json';
  return deviceName.test(safe) ? `layout-${safe}.json` : `${safe}.json`;
}

/** A table of a layout as a CSV file: `Small club - inputs.csv`. */
export const tableFile = (layout: Pick<Layout, 'name'>, table: string, csv: string): TextFile => ({
  name: `${fileName(layout.name).replace(/\.json$/, '')} - ${table}.csv`,
  text: csv,
});

/** What formats of sheets are to other programs. */
const sheetTypes = {
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  png: 'image/png',
  dxf: 'image/vnd.dxf',
} as const;
export type SheetFormat = keyof typeof sheetTypes;

/** A file of bytes on its way out. */
export interface SheetFile {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
}

/** A sheet of a layout as a file: `Small club - plan.svg`. */
export const sheetFile = (
  layout: Pick<Layout, 'name'>,
  what: string,
  format: SheetFormat,
  content: SheetFile['content'],
): SheetFile => ({
  name: `${fileName(layout.name).replace(/\.json$/, '')} - ${what}.${format}`,
  type: sheetTypes[format],
  content,
});
