import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/report/report.ts';
import { movingWords } from '../../../src/views/words/clearanceWords.ts';
import { figureWords, troublesWords, troubleWords } from '../../../src/views/words/troubleWords.ts';
import { sample, snareRow } from './sampleLayout.ts';

const finding = (
  code: Finding['code'],
  numbers: Finding['numbers'],
  about = ['mic-snare', 'rack-1'],
): Finding => ({
  key: `${code}:${about.join(':')}`,
  code,
  severity: 'stop',
  about,
  place: { x: -141, y: 564, z: 720 },
  numbers,
});
const within = finding('mic-in-shell', { depth: 33.2 });

describe('why a mic cannot stay, in short', () => {
  it('says in what and how deep, or what its stand does, rounded up', () => {
    const said = (one: Finding, mic = 'mic-snare') => troubleWords(one, mic, sample);
    expect(said(within)).toBe('in Rack tom 1, 34 mm deep');
    expect(said(finding('boom-through-piece', { depth: 8 }))).toBe('in Rack tom 1, 8 mm deep');
    expect(said(finding('mic-against-stand', { depth: 5.4 }))).toBe(
      'against hardware of Rack tom 1, 6 mm deep',
    );
    const meets = finding('mic-against-mic', { depth: 10.1 }, ['mic-snare', 'mic-rack-1']);
    expect(said(meets)).toBe('against Rack 1, 11 mm deep');
    expect(said(meets, 'mic-rack-1')).toBe('against Snare mic, 11 mm deep');
    const inHead = finding('mic-in-player', { depth: 78.5, head: 1 }, ['mic-snare']);
    expect(said(inHead)).toBe("in the player's head, 79 mm deep");
    const nearHead = finding('mic-near-player', { gap: 29.6, head: 29.6 }, ['mic-snare']);
    expect(said(nearHead)).toBe("29 mm from the player's head");
    const atPedal = (part: string) => finding('mic-in-pedal', { depth: 40.2, [part]: 1 });
    expect(said(atPedal('foot'))).toBe("in the player's foot, 41 mm deep");
    expect(said(atPedal('beater'))).toBe("in the beater's way, 41 mm deep");
    expect(said(finding('mic-beyond-stand', { beyond: 1165.1 }))).toBe('out of reach by 1166 mm');
    expect(said(finding('mic-beyond-stand', { beyond: 9, folded: 4 }))).toBe(
      'boom too long by 4 mm',
    );
    expect(said(finding('stand-may-tip', { factor: 0.8 }))).toBe('tips over');
    expect(said(finding('base-off-deck', { beyond: 60 }))).toBe('over the edge by 60 mm');
  });

  it('stands in place of the clearance, and a strike after it', () => {
    const report = { findings: [within] };
    expect(figureWords(snareRow(127, 'clear'), report, sample)).toBe('in Rack tom 1, 34 mm deep');
    expect(figureWords(snareRow(127, 'clear'), { findings: [] }, sample)).toBe('127 mm');
    expect(troublesWords(snareRow(127, 'clear'), { findings: [] }, sample)).toBe('');
    expect(troublesWords(snareRow(-12, 'struck'), report, sample)).toBe(
      'in Rack tom 1, 34 mm deep; struck too',
    );
    const many = ['a', 'b', 'c'].map((id) =>
      finding('mic-in-shell', { depth: 5 }, ['mic-snare', id]),
    );
    expect(troublesWords(snareRow(127, 'clear'), { findings: many }, sample)).toMatch(/; 1 more$/);
    // What strikes it is the worse than a stand that does not hold it.
    const held = { findings: [finding('mic-beyond-stand', { beyond: 40 })] };
    expect(figureWords(snareRow(-12, 'struck'), held, sample)).toBe('−12 mm');
  });
});

it('its room from what moves is said after it, with its place only where that is another', () => {
  const moves = 'right stick, travelling from Snare to Ride';
  expect(movingWords(snareRow(127, 'clear'), [within], sample)).toBe(
    `From what moves: 127 mm clear (${moves}).`,
  );
  expect(movingWords(snareRow(-12, 'struck'), [within], sample)).toBe(
    `From what moves: 12 mm too close (${moves}).`,
  );
  const far = { ...within, place: { x: 400, y: 564, z: 720 } };
  expect(movingWords(snareRow(-12, 'struck'), [far], sample)).toMatch(/\)\. The boom, .*deck\.$/);
});
