import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_CHARACTERS } from '../../src/layout/read.ts';
import {
  fileName,
  layoutFile,
  readLayoutFile,
  sheetFile,
  tableFile,
} from '../../src/storage/files.ts';
import { sample } from './sample.ts';

/** A file as a browser offers it. */
const offered = (text: string) => ({
  name: 'layout.json',
  size: new TextEncoder().encode(text).length,
  text: async () => text,
});

it('a table is named after its layout and what it is', () => {
  expect(tableFile({ name: 'a/b' }, 'inputs', 'x\r\n')).toEqual({
    name: 'a-b - inputs.csv',
    text: 'x\r\n',
  });
});

describe('fileName', () => {
  it.each([
    ['Small club', 'Small club.json'],
    ['Été – Grüne Bühne', 'Été - Grüne Bühne.json'],
    ['舞台 2', '舞台 2.json'],
    ['a/b\\c:d*e?f"g<h>i|j', 'a-b-c-d-e-f-g-h-i-j.json'],
    ['../../etc/passwd', 'etc-passwd.json'],
    ['.hidden', 'hidden.json'],
    ['CON', 'layout-CON.json'],
    ['lpt1', 'layout-lpt1.json'],
    ['///', 'layout.json'],
    ['🥁', 'layout.json'],
  ])('%s becomes %s', (name, file) => {
    expect(fileName(name)).toBe(file);
  });

  it('holds only what every common system takes, in at most 65 characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (name) => {
        const file = fileName(name);
        expect(file).toMatch(/^[\p{L}\p{M}\p{N}_][\p{L}\p{M}\p{N} _-]*\.json$/u);
        expect([...file].length).toBeLessThanOrEqual(65);
      }),
    );
  });
});

describe('layoutFile and readLayoutFile', () => {
  it('what was exported comes back the same, as a layout of its own', async () => {
    const { name, text } = layoutFile(sample('one', 'Open air'));
    expect(name).toBe('Open air.json');
    expect(await readLayoutFile(offered(text), 'two')).toEqual({
      ok: true,
      layout: sample('two', 'Open air'),
    });
  });

  it('a file that is too large is refused before it is read', async () => {
    let read = false;
    const file = {
      name: 'huge.json',
      size: MOST_CHARACTERS + 1,
      text: async () => {
        read = true;
        return '';
      },
    };
    expect(await readLayoutFile(file, 'two')).toMatchObject({
      ok: false,
      problems: [{ code: 'too-large', path: '', actual: '8000001 bytes' }],
    });
    expect(read).toBe(false);
  });

  it('a bad file names where and what was expected', async () => {
    const bad = { ...sample('one'), pieces: [{ ...sample('one').pieces[0], diameter: 20_000 }] };
    expect(await readLayoutFile(offered(JSON.stringify(bad)), 'two')).toMatchObject({
      ok: false,
      problems: [{ code: 'out-of-range', path: 'pieces[0].diameter' }],
    });
  });
});

it('a sheet is named after its layout and has the type of its format', () => {
  const file = sheetFile({ name: 'Small club: Friday' }, 'plan, A4 landscape', 'dxf', 'x');
  expect(file).toEqual({
    name: 'Small club - Friday - plan, A4 landscape.dxf',
    type: 'image/vnd.dxf',
    content: 'x',
  });
});
