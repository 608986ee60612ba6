import { describe, expect, it } from 'vitest';
import { fivePiece, kits } from '../rig/kits.ts';
import { heardIn, micAt, only, sceneOf, smallSource, standAt } from './scenes.ts';

const ride = only(fivePiece.pieces.find(({ id }) => id === 'ride'));
const snare = only(fivePiece.pieces.find(({ id }) => id === 'snare'));
if (!('z' in ride)) throw new TypeError('a ride has a height');
const rideHeight = ride.z;

const roleOf = (hears: readonly string[], above: number) =>
  heardIn(
    sceneOf(
      [ride, snare],
      [micAt('mic', hears, standAt([ride.x, ride.y, rideHeight + above], [0, -90]))],
    ),
  ).listeners[0]?.role;

describe('H20 what a mic is there for', () => {
  it('overheads of the starting kits are overheads, all other mics close', () => {
    for (const layout of kits) {
      for (const { role, placed } of heardIn(layout).listeners) {
        expect(role).toBe(placed.mic.name.startsWith('Overhead') ? 'overhead' : 'close');
      }
    }
  });

  it('above a cymbal and something else it is an overhead, however low', () => {
    expect(roleOf(['ride', 'snare'], 200)).toBe('overhead');
    expect(roleOf(['snare', 'ride'], 200)).toBe('overhead');
  });

  it('below the cymbals it is not', () => {
    expect(roleOf(['ride', 'snare'], -100)).toBe('close');
  });

  it('over one cymbal alone it is an overhead from 400 mm up', () => {
    expect(roleOf(['ride'], 399)).toBe('close');
    expect(roleOf(['ride'], 400)).toBe('overhead');
  });

  it('over drums alone it is a close mic', () => {
    expect(roleOf(['snare'], 800)).toBe('close');
  });

  it('without anything that sounds it is free', () => {
    expect(roleOf([], 500)).toBe('free');
  });

  it('its own source is the first that sounds', () => {
    const throne = only(fivePiece.pieces.find(({ kind }) => kind === 'throne'));
    const block = smallSource('block', [0, 500, 800]);
    const layout = sceneOf(
      [throne, block, snare],
      [micAt('mic', ['throne', 'block', 'snare'], standAt([0, 500, 900], [0, -90]))],
    );
    const { listeners } = heardIn(layout);
    expect(listeners[0]?.own?.piece.id).toBe('block');
    expect(listeners[0]?.wanted.map(({ piece }) => piece.id)).toEqual(['block', 'snare']);
    expect(listeners[0]?.heard.map(({ piece }) => piece)).toEqual(['block', 'snare']);
  });
});
