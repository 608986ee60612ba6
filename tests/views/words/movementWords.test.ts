import { describe, expect, it } from 'vitest';
import {
  micPartWords,
  movementWords,
  type Nearest,
} from '../../../src/views/words/movementWords.ts';
import { sample, snareRow } from './sampleLayout.ts';

const nearest = (movement: Nearest['movement'], part: Nearest['part']): Nearest => {
  const row = snareRow(10, 'tight').nearest;
  if (!row) throw new Error('the sample row has a nearest place');
  return { ...row, movement, part };
};

describe('what moves', () => {
  it('is said for every kind of movement', () => {
    const words = (movement: Nearest['movement'], part: Nearest['part']) =>
      movementWords(nearest(movement, part), sample);
    expect(words({ kind: 'stroke', hand: 'left', on: 'rack-1', at: 0.2 }, 'forearm')).toBe(
      'left forearm, playing Rack tom 1',
    );
    expect(
      words({ kind: 'travel', hand: 'right', from: 'snare', to: 'floor', at: 0.5 }, 'hand'),
    ).toBe('right hand, travelling from Snare to Floor tom');
    expect(words({ kind: 'leg', foot: 'right', pedal: 'pedal-kick' }, 'shin')).toBe(
      'right shin, at rest on Kick pedal',
    );
    expect(words({ kind: 'leg', foot: 'left', pedal: null }, 'thigh')).toBe('left thigh, at rest');
    expect(words({ kind: 'swing', cymbal: 'crash-1' }, 'cymbal')).toBe('Crash 1, swinging');
  });

  it('keeps the id of a thing that is no longer there', () => {
    expect(movementWords(nearest({ kind: 'swing', cymbal: 'gone' }, 'cymbal'), sample)).toBe(
      'gone, swinging',
    );
  });

  it('calls the parts of a mic by name', () => {
    expect(micPartWords('clipArm')).toBe("the clip's arm");
  });
});
