import fc from 'fast-check';
import { ClipFamily } from '../../src/clearance/clearSpotClip.ts';
import type { ClearSpotFamily, Leeway, Spot } from '../../src/clearance/clearSpotFamily.ts';
import { StandFamily } from '../../src/clearance/clearSpotStand.ts';
import type { Vec3 } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { seededKits } from '../support/randomKit.ts';
import { startingKits } from './kits.ts';

/** The spots that a mic of a kit may be moved to. */
export interface FamilyCase {
  readonly name: string;
  readonly family: ClearSpotFamily;
}

/** A box of spots: its middle, what is told of it, and some spots in it. */
export interface BoxCase extends FamilyCase {
  readonly values: readonly number[];
  readonly halves: readonly number[];
  readonly spot: Spot;
  readonly leeway: Leeway;
  readonly others: readonly { readonly values: readonly number[]; readonly spot: Spot }[];
}

/** Values of a mount are kept in hundredths of a mm or degree; at the end of a long boom that is this much, mm. */
export const ROUNDED = 0.3;

const layouts: readonly Layout[] = [...startingKits, ...seededKits(12, 301)];

export const familiesOf = (kind: 'clip' | 'stand'): readonly FamilyCase[] =>
  layouts.flatMap((layout) =>
    buildRig(layout).mics.flatMap(({ mic, micClass }): readonly FamilyCase[] => {
      const { mount } = mic;
      const name = `${layout.name}, ${mic.id}`;
      if (mount.kind !== kind) return [];
      if (mount.kind === 'stand') {
        const heard = layout.pieces.find(({ id }) => id === mic.hears[0]);
        return [{ name, family: new StandFamily({ mic, mount, micClass, heard, side: 1 }) }];
      }
      const drum =
        mount.kind === 'clip' ? layout.pieces.find(({ id }) => id === mount.drum) : undefined;
      return mount.kind === 'clip' && drum && isDrum(drum)
        ? [
            {
              name,
              family: new ClipFamily({
                mount,
                micClass,
                drum,
                side: -1,
                standsIn: false,
                overHead: 20,
              }),
            },
          ]
        : [];
    }),
  );

const share = fc.double({ min: -1, max: 1, noNaN: true });
const shares = fc.array(share, { minLength: 4, maxLength: 4 });
const drawn = fc.record({
  middle: shares,
  size: fc.constantFrom(0.3, 0.05, 0.01, 0.002),
  widths: shares,
  others: fc.array(
    fc.oneof(shares, fc.array(fc.constantFrom(-1, 0, 1), { minLength: 4, maxLength: 4 })),
    { minLength: 12, maxLength: 12 },
  ),
});

/** Boxes of spots of every size and place, some narrow in some values, with spots inside and at their corners. */
export function boxesOf(cases: readonly FamilyCase[], seed: number): readonly BoxCase[] {
  return cases.flatMap(({ name, family }, index) =>
    fc
      .sample(drawn, { numRuns: 8, seed: seed + index })
      .flatMap(({ middle, size, widths, others }) => {
        const values = family.freedoms.map(({ least, most }, k) => {
          const at = middle[k] ?? 0;
          return 0.6 * at * (at < 0 ? -least : most);
        });
        const halves = family.freedoms.map(({ least, most }, k) =>
          Math.abs(widths[k] ?? 0) < 0.2 ? 0 : size * Math.abs(widths[k] ?? 0) * (most - least),
        );
        const spot = family.spotAt(values);
        if (!spot) return [];
        const found = others.flatMap((other) => {
          const there = values.map((value, k) => value + (other[k] ?? 0) * (halves[k] ?? 0));
          const at = family.spotAt(there);
          return at ? [{ values: there, spot: at }] : [];
        });
        const leeway = family.leewayOf(spot, halves);
        return [{ name, family, values, halves, spot, leeway, others: found }];
      }),
  );
}

export const gap = (p: Vec3, q: Vec3): number => Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z);

/** What of the bounds told of boxes does not hold for a spot in one. */
export const brokenBounds = (boxes: readonly BoxCase[]): readonly string[] =>
  boxes.flatMap(({ name, spot, leeway, others, halves }) =>
    others.flatMap(({ spot: other }) => {
      const at = `${name}, halves ${halves}`;
      const faults: string[] = [];
      const hold = (what: string, is: number, most: number): void => {
        if (is > most + ROUNDED) faults.push(`${at}: ${what} ${is}, not over ${most}`);
      };
      for (const [g, group] of spot.groups.entries()) {
        for (const [s, { part, capsule }] of group.entries()) {
          const there = other.groups[g]?.[s]?.capsule;
          const room = leeway.rooms[g]?.[s];
          if (!there || room === undefined) {
            faults.push(`${at}: ${part} is not there`);
            continue;
          }
          hold(part, Math.max(gap(capsule.a, there.a), gap(capsule.b, there.b)), room);
        }
      }
      hold('tip', gap(spot.tip, other.tip), leeway.tip);
      const apart = Math.min(1, gap(spot.axis, other.axis) / 2);
      hold('axis', (2 * Math.asin(apart) * 180) / Math.PI, leeway.axis);
      const [hub, hubThere] = [spot.stand?.footprint.hub, other.stand?.footprint.hub];
      if (hub && hubThere) {
        hold('base', Math.hypot(hub.x - hubThere.x, hub.y - hubThere.y), leeway.base);
      }
      const [short, shortThere] = [spot.stand?.beyondReach ?? 0, other.stand?.beyondReach ?? 0];
      hold('beyond reach', Math.abs(short - shortThere), leeway.beyondReach);
      return faults;
    }),
  );
