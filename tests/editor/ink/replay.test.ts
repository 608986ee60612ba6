import { createCanvas } from '@napi-rs/canvas';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Ink } from '../../../src/editor/ink/ink.ts';
import { RecordedInk } from '../../../src/editor/ink/recordedInk.ts';
import { replay } from '../../../src/editor/ink/replay.ts';
import { FONTS } from '../../../src/editor/labels/lettering.ts';
import { paintLabels } from '../../../src/editor/labels/paintLabels.ts';
import { Stamps, stampsOn } from '../../../src/editor/labels/stamps.ts';
import { palettes } from '../../../src/editor/palette.ts';
import { paintBox } from '../../../src/editor/shapes/box.ts';
import { paintDeck } from '../../../src/editor/shapes/deck.ts';
import { paintFootprint } from '../../../src/editor/shapes/footprint.ts';
import { paintHandle } from '../../../src/editor/shapes/handle.ts';
import { paintLegend } from '../../../src/editor/shapes/legend.ts';
import { paintMic } from '../../../src/editor/shapes/mic.ts';
import { paintPiece } from '../../../src/editor/shapes/piece.ts';
import { paintPlayer } from '../../../src/editor/shapes/player.ts';
import { paintStretch } from '../../../src/editor/shapes/run.ts';
import { paintScaleBar } from '../../../src/editor/shapes/scaleBar.ts';
import { paintZone } from '../../../src/editor/shapes/zone.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { createFigures } from '../../../src/report/figure.ts';
import { asBrowsers, measure, newSheet } from './painted.ts';

const [WIDTH, HEIGHT] = [500, 400];
const colours = palettes.dark;
const HANDLES = ['move', 'turn', 'lean', 'feet', 'aim', 'slide', 'raise'] as const;

/** A recorder with its texts, and pictures of another canvas. */
function recorder() {
  const texts: string[] = [];
  const ink = new RecordedInk({
    numberOf(text) {
      const known = texts.indexOf(text);
      return known === -1 ? texts.push(text) - 1 : known;
    },
    room: () => new Float64Array(8),
    measure,
  });
  const stamps = new Stamps(() => createCanvas(1, 1) as unknown as HTMLCanvasElement);
  return { ink, texts, stamps };
}

/** The colours of what is painted, straight and by way of a recording. */
function bothWays(paint: (ink: Ink) => void, ratio = 1) {
  const [straight, byWay] = [newSheet(WIDTH, HEIGHT, ratio), newSheet(WIDTH, HEIGHT, ratio)];
  paint(straight.ink);
  const { ink, texts, stamps } = recorder();
  ink.begin();
  paint(ink);
  replay({ canvas: byWay.ink, ratio, texts, stamps }, ink.end());
  return { straight: straight.canvas.data(), byWay: byWay.canvas.data() };
}

test('a whole kit is painted by way of a recording as it is straight away, bit for bit', () => {
  const layout = largeKit('kit');
  const report = createAnalyst()(layout);
  const figure = createFigures()(layout);
  const paint = (canvas: Ink): void => {
    const pen = { canvas, px: 10, colours };
    canvas.save();
    canvas.transform(0.1, 0, 0, -0.1, WIDTH / 2, HEIGHT / 3);
    paintDeck(pen, layout.deck);
    for (const line of report.loom.stretches) paintStretch(pen, line, 'plain');
    paintBox(pen, layout.box, new Set([1, 2]));
    for (const { footprints, piece } of report.rig.pieces) {
      for (const footprint of footprints) paintFootprint(pen, footprint, colours.hardware);
      paintPiece(pen, piece);
    }
    paintPlayer(pen, figure);
    for (const mic of report.rig.mics) paintMic(pen, mic);
    const square = [
      { x: -900, y: -900 },
      { x: 0, y: -900 },
      { x: 0, y: 0 },
    ];
    paintZone(pen, { rings: [square], isOld: false, mics: report.rig.mics });
    canvas.restore();
  };
  const { straight, byWay } = bothWays(paint, 2);
  expect(straight.some((value) => value > 0)).toBe(true);
  expect(byWay.equals(straight)).toBe(true);
});

test('letters, legends and handles are painted by way of a recording as straight away', () => {
  const paint = (canvas: Ink): void => {
    paintScaleBar(
      canvas,
      { at: { x: 20, y: 60 }, pxPerMm: 0.2, unit: 'mm', font: FONTS.strong },
      colours,
    );
    paintLegend(canvas, { x: 20, y: 100, room: 480, font: FONTS.plain, unit: 'mm' }, colours);
    for (const [i, kind] of HANDLES.entries()) {
      const anchor = { x: 60 + 60 * i, y: 200 };
      paintHandle(canvas, { kind, anchor, at: { ...anchor, y: 250 } }, colours);
    }
  };
  const { straight, byWay } = bothWays(paint);
  expect(byWay.equals(straight)).toBe(true);
});

test('a stamp is painted from its recording, and from its picture once it came often', () => {
  const { ink, texts, stamps } = recorder();
  const box = { left: 40, top: 30, width: 60, height: 20 };
  const form = { text: '63', width: 60, height: 20 };
  const label = { key: 'a', at: { x: 50, y: 90 }, box, place: 0, led: true, form };
  const look = { kind: 'verdict', verdict: 'tight', strong: true } as const;
  const paint = (canvas: Ink): void => paintLabels({ canvas, colours }, [{ label, look }]);
  const shown = Array.from({ length: 15 }, () => {
    const sheet = newSheet(WIDTH, HEIGHT, 2);
    ink.begin();
    paint(ink);
    replay({ canvas: sheet.ink, ratio: 2, texts, stamps }, ink.end());
    return sheet.canvas.data();
  });
  const [first] = shown;
  expect(first?.some((value) => value > 0)).toBe(true);
  for (const data of shown) {
    // Pictures are put down within rounding.
    expect(data.every((value, i) => Math.abs(value - (first?.[i] ?? 0)) <= 2)).toBe(true);
  }
});

test('stamps in other colours are other stamps', () => {
  const { ink, texts } = recorder();
  const box = { left: 0, top: 0, width: 10, height: 10 };
  ink.begin();
  for (const palette of [palettes.dark, palettes.light, palettes.dark]) {
    stampsOn(ink, palette)({ key: 'same', box }, (canvas) => canvas.fill());
  }
  ink.end();
  expect(texts).toHaveLength(2);
});

const call = fc.oneof(
  fc.tuple(fc.constantFrom('moveTo', 'lineTo', 'translate'), fc.tuple(...numbers(2))),
  fc.tuple(fc.constantFrom('fillRect', 'strokeRect'), fc.tuple(...numbers(4))),
  fc.tuple(fc.constant('arc'), fc.tuple(...numbers(2), fc.nat(90), ...numbers(2), fc.boolean())),
  fc.tuple(fc.constant('ellipse'), fc.tuple(...numbers(2), fc.nat(90), fc.nat(90), ...numbers(3))),
  fc.tuple(fc.constantFrom('beginPath', 'closePath', 'fill', 'stroke'), fc.constant([])),
  fc.tuple(fc.constant('setLineDash'), fc.tuple(fc.array(fc.integer({ min: 1, max: 9 })))),
  fc.tuple(fc.constantFrom('fillText', 'strokeText'), fc.tuple(fc.string(), ...numbers(2))),
);
const setting = fc.oneof(
  fc.tuple(fc.constantFrom('fillStyle', 'strokeStyle'), fc.constantFrom('#a31', '#0f0', 'blue')),
  fc.tuple(fc.constant('lineWidth'), fc.integer({ min: 1, max: 20 })),
  fc.tuple(fc.constant('globalAlpha'), fc.constantFrom(0.2, 0.5, 1)),
  fc.tuple(fc.constant('lineCap'), fc.constantFrom('round', 'butt', 'square')),
  fc.tuple(fc.constant('lineJoin'), fc.constantFrom('round', 'bevel', 'miter')),
  fc.tuple(fc.constant('globalCompositeOperation'), fc.constantFrom('source-over', 'xor')),
  fc.tuple(fc.constant('textAlign'), fc.constantFrom('left', 'center')),
);

function numbers(count: number) {
  return Array.from({ length: count }, () => fc.integer({ min: -50, max: 500 }));
}

test('whatever is drawn, its recording draws the same', () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(call, setting), { maxLength: 60 }), (told) => {
      const { straight, byWay } = bothWays((ink) => {
        for (const [name, value] of told) {
          const target = ink as unknown as Record<string, unknown>;
          if (Array.isArray(value)) (target[name] as (...all: unknown[]) => void)(...value);
          else target[name] = value;
        }
      });
      expect(byWay.equals(straight)).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('a colour that is no text is refused and says what was expected', () => {
  const { ink } = recorder();
  const gradient = asBrowsers(createCanvas(1, 1).getContext('2d')).createLinearGradient(0, 0, 1, 1);
  ink.begin();
  expect(() => {
    ink.fillStyle = gradient;
  }).toThrow(/expected a text/);
});
