import { describe, expect, it } from 'vitest';
import { turnTo } from '../../../src/views/inspector/turnTo.ts';
import { sample } from '../words/sampleLayout.ts';

describe('turning a piece to a direction', () => {
  it('turns what is clipped to it by the same angle', () => {
    const turned = turnTo(sample, 'rack-1', 300);
    const rack = turned.pieces.find((piece) => piece.id === 'rack-1');
    expect(rack).toMatchObject({ tiltToward: 300 });
    const angle = (layout: typeof sample) => {
      const mount = layout.mics.find((mic) => mic.id === 'mic-rack-1')?.mount;
      return mount?.kind === 'clip' ? mount.angle : Number.NaN;
    };
    expect(angle(turned) - angle(sample)).toBe(30);
  });

  it('is without effect where the piece faces that way, or is not there', () => {
    expect(turnTo(sample, 'rack-1', 270)).toBe(sample);
    expect(turnTo(sample, 'gone', 10)).toBe(sample);
  });

  it('undoes itself', () => {
    const kick = sample.pieces.find((piece) => piece.id === 'kick');
    const there = turnTo(sample, 'kick', 200);
    expect(turnTo(there, 'kick', 90).pieces.find((piece) => piece.id === 'kick')).toEqual(kick);
  });
});
