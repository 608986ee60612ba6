import { createCanvas } from '@napi-rs/canvas';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { BesidePainter } from '../../../src/editor/ink/besidePainter.ts';
import type { Ink } from '../../../src/editor/ink/ink.ts';
import type { PaintedMessage, PaintMessage } from '../../../src/editor/ink/painting.ts';
import { PaintingHand } from '../../../src/editor/ink/paintingHand.ts';
import { asBrowsers, measure } from './painted.ts';

const [WIDTH, HEIGHT] = [80, 60];

/** A canvas that can be handed over. */
function newCanvas() {
  const canvas = createCanvas(1, 1);
  const lost = new EventTarget();
  const handed = {
    get width() {
      return canvas.width;
    },
    set width(width: number) {
      canvas.width = width;
    },
    get height() {
      return canvas.height;
    },
    set height(height: number) {
      canvas.height = height;
    },
    getContext: () => asBrowsers(canvas.getContext('2d')),
    addEventListener: lost.addEventListener.bind(lost),
  };
  return { canvas, lost, handed: handed as unknown as OffscreenCanvas };
}

/** A page, and what paints for it when told to go on. */
function beside() {
  const posted: PaintMessage[] = [];
  const heard: PaintedMessage[] = [];
  const turns: (() => void)[] = [];
  const again = vi.fn();
  const painter = new BesidePainter(
    (message) => posted.push(message),
    (run) => turns.push(run),
    measure,
    again,
  );
  const hand = new PaintingHand((message) => heard.push(message));
  const ids = new Map<number, ReturnType<typeof newCanvas>>();
  let read = 0;
  return {
    painter,
    posted,
    again,
    add() {
      const canvas = newCanvas();
      const id = painter.takeOver(canvas.handed);
      ids.set(id, canvas);
      return { id, ink: painter.newInk(), ...canvas };
    },
    endTurn() {
      for (const run of turns.splice(0)) run();
    },
    /** Paints one message and tells the page. */
    goOn() {
      const message = posted[read];
      if (!message) return false;
      read += 1;
      hand.hear(message);
      for (const told of heard.splice(0)) painter.hear(told);
      return true;
    },
  };
}

type Beside = ReturnType<typeof beside>;
type Added = ReturnType<Beside['add']>;

function draw({ painter }: Beside, { id, ink }: Added, paint: (ink: Ink) => void): void {
  ink.begin();
  paint(ink);
  painter.paint({ id, width: WIDTH, height: HEIGHT, ratio: 1, ...ink.end() });
}

const filled =
  (colour: string) =>
  (ink: Ink): void => {
    ink.clearRect(0, 0, WIDTH, HEIGHT);
    ink.fillStyle = colour;
    ink.fillRect(0, 0, WIDTH, HEIGHT);
  };

const colourOf = ({ canvas }: Added): string => canvas.data().subarray(0, 4).toString('hex');

beforeEach(() => {
  vi.stubGlobal('OffscreenCanvas', function create() {
    return createCanvas(1, 1);
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test('what is drawn in one turn goes in one message (B1)', () => {
  const page = beside();
  const [deck, kit] = [page.add(), page.add()];
  draw(page, deck, filled('#102030'));
  draw(page, kit, filled('#405060'));
  expect(page.posted).toHaveLength(0);
  page.endTurn();
  expect(page.posted).toHaveLength(1);
  page.goOn();
  expect([colourOf(deck), colourOf(kit)]).toEqual(['102030ff', '405060ff']);
  expect([deck.canvas.width, deck.canvas.height]).toEqual([WIDTH, HEIGHT]);
});

test('two messages are under way at most, and of a canvas only the last drawing is sent (B2)', () => {
  const page = beside();
  const kit = page.add();
  for (const colour of ['#100000', '#200000', '#300000', '#400000']) {
    draw(page, kit, filled(colour));
    page.endTurn();
  }
  expect(page.posted).toHaveLength(2);
  page.goOn();
  expect(colourOf(kit)).toBe('100000ff');
  expect(page.posted).toHaveLength(3);
  page.goOn();
  page.goOn();
  expect(colourOf(kit)).toBe('400000ff');
  expect(page.goOn()).toBe(false);
});

test('an empty turn sends nothing', () => {
  const page = beside();
  page.add();
  page.endTurn();
  page.goOn();
  page.endTurn();
  expect(page.posted).toHaveLength(1);
});

test('a canvas that left is not painted, and the others are', () => {
  const page = beside();
  const [gone, kit] = [page.add(), page.add()];
  page.endTurn();
  draw(page, gone, filled('#111111'));
  draw(page, kit, filled('#222222'));
  page.painter.leave(gone.id);
  page.endTurn();
  while (page.goOn());
  expect(colourOf(kit)).toBe('222222ff');
  expect(colourOf(gone)).toBe('00000000');
  expect(page.posted.at(-1)?.gone).toEqual([gone.id]);
});

test('pictures that were lost are drawn again', () => {
  const page = beside();
  const kit = page.add();
  draw(page, kit, filled('#222222'));
  page.endTurn();
  page.goOn();
  kit.lost.dispatchEvent(new Event('contextrestored'));
  draw(page, kit, filled('#333333'));
  page.endTurn();
  page.goOn();
  expect(page.again).toHaveBeenCalledOnce();
});

test('texts without end are told, forgotten and told anew, and each drawing shows its own', () => {
  const page = beside();
  const kit = page.add();
  const write = (text: string) => (ink: Ink) => {
    ink.clearRect(0, 0, WIDTH, HEIGHT);
    ink.font = '14px sans-serif';
    ink.fillText(text, 2, 40);
  };
  let forgot = 0;
  for (let i = 0; i < 4500; i += 1) {
    draw(page, kit, write(`${i} mm`));
    page.endTurn();
    if (page.posted.at(-1)?.forgetsTexts) forgot += 1;
    page.goOn();
  }
  expect(forgot).toBe(1);
  const sheet = createCanvas(WIDTH, HEIGHT);
  write('4499 mm')(asBrowsers(sheet.getContext('2d')));
  expect(kit.canvas.data().equals(sheet.data())).toBe(true);
  const known = page.posted.slice(-400).reduce((sum, { texts }) => sum + texts.length, 0);
  expect(known).toBeLessThan(500);
});

test('however page and painter take turns, each canvas ends as it was drawn last', () => {
  const step = fc.oneof(
    fc.record({ canvas: fc.nat(2), colour: fc.integer({ min: 0, max: 255 }) }),
    fc.constantFrom('turn' as const, 'paint' as const),
  );
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
      const page = beside();
      const canvases = [page.add(), page.add(), page.add()];
      const last = new Map<Added, string>();
      for (const one of steps) {
        if (one === 'turn') page.endTurn();
        else if (one === 'paint') page.goOn();
        else {
          const canvas = canvases[one.canvas] as Added;
          const colour = `${one.colour.toString(16).padStart(2, '0')}8040`;
          draw(page, canvas, filled(`#${colour}`));
          last.set(canvas, `${colour}ff`);
        }
      }
      page.endTurn();
      while (page.goOn());
      for (const [canvas, colour] of last) expect(colourOf(canvas)).toBe(colour);
    }),
    { numRuns: 60 },
  );
});
