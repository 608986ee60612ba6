import { describe, expect, it } from 'vitest';
import { along } from '../../../src/geometry/vector.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { moveMic } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { isCymbal } from '../../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { standsInSwing } from '../../../src/report/findings/standsInSwing.ts';
import { rimDirection } from '../../../src/rig/rimDirection.ts';
import { surfaceOf } from '../../../src/rig/surface.ts';
import { worstFirst } from '../../../src/views/panel/worstFirst.ts';

const kit = largeKit('large');
const cymbal = kit.pieces.filter(isCymbal).find(({ kind }) => kind === 'crash');
const mic = kit.mics.find(({ mount }) => mount.kind === 'stand');
if (!cymbal || mic?.mount.kind !== 'stand')
  throw new Error('expected a crash and a mic on a stand');
const { tip } = mic.mount;

/** The mic with its tip at a place; its base goes along on the plan. */
function withTipAt(x: number, y: number, z: number): Layout {
  const moved = moveMic(kit, mic?.id ?? '', { x: x - tip.x, y: y - tip.y });
  return {
    ...moved,
    mics: moved.mics.map((one) =>
      one.id === mic?.id && one.mount.kind === 'stand'
        ? { ...one, mount: { ...one.mount, pitch: -80, tip: { x, y, z } } }
        : one,
    ),
  };
}

const about = (layout: Layout) => {
  const report = createAnalyst()(layout);
  const row = report.clearances.find((one) => one.mic === mic.id);
  if (!row) throw new Error('expected a row');
  const found = report.findings.filter((one) => one.about[0] === mic.id);
  return { report, row, found, codes: found.map(({ code }) => code) };
};

describe('S1: a mic that stands in a cymbal', () => {
  // Far out from the player, where nothing but the swing reaches.
  const inIt = withTipAt(cymbal.x, cymbal.y + 0.42 * cymbal.diameter, cymbal.z - 40);

  it('is told as standing in it, and not as struck by its swing too', () => {
    const { row, found, codes } = about(inIt);
    expect(row).toMatchObject({
      verdict: 'struck',
      nearest: { movement: { kind: 'swing', cymbal: cymbal.id } },
    });
    expect(codes).toContain('mic-in-shell');
    expect(codes).not.toContain('mic-struck');
    expect(found.filter((one) => standsInSwing(row, one)).length).toBeGreaterThan(0);
  });

  it('is one line of the list: that of the mic', () => {
    const { report } = about(inIt);
    const lines = worstFirst(report);
    const line = lines.find((one) => one.kind === 'mic' && one.row.mic === mic.id);
    const told = line?.kind === 'mic' ? line.findings : [];
    expect(told[0]?.code).toBe('mic-in-shell');
    const alone = lines.flatMap((one) => (one.kind === 'finding' ? [one.finding] : []));
    expect(alone).not.toContain(told[0]);
  });

  it('is struck where only the swing reaches it', () => {
    const surface = surfaceOf(cymbal);
    const out = along(surface.centre, rimDirection(surface, 90), 0.42 * cymbal.diameter);
    const { x, y, z } = along(out, surface.normal, 40);
    const { row, codes } = about(withTipAt(x, y, z));
    expect(row.nearest?.movement.kind).toBe('swing');
    expect(codes).toContain('mic-struck');
    expect(codes).not.toContain('mic-in-shell');
  });
});

it('S1: what another movement, another mic or another cymbal does is told apart', () => {
  const swing = { kind: 'swing', cymbal: 'crash' } as const;
  const at = { x: 0, y: 0, z: 0 };
  const nearest = { part: 'cymbal', micPart: 'body', onMic: at, onMoving: at } as const;
  const row = { mic: 'a', nearest: { ...nearest, movement: swing } };
  const inCrash = { code: 'mic-in-shell', about: ['a', 'crash'] };
  expect(standsInSwing(row, inCrash)).toBe(true);
  expect(standsInSwing(row, { ...inCrash, code: 'boom-through-piece' })).toBe(true);
  expect(standsInSwing(row, { ...inCrash, code: 'mic-against-stand' })).toBe(false);
  expect(standsInSwing(row, { ...inCrash, about: ['b', 'crash'] })).toBe(false);
  expect(standsInSwing(row, { ...inCrash, about: ['a', 'ride'] })).toBe(false);
  const leg = { kind: 'leg', foot: 'left', pedal: null } as const;
  expect(standsInSwing({ mic: 'a', nearest: { ...nearest, movement: leg } }, inCrash)).toBe(false);
  expect(standsInSwing({ mic: 'a', nearest: undefined }, inCrash)).toBe(false);
});
