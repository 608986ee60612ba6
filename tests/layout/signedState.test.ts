import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { moveMicTip, renameMic } from '../../src/layout/edit/mics.ts';
import { addOwnClass } from '../../src/layout/edit/ownClasses.ts';
import { addSignOff } from '../../src/layout/edit/signOffs.ts';
import { setMargin } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import { readLayout } from '../../src/layout/read.ts';
import { signedState } from '../../src/layout/signedState.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const sign = (layout: Layout, consent = true): Layout =>
  addSignOff(layout, {
    ...{ name: 'Drummer', at: '2031-05-17T18:30:00Z', consent, answers: [], notes: '' },
  });
const onStand = kit.mics.find(({ mount }) => mount.kind === 'stand')?.id ?? '';
const moved = (layout: Layout): Layout => moveMicTip(layout, onStand, { x: 5, y: 6 });

describe('the state of a sign-off without placing anything (N5)', () => {
  test('follows what is signed and nothing else', () => {
    expect(signedState(kit)).toBe('none');
    expect(signedState(sign(kit))).toBe('holds');
    expect(signedState(setMargin(renameMic(sign(kit), onStand, 'Over'), 80))).toBe('holds');
    expect(signedState(moved(sign(kit)))).toBe('stale');
    expect(signedState(sign(moved(sign(kit))))).toBe('holds');
    expect(signedState(sign(kit, false))).toBe('withheld');
    expect(signedState(moved(sign(kit, false)))).toBe('reworked');
  });

  test('the order of mics and a class that no mic is of change nothing', () => {
    const own: MicClass = {
      ...{ id: 'mine', name: 'My own', length: 170, diameter: 48, mass: 0.3 },
      ...{ address: 'end', patternA: 0.5, type: 'dynamic', phantom: false, connector: 'straight' },
    };
    const signed = sign(kit);
    expect(signedState(addOwnClass({ ...signed, mics: signed.mics.toReversed() }, own))).toBe(
      'holds',
    );
  });

  test('what was altered by hand, or holds no kit, is broken', () => {
    const [one] = sign(kit).signOffs;
    if (!one) throw new Error('expected a sign-off');
    expect(signedState({ ...kit, signOffs: [{ ...one, digest: '0'.repeat(64) }] })).toBe('broken');
  });

  test('one that was signed in an older version’s shapes still holds', () => {
    const read = readLayout(readFileSync('tests/fixtures/layouts/v4-signed.json', 'utf8'));
    if (!read.ok) throw new Error('the stored example is a layout');
    expect(read.layout.signOffs.at(-1)?.form).toBeLessThanOrEqual(read.layout.schema);
    expect(signedState(read.layout)).toBe('holds');
  });
});
