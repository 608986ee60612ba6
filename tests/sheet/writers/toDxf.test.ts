import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { toDeck } from '../../../src/rig/deckFrame.ts';
import { planDrawing } from '../../../src/sheet/drawing/planDrawing.ts';
import { LAYERS } from '../../../src/sheet/mark.ts';
import { toDxf } from '../../../src/sheet/writers/toDxf.ts';
import { sheetWords } from '../../../src/views/words/sheetWords.ts';
import { startingKit } from '../samples.ts';

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  readonly text?: string;
  readonly startPoint?: { readonly x: number; readonly y: number };
}

/** What a reader that is not ours finds in the file. */
function read(text: string) {
  const found = new DxfParser().parseSync(text);
  if (!found) throw new Error('the file can not be read');
  return {
    units: Number(found.header.$INSUNITS),
    layers: Object.keys(found.tables.layer.layers),
    entities: found.entities as unknown as readonly Entity[],
  };
}

const layout = startingKit('large-kit');
const report = createAnalyst()(layout);
const { forms } = sheetWords(layout, report, 'A4');
const drawing = planDrawing(layout, report, 'player', forms);
const dxf = read(toDxf(drawing));

describe('the DXF of a plan', () => {
  test('is in mm ($INSUNITS 4) and has a layer for each kind of thing', () => {
    expect(dxf.units).toBe(4);
    expect(dxf.layers).toEqual(expect.arrayContaining([...LAYERS]));
  });

  test('has every mark as it is drawn, at its true size', () => {
    const shapes = dxf.entities.filter(({ type }) => type !== 'TEXT');
    expect(shapes).toHaveLength(drawing.marks.length);
    const deck = shapes.find(({ layer }) => layer === 'DECK');
    const { width, depth } = layout.deck;
    expect(deck?.vertices?.map(({ x, y }) => [x, y])).toEqual([
      [-width / 2, -depth / 2],
      [width / 2, -depth / 2],
      [width / 2, depth / 2],
      [-width / 2, depth / 2],
    ]);
  });

  test('has a text beside the middle of every piece and mic', () => {
    const texts = dxf.entities.filter(({ type }) => type === 'TEXT');
    expect(texts).toHaveLength(drawing.labels.length);
    const snare = layout.pieces.find(({ id }) => id === 'snare');
    if (!snare || !('x' in snare)) throw new Error('no snare');
    const at = toDeck(layout.deck, { x: snare.x, y: snare.y });
    const named = texts.find(({ text }) => text?.includes('Snare 660'));
    expect(named?.startPoint?.y).toBeCloseTo(at.y, -2);
    expect(Math.abs((named?.startPoint?.x ?? 1e9) - at.x)).toBeLessThan(120);
  });

  test('names of any letters stay on their line', () => {
    const odd = {
      ...layout,
      pieces: layout.pieces.map((p) => ({ ...p, name: 'A\n0\nEOF Größe' })),
    };
    const words = sheetWords(odd, report, 'A4');
    const again = read(toDxf(planDrawing(odd, report, 'player', words.forms)));
    expect(again.entities).toHaveLength(dxf.entities.length);
  });
});
