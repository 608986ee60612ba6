import { differences } from '../../layout/differences.ts';
import type { Layout } from '../../layout/layout.ts';
import { compareKits, placedKit, type ThingChange } from '../../report/compareKits.ts';
import { capitalised, counted, nameOf } from './nameOf.ts';

/** Parts of a layout that a hint names as a whole when they differ. */
const PARTS: readonly (readonly [keyof Layout, string])[] = [
  ['deck', 'deck changed'],
  ['box', 'box changed'],
  ['cabling', 'cables changed'],
  ['patch', 'patch changed'],
  ['venue', 'venue changed'],
  ['margin', 'margin changed'],
  ['units', 'units shown'],
  ['setUp', 'set-up ticked'],
  ['signOffs', 'drummer asked'],
];

/** A hint names so many things at most. */
const MOST = 3;

/** In a few words what changed from one point of the history to the next: `2 mics moved, crash 3 added`. */
export function changeHint(before: Layout, after: Layout): string {
  const kit = compareKits(placedKit(before), placedKit(after));
  // A mic that only went along with its drum is told by the drum.
  const mics = kit.mics.filter(({ change, fields }) => change !== 'changed' || fields.length > 0);
  const name = before.name === after.name ? [] : [`renamed to “${after.name}”`];
  const parts = [
    ...things(mics, 'mic', [before, after]),
    ...things(kit.pieces, 'piece', [before, after]),
    ...(kit.player.length > 0 ? ['player changed'] : []),
    ...name,
    ...PARTS.flatMap(([part, words]) =>
      differences(before[part], after[part]).length > 0 ? [words] : [],
    ),
  ];
  const told = parts.length > MOST ? [...parts.slice(0, MOST - 1), 'and more'] : parts;
  return told.length === 0 ? 'Nothing that is shown' : capitalised(told.join(', '));
}

/** Things of one sort by what became of them; a single one by its name. */
function things(
  changes: readonly ThingChange[],
  noun: 'mic' | 'piece',
  [before, after]: readonly [Layout, Layout],
): readonly string[] {
  const groups = new Map<string, ThingChange[]>();
  for (const change of changes) {
    const became = becameOf(change);
    groups.set(became, [...(groups.get(became) ?? []), change]);
  }
  return [...groups].map(([became, group]) => {
    const [only] = group;
    return only && group.length === 1
      ? `${nameOf(only.change === 'gone' ? before : after, only.id)} ${became}`
      : `${counted(group.length, noun)} ${became}`;
  });
}

function becameOf({ change, moved, turned, base, fields }: ThingChange): string {
  if (change === 'new') return 'added';
  if (change === 'gone') return 'removed';
  if (fields.some(({ path }) => path === 'mount.kind')) return 'on another mount';
  return moved > 0 || turned > 0 || base > 0 ? 'moved' : 'changed';
}
