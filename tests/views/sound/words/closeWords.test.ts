import { describe, expect, it } from 'vitest';
import type { CloseRow } from '../../../../src/report/sound.ts';
import {
  aimWords,
  closeLine,
  closeSummary,
  isolationFigure,
  isolationWords,
  nullWords,
  shellWords,
  sinceWords,
  spillWords,
  turnGainWords,
  turnWords,
} from '../../../../src/views/sound/words/closeWords.ts';
import { nameOf } from '../../../../src/views/words/nameOf.ts';
import { first, kit, sound } from '../sampleSound.ts';

const point = { x: 0, y: 0, z: 0 };
const [piece, neighbour] = [first(kit.pieces).id, kit.pieces[1]?.id ?? ''];

describe('a close mic in words', () => {
  it('aims at a place of the head, with what that does said as common practice', () => {
    const aim = (zone: 'centre' | 'edge') => ({
      aim: { point, fromCentre: 38, distance: 60, zone },
    });
    expect(aimWords(aim('centre'), 'mm')).toBe(
      '38 mm from the centre, near the centre: most attack (common practice).',
    );
    expect(aimWords(aim('edge'), 'in')).toContain('1.5 in from the centre, near the edge');
    expect(aimWords({ aim: null }, 'mm')).toBe('It does not look at the head.');
  });

  it('says isolation without a minus', () => {
    const said = (isolation: number, shell: string | null = null) =>
      isolationWords({ isolation, shell });
    expect(said(6.24)).toBe('6.2 dB over all the rest');
    expect(said(-1.2)).toBe('1.2 dB under all the rest');
    expect(said(Number.POSITIVE_INFINITY)).toBe('nothing else sounds');
    expect(said(6.24, 'kick')).toBe('at least 6.2 dB over all the rest');
    expect(said(-1.2, 'kick')).toBe('at most 1.2 dB under all the rest');
    expect(isolationFigure({ isolation: 6.24, shell: 'kick' })).toBe('≥ 6.2 dB');
    expect(isolationFigure({ isolation: 6.24, shell: null })).toBe('6.2 dB');
  });

  it('says what a shell keeps out, and what is not counted', () => {
    const kick = first(kit.pieces.filter(({ kind }) => kind === 'kick')).id;
    expect(shellWords(kick, 10, kit)).toMatch(
      new RegExp(`^Inside ${nameOf(kit, kick)}, .* keep 10 dB .* at least this\\.$`),
    );
  });

  it('names the pieces in the null', () => {
    const point = { number: 1, angle: 170, side: 'left', level: -20, inNull: true } as const;
    const points = [{ ...point, piece: neighbour }];
    expect(nullWords(points, { nullAngle: 180 }, kit)).toBe(
      `In its null (15 dB or more softer than on its axis): ${nameOf(kit, neighbour)}.`,
    );
    expect(nullWords([], { nullAngle: 180 }, kit)).toBe('In its null: nothing.');
    expect(nullWords(points, { nullAngle: null }, kit)).toBe('Its pattern has no null.');
  });

  it('names what spills most, above or below its own source', () => {
    const heard = { piece: neighbour, from: point, angle: 90, distance: 400 };
    const spill = (level: number) => spillWords({ level: 110, worst: [{ ...heard, level }] }, kit);
    expect(spill(101.9)).toBe(`${nameOf(kit, neighbour)} 8.1 dB below`);
    expect(spill(112)).toContain('2.0 dB above');
    expect(spillWords({ level: 110, worst: [] }, kit)).toBe('Nothing else sounds.');
  });

  it('says what the last change did, and the aim only where it moved', () => {
    const change = {
      ...{ mic: 'a', level: 1.2, others: 0, isolation: -0.4 },
      ...{ proximity: 2, pieces: [] },
    };
    expect(sinceWords({ ...change, aim: 0 }, 'mm')).toBe(
      'Since its last change: own level +1.2 dB, isolation −0.4 dB, bass boost +2.0 dB.',
    );
    expect(sinceWords({ ...change, aim: 31 }, 'mm')).toContain(', aim moved 31 mm.');
  });

  it('offers a turn with what it brings', () => {
    const turn: NonNullable<CloseRow['turn']> = {
      neighbour,
      by: 12.2,
      axis: { x: 0, y: 0, z: -1 },
      azimuth: null,
      pitch: 40,
      inNull: true,
      neighbourLevel: -6.1,
      level: -0.3,
      isolation: 2.2,
    };
    expect(turnWords(turn, kit)).toBe(
      `Turn 12° so that ${nameOf(kit, neighbour)} falls into the null`,
    );
    expect(turnWords({ ...turn, inNull: false }, kit)).toContain('comes nearer to the null');
    expect(turnGainWords(turn, { source: piece }, kit)).toBe(
      `${nameOf(kit, neighbour)} −6.1 dB, ${nameOf(kit, piece)} −0.3 dB, isolation +2.2 dB.`,
    );
  });

  it('has a line per mic, and names the least isolated in the summary', () => {
    const least = Math.min(...sound.close.map(({ isolation }) => isolation));
    const mic = sound.close.find(({ isolation }) => isolation === least)?.mic ?? '';
    expect(closeSummary(sound.close, kit)).toContain(nameOf(kit, mic));
    expect(closeSummary([], kit)).toBe('No close mics yet.');
    expect(closeLine(first(sound.close), kit)).toMatch(/ at \d+ dB, at least \d+\.\d dB over all/);
  });
});
