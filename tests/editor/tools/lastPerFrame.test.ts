import { describe, expect, test } from 'vitest';
import { lastPerFrame } from '../../../src/editor/tools/lastPerFrame.ts';
import { handDrawn } from './handDrawn.ts';

describe('one value per frame', () => {
  test('only the last of many positions is applied, once', () => {
    const applied: number[] = [];
    const frames = handDrawn();
    const line = lastPerFrame((value: number) => applied.push(value), frames);
    for (const value of [1, 2, 3]) line.push(value);
    expect(applied).toEqual([]);
    frames.draw();
    frames.draw();
    expect(applied).toEqual([3]);
    line.push(4);
    frames.draw();
    expect(applied).toEqual([3, 4]);
  });

  test('what waits at the end of a drag is applied at once, and not again', () => {
    const applied: number[] = [];
    const frames = handDrawn();
    const line = lastPerFrame((value: number) => applied.push(value), frames);
    line.push(1);
    line.flush();
    expect(applied).toEqual([1]);
    expect(frames.waiting()).toBe(0);
    line.flush();
    expect(applied).toEqual([1]);
  });

  test('what waits when a drag is taken back is forgotten', () => {
    const applied: number[] = [];
    const frames = handDrawn();
    const line = lastPerFrame((value: number) => applied.push(value), frames);
    line.push(1);
    line.drop();
    frames.draw();
    expect(applied).toEqual([]);
  });

  test('the last value is passed on once more when that is asked for, and none after the end', () => {
    const applied: number[] = [];
    const frames = handDrawn();
    const line = lastPerFrame((value: number) => applied.push(value), frames);
    line.again();
    expect(frames.waiting()).toBe(0);
    line.push(1);
    frames.draw();
    line.again();
    line.again();
    frames.draw();
    expect(applied).toEqual([1, 1]);
    line.again();
    line.push(2);
    frames.draw();
    expect(applied).toEqual([1, 1, 2]);
    line.flush();
    line.again();
    expect(frames.waiting()).toBe(0);
  });

  test('a value that is asked for again while it is passed on comes in the next frame', () => {
    const frames = handDrawn();
    const applied: number[] = [];
    const line = lastPerFrame((value: number) => {
      applied.push(value);
      if (applied.length === 1) line.again();
    }, frames);
    line.push(1);
    frames.draw();
    expect(applied).toEqual([1]);
    frames.draw();
    expect(applied).toEqual([1, 1]);
  });
});
