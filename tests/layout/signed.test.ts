import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { digestOf } from '../../src/layout/digest.ts';
import {
  moveMicTip,
  renameMic,
  setHears,
  setInput,
  setMicClass,
} from '../../src/layout/edit/mics.ts';
import { addOwnClass } from '../../src/layout/edit/ownClasses.ts';
import { movePiece, renamePiece } from '../../src/layout/edit/pieces.ts';
import {
  moveBox,
  moveKit,
  setCabling,
  setDeck,
  setMargin,
  setPlayer,
  setStock,
  setVenue,
} from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { readLayout } from '../../src/layout/read.ts';
import { isWhole, signedKit, signedText } from '../../src/layout/signed.ts';
import type { SignOff } from '../../src/layout/signOff.ts';
import { randomKit } from '../support/randomKit.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;

const signOffOf = (signed: string, form = 4): SignOff => ({
  id: 'signed-1',
  name: 'Drummer',
  at: '2031-05-17T18:30:00Z',
  consent: true,
  answers: [],
  notes: '',
  form,
  signed,
  digest: digestOf(signed),
});

describe('the signed text', () => {
  test.each<readonly [string, (layout: Layout) => Layout]>([
    ['the box', (l) => moveBox(l, { x: 900, y: 300, turn: 90 })],
    ['cables', (l) => setCabling(l, { loopAtMic: 900, dressing: 12, neatness: 1 })],
    ['the stock', (l) => setStock(l, 12_000, 3)],
    ['the name of a mic and its channel', (l) => renameMic(l, 'mic-snare', 'Sn T')],
    ['the name of a piece', (l) => renamePiece(l, 'snare', 'Piccolo')],
    ['an input', (l) => setInput(l, 'mic-snare', null)],
    ['the deck', (l) => setDeck(l, { width: 4000 })],
    ['the kit on the deck', (l) => moveKit(l, { x: 200, turn: 12 })],
    ['the venue', (l) => setVenue(l, { name: 'Barn', temperature: 4 })],
    ['the margin', (l) => setMargin(l, 80)],
    ['the order of mics (N4)', (l) => ({ ...l, mics: l.mics.toReversed() })],
    ['the order of pieces (N4)', (l) => ({ ...l, pieces: l.pieces.toReversed() })],
    ['a class that no mic is of', (l) => addOwnClass(l, { ...ownClass, id: 'other' })],
  ])('stays when this changes: %s', (_, change) => {
    const changed = change(kit);
    expect(changed).not.toBe(kit);
    expect(signedText(changed)).toBe(signedText(kit));
  });

  test.each<readonly [string, (layout: Layout) => Layout]>([
    ['the place of a mic', (l) => moveMicTip(l, 'mic-snare', { x: 10, y: 400 })],
    ['the class of a mic', (l) => setMicClass(l, 'mic-snare', 'pencil-condenser')],
    ['what a mic hears', (l) => setHears(l, 'mic-snare', ['kick'])],
    ['the place of a piece', (l) => movePiece(l, 'snare', { x: 3, y: 420 })],
    ['the player', (l) => setPlayer(l, { stature: 1800 })],
    ['a mic that is gone', (l) => ({ ...l, mics: l.mics.slice(1) })],
  ])('changes with %s', (_, change) => {
    expect(signedText(change(kit))).not.toBe(signedText(kit));
  });

  test('N1-N3: changes with every field of player, pieces and mics but names and inputs', () => {
    const { player, pieces, mics } = kit;
    const fields = leaves({ player, pieces, mics });
    expect(fields.length).toBeGreaterThan(200);
    for (const path of fields) {
      const changed: Layout = structuredClone(kit);
      const holder = path
        .slice(0, -1)
        .reduce<object>((inner, step) => Reflect.get(inner, step), changed);
      const last = path.at(-1) ?? '';
      Reflect.set(holder, last, another(Reflect.get(holder, last)));
      const isSigned = !(path.length === 3 && ['name', 'input'].includes(last));
      expect(signedText(changed) !== signedText(kit), path.join('.')).toBe(isSigned);
    }
  });

  test("N3: changes with the facts of the user's own class, and not with its name", () => {
    const own = setMicClass(addOwnClass(kit, ownClass), 'mic-snare', 'mine');
    const withClass = (patch: object) => ({
      ...own,
      ownClasses: own.ownClasses.map((one) => ({ ...one, ...patch })),
    });
    expect(signedText(withClass({ name: 'Another name' }))).toBe(signedText(own));
    expect(signedText(withClass({ length: 190 }))).not.toBe(signedText(own));
  });

  test('is refused when a number is not finite', () => {
    const player = { ...kit.player, stature: Number.NaN };
    expect(() => signedText({ ...kit, player })).toThrow(RangeError);
  });
});

describe('a signed kit', () => {
  test('is read back as it was signed, for any kit', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const text = signedText(layout);
        const back = signedKit(signOffOf(text), layout);
        expect(back && signedText(back)).toBe(text);
      }),
      { numRuns: 30 },
    );
  });

  test('of an older form is brought forward, its text and digest stay', () => {
    const { hiHat: _, lean: __, ...player } = kit.player;
    const text = JSON.stringify({ ...JSON.parse(signedText(kit)), player });
    const signOff = signOffOf(text, 1);
    expect(isWhole(signOff)).toBe(true);
    expect(signedKit(signOff, kit)?.player).toEqual({ ...player, hiHat: 'either', lean: 200 });
    expect(signedKit({ ...signOff, form: 4 }, kit)).toBeUndefined();
  });

  test.each([
    'no JSON',
    '[]',
    '{"mics":[],"pieces":[]}',
    '{"mics":{},"pieces":[],"player":{}}',
    '{"mics":[1],"pieces":[null],"player":7}',
    '{"mics":[],"pieces":[],"player":{"__proto__":{}}}',
  ])('is not in %s', (text) => {
    expect(signedKit(signOffOf(text), kit)).toBeUndefined();
  });

  test('whose digest is not that of its text is told', () => {
    const whole = signOffOf(signedText(kit));
    expect(isWhole(whole)).toBe(true);
    expect(isWhole({ ...whole, signed: whole.signed.replace('1750', '1751') })).toBe(false);
    expect(isWhole({ ...whole, digest: digestOf('') })).toBe(false);
  });

  test('of the stored example is whole and that of its layout', () => {
    const read = readLayout(readFileSync('tests/fixtures/layouts/v4-signed.json', 'utf8'));
    if (!read.ok) throw new Error('the stored example is a layout');
    const [first] = read.layout.signOffs;
    expect(first && isWhole(first)).toBe(true);
    expect(first?.signed).toBe(signedText(read.layout));
  });
});

const ownClass = {
  id: 'mine',
  name: 'My own',
  length: 170,
  diameter: 48,
  address: 'end',
  patternA: 0.5,
  type: 'dynamic',
  phantom: false,
  connector: 'straight',
  mass: 0.3,
} as const;

/** The paths of everything in a value that is no list and no object. */
function leaves(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

/** A value of the same type that is not the same. */
function another(value: unknown): unknown {
  if (typeof value === 'number') return value + 1;
  return typeof value === 'boolean' ? !value : `${value}x`;
}
