import { describe, expect, it } from 'vitest';
import { among, stand } from './scenes.ts';

describe('K5: mics against mics', () => {
  it('two bodies that share a place overlap by as much as worked by hand', () => {
    // Parallel pencils of 22 mm, 15 mm apart: 7 mm.
    const at = (y: number, baseY: number) =>
      stand({ base: { x: -200, y: baseY }, tip: { x: 500, y, z: 1300 }, mast: 1600 });
    const [only, ...others] = among([], [[at(0, -500)], [at(15, 515)]]);
    expect(only).toMatchObject({ code: 'mic-against-mic', about: ['a', 'b'] });
    expect(only?.overlap).toBeCloseTo(7, 3);
    expect(others).toEqual([]);
    expect(among([], [[at(0, -500)], [at(40, 540)]])).toEqual([]);
  });
});
