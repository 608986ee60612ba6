import { listed } from '../../geometry/listed.ts';
import type { Standing, StandingCode } from '../../rig/standing/standing.ts';
import type { Finding, Severity } from '../report.ts';

/** How bad each is, and what its number says in the words of the finding. */
const SAYS: { readonly [Code in StandingCode]: readonly [Severity, string] } = {
  'mic-in-shell': ['stop', 'depth'],
  'boom-through-piece': ['stop', 'depth'],
  'mic-against-stand': ['stop', 'depth'],
  'mic-against-mic': ['stop', 'depth'],
  'piece-in-piece': ['stop', 'overlap'],
  'feet-overlap': ['warn', 'overlap'],
  'base-off-deck': ['stop', 'beyond'],
  'piece-off-deck': ['stop', 'beyond'],
};

/** What cannot stand where it is drawn, as findings. */
export const standingFindings = (found: readonly Standing[]): readonly Finding[] =>
  listed(found, ({ code, about, place, overlap }) => {
    const [severity, number] = SAYS[code];
    const key = `${code}:${about.join(':')}`;
    return { key, code, severity, about, place, numbers: { [number]: overlap } };
  });
