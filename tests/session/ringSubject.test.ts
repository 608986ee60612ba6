import { expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { ringSubject } from '../../src/session/ringSubject.ts';

const layout = fivePieceOneRack('kit');
const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
const stand = layout.mics.find(({ mount }) => mount.kind === 'stand');
if (clip?.mount.kind !== 'clip' || !stand) throw new Error('expected a clip and a stand');
const { drum } = clip.mount;

it('the ring is that of the selected clip, or of the clip on the selected drum', () => {
  expect(ringSubject(layout, { kind: 'mic', id: clip.id })).toEqual({ kind: 'mic', mic: clip.id });
  expect(ringSubject(layout, { kind: 'piece', id: drum })).toEqual({ kind: 'mic', mic: clip.id });
});

it('a drum without a clip has a ring of its own, whatever else hears it', () => {
  const bare = { ...layout, mics: layout.mics.filter(({ id }) => id !== clip.id) };
  const subject = { kind: 'drum', drum };
  expect(ringSubject(bare, { kind: 'piece', id: drum })).toEqual(subject);
  const hears = { ...stand, hears: [drum] };
  expect(ringSubject({ ...bare, mics: [hears] }, { kind: 'piece', id: drum })).toEqual(subject);
});

it('there is none for other mics, pieces and things', () => {
  expect(ringSubject(layout, { kind: 'mic', id: stand.id })).toBeNull();
  expect(ringSubject(layout, { kind: 'mic', id: 'gone' })).toBeNull();
  expect(ringSubject(layout, { kind: 'piece', id: 'kick' })).toBeNull();
  expect(ringSubject(layout, { kind: 'box' })).toBeNull();
  expect(ringSubject(layout, null)).toBeNull();
});
