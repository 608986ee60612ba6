import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  restOnCentre,
  restOnPlaces,
  restOnStart,
  restOnStep,
} from '../../../src/editor/tools/detent.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('detents', () => {
  test('N1: near the centre line a thing rests on it, and a little more movement leaves it', () => {
    expect(restOnCentre(200, -190, 20)).toBe(0);
    expect(restOnCentre(200, -230, 20)).toBe(-30);
    expect(restOnCentre(200, -150, 20)).toBe(50);
  });

  test('N1: what began just beside the centre line is not pulled to it', () => {
    expect(restOnCentre(15, 0, 20)).toBe(15);
    expect(restOnCentre(15, -5, 20)).toBe(10);
  });

  test('N2: an angle rests where it began and on whole steps of 5', () => {
    expect(restOnStep(12, 0.9)).toBe(12);
    expect(restOnStep(12, 2.5)).toBe(15);
    expect(restOnStep(12, 1.5)).toBeCloseTo(13.5, 9);
    expect(restOnStep(-12, -2.6)).toBe(-15);
  });

  test('N3: a value stays where it began until it is moved farther than the detent', () => {
    expect(restOnStart(30, 49, 20)).toBe(30);
    expect(restOnStart(30, 51, 20)).toBe(51);
  });

  test('N4: an angle rests on the nearest of its places, over 0 degrees too', () => {
    expect(restOnPlaces(358, [1, 100], 5)).toBe(1);
    expect(restOnPlaces(103, [1, 100], 5)).toBe(100);
    expect(restOnPlaces(103, [101, 104], 5)).toBe(104);
    expect(restOnPlaces(50, [1, 100], 5)).toBe(50);
    expect(restOnPlaces(50, [], 5)).toBe(50);
  });

  test('a detent never moves a value by more than its reach', () => {
    fc.assert(
      fc.property(number(-2000, 2000), number(-2000, 2000), number(0, 50), (start, by, near) => {
        expect(Math.abs(restOnCentre(start, by, near) - start - by)).toBeLessThanOrEqual(
          near + 1e-9,
        );
      }),
    );
    fc.assert(
      fc.property(number(-360, 360), number(-180, 180), (start, by) => {
        expect(Math.abs(restOnStep(start, by) - start - by)).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });
});
