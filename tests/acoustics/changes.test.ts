import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { closeChanges } from '../../src/acoustics/changes.ts';
import { changeClip, setHears } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece } from '../rig/kits.ts';
import { only } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));
const before = acousticsOf(fivePiece);
const clip = only(fivePiece.mics.find(({ mount }) => mount.kind === 'clip'));
const after = acousticsOf(changeClip(fivePiece, clip.id, { height: 90 }));

describe('changes of close mics since an earlier placement', () => {
  it('are now less then, for the moved mic and for no other', () => {
    for (const change of closeChanges(before, after)) {
      const [then, now] = [before, after].map(({ close }) =>
        only(close.find(({ mic }) => mic === change.mic)),
      );
      if (!then || !now) throw new RangeError('both are there');
      expect(change.level).toBe(now.level - then.level);
      expect(change.isolation).toBe(now.isolation - then.isolation);
      expect(change.proximity).toBe(now.proximity - then.proximity);
      const moved = change.mic === clip.id;
      expect(change.level < 0).toBe(moved);
      expect((change.aim ?? 0) > 0).toBe(moved);
      expect(change.pieces.some(({ level }) => level !== 0)).toBe(moved);
    }
  });

  it('leave out what was not there before or has another source', () => {
    const without = { ...fivePiece, mics: fivePiece.mics.filter(({ id }) => id !== clip.id) };
    const told = closeChanges(acousticsOf(without), after).map(({ mic }) => mic);
    expect(told).toHaveLength(before.close.length - 1);
    expect(told).not.toContain(clip.id);
    const other = acousticsOf(setHears(fivePiece, clip.id, ['kick']));
    expect(closeChanges(before, other).map(({ mic }) => mic)).not.toContain(clip.id);
  });
});
