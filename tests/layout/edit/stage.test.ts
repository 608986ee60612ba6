import { describe, expect, test } from 'vitest';
import { fourPieceJazz } from '../../../src/layout/catalogue/kits/fourPieceJazz.ts';
import {
  addStairs,
  changeStairs,
  moveBox,
  moveKit,
  removeStairs,
  renameLayout,
  setBody,
  setBox,
  setCabling,
  setDeck,
  setMargin,
  setPlayer,
  setStick,
  setStock,
  setUnits,
  setVenue,
  takePlayer,
} from '../../../src/layout/edit/stage.ts';

const kit = fourPieceJazz('kit');

test('each edit changes its own part only', () => {
  expect(renameLayout(kit, 'Late show')).toEqual({ ...kit, name: 'Late show' });
  expect(setUnits(kit, 'in')).toEqual({ ...kit, units: 'in' });
  expect(setMargin(kit, 80)).toEqual({ ...kit, margin: 80 });
  expect(setVenue(kit, { temperature: 31 })).toEqual({
    ...kit,
    venue: { ...kit.venue, temperature: 31 },
  });
  expect(setDeck(kit, { width: 3000 })).toEqual({ ...kit, deck: { ...kit.deck, width: 3000 } });
  expect(setBox(kit, { inputs: 16 })).toEqual({ ...kit, box: { ...kit.box, inputs: 16 } });
  expect(setCabling(kit, { dressing: 10 })).toEqual({
    ...kit,
    cabling: { ...kit.cabling, dressing: 10 },
  });
});

test('a value that is there already gives the same layout', () => {
  expect(setMargin(kit, kit.margin)).toBe(kit);
  expect(setVenue(kit, { ...kit.venue })).toBe(kit);
  expect(setStick(kit, { ...kit.player.stick })).toBe(kit);
  expect(moveKit(kit, { ...kit.deck.kit })).toBe(kit);
  expect(moveBox(kit, { x: kit.box.x, y: kit.box.y })).toBe(kit);
});

test('a date is one of the calendar or none', () => {
  expect(setVenue(kit, { date: '2031-05-17' }).venue.date).toBe('2031-05-17');
  expect(setVenue(kit, { date: '2031-02-30' })).toBe(kit);
  const dated = setVenue(kit, { date: '2031-05-17' });
  expect(setVenue(dated, { date: null }).venue.date).toBeNull();
});

describe('player', () => {
  test('values stop at their limits', () => {
    expect(setPlayer(kit, { stature: 100, seatHeight: 5000 }).player).toMatchObject({
      stature: 1200,
      seatHeight: 800,
    });
  });

  test('a measured length replaces, and is given back', () => {
    const measured = setBody(kit, { acromionRadiale: 340 });
    expect(measured.player.body).toEqual({ acromionRadiale: 340 });
    expect(setBody(measured, { acromionRadiale: undefined })).toEqual(kit);
  });

  test('another player is taken over whole, and the same one changes nothing', () => {
    const other = { ...kit.player, name: 'Other', body: { biacromialBreadth: 430 }, lean: 350 };
    expect(takePlayer(kit, other)).toEqual({ ...kit, player: other });
    expect(takePlayer(kit, { ...kit.player, body: {} })).toBe(kit);
  });
});

describe('deck, stairs and box', () => {
  test('stairs are added, changed and taken away', () => {
    const more = addStairs(kit, { edge: 'left', offset: 100, width: 800 });
    expect(more.deck.stairs).toHaveLength(2);
    expect(more.deck.stairs[0]).toBe(kit.deck.stairs[0]);
    expect(changeStairs(more, 1, { edge: 'right' }).deck.stairs[1]).toEqual({
      edge: 'right',
      offset: 100,
      width: 800,
    });
    expect(removeStairs(more, 1)).toEqual(kit);
    expect(removeStairs(more, 0).deck.stairs[0]).toBe(more.deck.stairs[1]);
    expect(changeStairs(kit, 7, { width: 500 })).toBe(kit);
  });

  test('the kit is moved and turned on its deck, pieces and mics stay what they are', () => {
    const moved = moveKit(kit, { x: 100, turn: -90 });
    expect(moved.deck.kit).toEqual({ x: 100, y: -720, turn: 270 });
    expect([moved.pieces, moved.mics]).toEqual([kit.pieces, kit.mics]);
  });

  test('the box keeps facing the same way unless told otherwise', () => {
    expect(moveBox(kit, { x: 5, y: 6 }).box).toMatchObject({ x: 5, y: 6, turn: 0 });
    expect(moveBox(kit, { x: 5, y: 6, turn: 450 }).box).toMatchObject({ turn: 90 });
  });
});

test('the stock stays sorted, one row for each length, and none takes the row away', () => {
  const more = setStock(setStock(kit, 4000, 3), 2000, 1);
  const lengths = more.cabling.stock.map(({ length }) => length);
  expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
  expect(new Set(lengths).size).toBe(lengths.length);
  expect(more.cabling.stock[0]).toEqual({ length: 2000, count: 1 });
  expect(setStock(setStock(kit, 4000, 3), 4000, 0)).toEqual(kit);
});
