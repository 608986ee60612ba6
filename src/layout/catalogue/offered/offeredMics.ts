import { freshId } from '../../edit/ids.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Mic } from '../../mics/mic.ts';
import type { MicClass } from '../../mics/micClass.ts';
import type { Mount } from '../../mics/mount.ts';
import { isCymbal, isDrum, isStruck, type Piece } from '../../pieces/piece.ts';
import { freshName } from '../defaults/newPiece.ts';
import {
  type BuiltInMicClassId,
  findMicClass,
  type MountChoice,
  usualMounts,
} from '../micClasses.ts';
import { cymbalPlaces, overheadPlaces } from './cymbalPlaces.ts';
import { drumPlaces, percussionPlaces } from './drumPlaces.ts';
import { kickPlaces } from './kickPlaces.ts';

/** Pieces that one more mic would be for. */
export interface MicGroup {
  readonly name: string;
  readonly hears: readonly Id[];
}

/**
 * The groups of a layout that mics are offered for: every drum, the hi-hat, every ride and small percussion for themselves, and the
 * cymbals in two halves, left and right, for a pair of overheads (of an odd number both hear the middle one).
 */
export function micGroups(layout: Layout): readonly MicGroup[] {
  const single = layout.pieces.filter(
    (piece) => isDrum(piece) || ['kick', 'hiHat', 'ride', 'percussion'].includes(piece.kind),
  );
  return [...single.map(({ id, name }) => ({ name, hears: [id] })), ...overheadGroups(layout)];
}

/** All that one more mic can be for: every piece that sounds for itself, in the layout's order, and the cymbals in two halves. */
export function micSources(layout: Layout): readonly MicGroup[] {
  const single = layout.pieces.filter((piece) => isStruck(piece) || piece.kind === 'kick');
  return [...single.map(({ id, name }) => ({ name, hears: [id] })), ...overheadGroups(layout)];
}

function overheadGroups(layout: Layout): readonly MicGroup[] {
  const rung = layout.pieces
    .flatMap((piece) => (isCymbal(piece) || piece.kind === 'hiHat' ? [piece] : []))
    .toSorted((a, b) => a.x - b.x)
    .map(({ id }) => id);
  if (rung.length < 2) return [];
  if (rung.length === 2) return [{ name: 'Overhead', hears: rung }];
  const half = Math.ceil(rung.length / 2);
  return [
    { name: 'Overhead left', hears: rung.slice(0, half) },
    { name: 'Overhead right', hears: rung.slice(-half) },
  ];
}

/**
 * Mics for a group of pieces, ready for `addMic`, the most usual place first: the caller takes the first that its engine
 * finds clear. They are worked out one by one, as the caller asks for them. Without a class the usual classes of the group are offered one after the other; with one, that class on its
 * usual mounts. Empty when nothing suits (a plate on a cymbal, a mic on a throne).
 */
export function* offeredMics(
  layout: Layout,
  hears: readonly Id[],
  micClass?: Id,
): Generator<Mic, void> {
  const heard = hears.flatMap((id) => layout.pieces.find((piece) => piece.id === id) ?? []);
  const [source] = heard;
  if (!source) return;
  // A drum's own name with a number behind it would read as a second drum at the desk.
  const name = freshName(layout, heard.length > 1 ? 'Overhead' : `${source.name.slice(0, 66)} mic`);
  const shared = {
    id: freshId(layout, `mic-${name}`),
    name,
    hears: heard.map(({ id }) => id),
    input: nextInput(layout),
  };
  for (const { wished, choice } of wishes(layout, heard, micClass)) {
    for (const mount of placesFor(layout, heard, wished, choice)) {
      yield { ...shared, micClass: wished.id, mount };
    }
  }
}

interface Wish {
  readonly wished: MicClass;
  readonly choice: MountChoice;
}

function wishes(
  layout: Layout,
  heard: readonly Piece[],
  micClass: Id | undefined,
): readonly Wish[] {
  if (micClass !== undefined) {
    const wished = findMicClass(layout, micClass);
    return wished ? usualMounts(wished).map((choice) => ({ wished, choice })) : [];
  }
  return usualWishes(heard).flatMap(([id, choice]) => {
    const wished = findMicClass(layout, id);
    return wished ? [{ wished, choice }] : [];
  });
}

/** What is usually put on a kind of piece (common practice, from memory). */
function usualWishes(
  heard: readonly Piece[],
): readonly (readonly [BuiltInMicClassId, MountChoice])[] {
  const [source] = heard;
  if (!source || heard.length > 1) {
    return [
      ['pencil-condenser', 'tripodTall'],
      ['side-condenser', 'tripodTall'],
    ];
  }
  switch (source.kind) {
    case 'kick':
      return [
        ['kick-dynamic', 'tripodLow'],
        ['boundary-plate', 'plateInKick'],
      ];
    case 'snare':
      return [
        ['short-dynamic', 'tripodLow'],
        ['compact-dynamic', 'clip'],
        ['mini-clip', 'clip'],
      ];
    case 'rackTom':
    case 'floorTom':
      return [
        ['compact-dynamic', 'clip'],
        ['mini-clip', 'clip'],
        ['short-dynamic', 'tripodMedium'],
      ];
    case 'percussion':
      return [
        ['short-dynamic', 'tripodMedium'],
        ['pencil-condenser', 'tripodTall'],
      ];
    case 'pedal':
    case 'throne':
      return [];
    default:
      return [
        ['pencil-condenser', 'tripodMedium'],
        ['pencil-condenser', 'tripodTall'],
      ];
  }
}

function placesFor(
  layout: Layout,
  heard: readonly Piece[],
  micClass: MicClass,
  choice: MountChoice,
): Iterable<Mount> {
  const [source] = heard;
  if (!source || heard.length > 1) return overheadPlaces(layout, heard, micClass, choice);
  if (isDrum(source)) return drumPlaces(layout, source, micClass, choice);
  switch (source.kind) {
    case 'kick':
      return kickPlaces(layout, source, micClass, choice);
    case 'percussion':
      return percussionPlaces(layout, source, micClass, choice);
    case 'pedal':
    case 'throne':
      return [];
    default:
      return cymbalPlaces(layout, source, micClass, choice);
  }
}

/** The lowest input of the box that no mic has; null when all are taken. */
function nextInput(layout: Layout): number | null {
  const taken = new Set(layout.mics.map((mic) => mic.input));
  const free = Array.from({ length: layout.box.inputs }, (_, index) => index + 1).find(
    (input) => !taken.has(input),
  );
  return free ?? null;
}
