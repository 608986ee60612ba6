import { expect, test } from 'vitest';
import { moveMic } from '../../../src/layout/edit/mics.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import { remount } from '../../../src/layout/edit/remount.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import { moveBox, renameLayout, setMargin, setPlayer } from '../../../src/layout/edit/stage.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { changeHint } from '../../../src/views/words/changeHint.ts';
import { sample } from './sampleLayout.ts';

const stands = sample.mics.filter(({ mount }) => mount.kind === 'stand').map(({ id }) => id);
const [first = '', second = ''] = stands;
const away = { x: 40, y: -30 };

test('one thing is named, several of a sort are counted', () => {
  const one = moveMic(sample, first, away);
  expect(changeHint(sample, one)).toMatch(/^[A-Z].* moved$/);
  expect(changeHint(sample, moveMic(one, second, away))).toBe('2 mics moved');
});

test('a mic that went along with its drum is told by the drum', () => {
  const tom = sample.pieces.find(({ kind }) => kind === 'rackTom');
  if (tom === undefined || !('x' in tom)) throw new Error('the sample has a rack tom');
  const moved = movePiece(sample, tom.id, { x: tom.x + 20, y: tom.y });
  expect(changeHint(sample, moved)).toBe(`${tom.name} moved`);
});

test('a mic on another mount, a piece that is gone, and the rest of the layout', () => {
  const placed = buildRig(sample).mics.find(({ mic }) => mic.mount.kind === 'clip');
  if (placed === undefined) throw new Error('the sample has a clip');
  const onStand = remount(sample, placed.mic.id, 'tripodMedium', placed);
  expect(changeHint(sample, onStand)).toContain('on another mount');
  const bare = deletePiece(sample, 'crash-1');
  expect(changeHint(sample, bare)).toContain('removed');
  expect(changeHint(bare, sample)).toContain('added');
  expect(changeHint(sample, renameLayout(sample, 'Town hall'))).toBe('Renamed to “Town hall”');
  expect(changeHint(sample, moveBox(sample, { x: 0, y: 0, turn: 90 }))).toBe('Box changed');
  expect(changeHint(sample, sample)).toBe('Nothing that is shown');
});

test('a hint stays short', () => {
  const much = [
    (layout: typeof sample) => setMargin(layout, 70),
    (layout: typeof sample) => renameLayout(layout, 'Town hall'),
    (layout: typeof sample) => moveBox(layout, { x: 0, y: 0, turn: 90 }),
    (layout: typeof sample) => setPlayer(layout, { stature: 1820 }),
    (layout: typeof sample) => moveMic(layout, first, away),
  ].reduce((layout, change) => change(layout), sample);
  expect(changeHint(sample, much).split(', ')).toHaveLength(3);
  expect(changeHint(sample, much)).toMatch(/, and more$/);
});
