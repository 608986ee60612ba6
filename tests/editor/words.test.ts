import { describe, expect, test } from 'vitest';
import { againText } from '../../src/editor/words.ts';
import { kit, pieceOf } from './support.ts';

const layout = kit('five-piece-two-racks');
const snare = { kind: 'piece', id: pieceOf(layout, 'snare').id } as const;
const ride = { kind: 'piece', id: pieceOf(layout, 'ride').id } as const;
const mic = layout.mics.find(({ name }) => name === 'Snare') ?? layout.mics[0];
const micThere = { kind: 'mic', id: mic?.id ?? '' } as const;

describe('what a second tap on the same spot does, in words', () => {
  test('names the next thing there, round and round', () => {
    expect(againText(layout, [ride, snare], ride)).toBe('1 of 2 here. Tap again: Snare, the drum');
    expect(againText(layout, [ride, snare], snare)).toBe('2 of 2 here. Tap again: Ride');
  });

  test('says of a mic that it is one: it often has its drum’s name', () => {
    expect(againText(layout, [snare, micThere], snare)).toBe(
      `1 of 2 here. Tap again: ${mic?.name} mic`,
    );
  });

  test('says of a drum that it is one only where a mic has its name', () => {
    const unmiked = { ...layout, mics: layout.mics.filter(({ name }) => name !== 'Snare') };
    expect(againText(unmiked, [ride, snare], ride)).toBe('1 of 2 here. Tap again: Snare');
  });

  test('says nothing of one thing, of nothing selected, or when something else was selected since', () => {
    expect(againText(layout, [ride], ride)).toBeUndefined();
    expect(againText(layout, [ride, snare], null)).toBeUndefined();
    expect(againText(layout, [ride, snare], { kind: 'box' })).toBeUndefined();
  });

  test('what was removed since is not named', () => {
    const without = { ...layout, pieces: layout.pieces.filter(({ id }) => id !== snare.id) };
    expect(againText(without, [ride, snare], ride)).toBeUndefined();
  });
});
