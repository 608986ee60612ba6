import { remembered } from '../geometry/remembered.ts';
import type { Finding, FindingCode, Report } from './report.ts';

/** What the drummer is asked about besides the mics: all that stands there, and the way to the throne and away from it. */
export type Scene = 'stands' | 'lane';

/** What can't stand as it is drawn, and what nothing was computed for. A mic in a drum or in the player is told with its mic (`standingIn.ts`). */
const STANDS: ReadonlySet<FindingCode> = new Set([
  'piece-in-piece',
  'piece-off-deck',
  'base-off-deck',
  'mic-beyond-stand',
  'box-in-obstacle',
  'piece-not-played',
  'run-no-way',
]);
const LANE: ReadonlySet<FindingCode> = new Set([
  'lane-crossed',
  'lane-blocked',
  'stairs-crossed',
  'stairs-off-edge',
]);

/** A stand that only may tip is weighted; one that falls when it is let go must not stand beside anybody. */
const tipsOver = ({ code, severity }: Finding): boolean =>
  code === 'stand-may-tip' && severity === 'stop';

/**
 * Open findings that whoever sits down there must know of, by what they are asked about: every one of things that must be solved, and every
 * one where people walk. The throne comes first, where the drummer sits, then what is struck, then the rest. What is plugged and what is carried in a case is not the drummer's to judge.
 */
export const sceneFindings = remembered(
  ({
    findings,
    rig,
  }: Pick<Report, 'findings' | 'rig'>): Readonly<Record<Scene, readonly Finding[]>> => {
    const throne = rig.pieces.find(({ piece }) => piece.kind === 'throne')?.piece.id;
    const rank = ({ about: [first], code }: Finding): number => {
      if (first !== undefined && first === throne) return 0;
      return code === 'piece-off-deck' || code === 'piece-in-piece' ? 1 : 2;
    };
    return {
      stands: findings
        .filter((finding) => STANDS.has(finding.code) || tipsOver(finding))
        .toSorted((a, b) => rank(a) - rank(b)),
      lane: findings.filter(({ code }) => LANE.has(code)),
    };
  },
);
