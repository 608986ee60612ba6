import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Box } from '../../../src/editor/labels/placeLabels.ts';
import { Stamps } from '../../../src/editor/labels/stamps.ts';

/** A canvas that notes where things are drawn on it, in pixels of the device. */
class Sheet {
  readonly drawn: { readonly what: unknown; readonly x: number; readonly y: number }[] = [];
  width = 0;
  height = 0;
  private at = { x: 0, y: 0, scale: 1 };
  private readonly kept: (typeof this.at)[] = [];

  constructor(scale = 1) {
    this.at = { x: 0, y: 0, scale };
  }

  getContext(): this {
    return this;
  }
  scale(by: number): void {
    this.at = { ...this.at, scale: this.at.scale * by };
  }
  translate(x: number, y: number): void {
    const { scale } = this.at;
    this.at = { x: this.at.x + x * scale, y: this.at.y + y * scale, scale };
  }
  save(): void {
    this.kept.push(this.at);
  }
  restore(): void {
    this.at = this.kept.pop() ?? this.at;
  }
  mark(what: string, x: number, y: number): void {
    const { scale } = this.at;
    this.drawn.push({ what, x: this.at.x + x * scale, y: this.at.y + y * scale });
  }
  drawImage(picture: Sheet, ...[x, y, width, height]: [number, number, number, number]): void {
    const { scale } = this.at;
    expect(width * scale).toBeCloseTo(picture.width, 6);
    expect(height * scale).toBeCloseTo(picture.height, 6);
    this.drawn.push({ what: picture, x: this.at.x + x * scale, y: this.at.y + y * scale });
  }
}

/** Draws a mark at the corner of a box with stamps on a new sheet of the device. */
function draw(stamps: Stamps, box: Box, ratio: number, ...keys: readonly string[]): Sheet {
  const sheet = new Sheet(ratio);
  const on = { canvas: sheet as unknown as CanvasRenderingContext2D, ratio };
  for (const key of keys.length > 0 ? keys : ['look']) {
    stamps.draw(on, { key, box }, (canvas) =>
      (canvas as unknown as Sheet).mark('corner', box.left, box.top),
    );
  }
  return sheet;
}

/** So often that a picture was made. */
function drawOften(stamps: Stamps, box: Box, ratio: number): void {
  for (let i = 0; i < 10; i += 1) draw(stamps, box, ratio);
}

const newStamps = () => {
  const pictures: Sheet[] = [];
  const stamps = new Stamps(() => {
    const picture = new Sheet();
    pictures.push(picture);
    return picture as unknown as HTMLCanvasElement;
  });
  return { stamps, pictures };
};

const at = (left: number, top: number): Box => ({ left, top, width: 50.5, height: 22 });

test('S1: what is drawn seldom has no picture; what comes often has one, painted once', () => {
  const { stamps, pictures } = newStamps();
  for (let i = 0; i < 9; i += 1) {
    expect(draw(stamps, at(10, 20), 1).drawn).toMatchObject([{ what: 'corner' }]);
  }
  expect(pictures).toHaveLength(0);
  for (const left of [30, 70, 90]) {
    const { drawn } = draw(stamps, at(left, 20), 1);
    expect(drawn).toEqual([{ what: pictures[0], x: left - 4, y: 16 }]);
  }
  expect(pictures).toHaveLength(1);
  expect(pictures[0]?.drawn).toEqual([{ what: 'corner', x: 4, y: 4 }]);
  // Another device, another picture.
  expect(draw(stamps, at(10, 20), 2).drawn).toMatchObject([{ what: 'corner' }]);
});

test('S1: however many things are drawn together, few have their pictures made at once, and all of them at last', () => {
  const { stamps, pictures } = newStamps();
  const keys = Array.from({ length: 50 }, (_, i) => `name ${i}`);
  let before = 0;
  for (let i = 0; i < 60; i += 1) {
    draw(stamps, at(0, 0), 1, ...keys);
    expect(pictures.length - before).toBeLessThanOrEqual(2);
    before = pictures.length;
  }
  expect(pictures).toHaveLength(50);
});

test('S1: numbers that come seldom do not drive out the pictures', () => {
  const { stamps, pictures } = newStamps();
  drawOften(stamps, at(0, 0), 1);
  for (let i = 0; i < 3000; i += 1) draw(stamps, at(0, 0), 1, `${i} mm`);
  expect(draw(stamps, at(0, 0), 1).drawn).toEqual([{ what: pictures[0], x: -4, y: -4 }]);
  // Nor is the store ever without end.
  for (let i = 0; i < 500; i += 1)
    for (let k = 0; k < 10; k += 1) draw(stamps, at(0, 0), 1, `${i}`);
  expect(draw(stamps, at(0, 0), 1).drawn).toMatchObject([{ what: 'corner' }]);
});

test('S2: with its picture or without, it stands on the same whole pixels of the device, less than one away', () => {
  const place = fc.double({ min: 0, max: 2000, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(place, { minLength: 2, maxLength: 2 }),
      fc.constantFrom(1, 1.25, 1.5, 2, 2.625, 3),
      ([left = 0, top = 0], ratio) => {
        const { stamps, pictures } = newStamps();
        const [plain] = draw(stamps, at(left, top), ratio).drawn;
        drawOften(stamps, at(left, top), ratio);
        const [stamped] = draw(stamps, at(left, top), ratio).drawn;
        const [inside] = pictures[0]?.drawn ?? [];
        for (const axis of ['x', 'y'] as const) {
          const whole = plain?.[axis] ?? Number.NaN;
          expect(Math.abs(whole - Math.round(whole))).toBeLessThan(1e-6);
          expect(Math.abs(whole - ratio * (axis === 'x' ? left : top))).toBeLessThan(0.5 + 1e-6);
          expect((stamped?.[axis] ?? Number.NaN) + (inside?.[axis] ?? Number.NaN)).toBeCloseTo(
            whole,
            6,
          );
        }
      },
    ),
  );
});
