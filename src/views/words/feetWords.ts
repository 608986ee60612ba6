import { standSpec } from '../../layout/catalogue/standClasses.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { nameOf } from './nameOf.ts';

/** What of a mic or piece stands on the deck, as far as it matters for getting out of its way. */
type OnDeck = 'kick' | 'pedal' | 'disc' | 'drumLegs' | 'tripod';

/** What to do about feet in each other's way: by what they are, since a disc or a kick is not turned free. */
export function feetNext([first, second]: readonly Id[], layout: Layout): string {
  if (first === undefined || second === undefined) return BOTH.tripod;
  for (const fixed of ['kick', 'pedal', 'disc', 'drumLegs'] as const) {
    if (onDeck(second, layout) === fixed) return freed(first, second, layout);
    if (onDeck(first, layout) === fixed) return freed(second, first, layout);
  }
  return BOTH.tripod;
}

/** How the first comes free of the second, which is no tripod. */
function freed(moved: Id, fixed: Id, layout: Layout): string {
  const [name, other] = [nameOf(layout, moved), nameOf(layout, fixed)];
  const [what, against] = [onDeck(moved, layout), onDeck(fixed, layout)];
  if (what === against) return BOTH[what];
  const turns = what === 'tripod' || what === 'drumLegs';
  const turn = turns ? `Turn the legs of ${name}` : '';
  switch (against) {
    case 'kick':
      return turns
        ? `${turn} beside ${other}, or move ${name} away from it: only the tip of a leg fits under its shell.`
        : `Move the feet of ${name} out from under ${other}.`;
    case 'pedal':
      return turns
        ? `${turn} so that none stands on ${other}, or move ${name} aside.`
        : `Move ${name} off ${other}.`;
    case 'disc':
      return `${turn} so that they go round the disc of ${other}, or move one of the two.`;
    default:
      return `${turn} so that they go between the legs of ${other}, or move one of the two.`;
  }
}

const BOTH: Readonly<Record<OnDeck, string>> = {
  kick: 'Move the two kicks apart.',
  pedal: 'Move one of the two pedals aside.',
  disc: 'Move one of the two discs aside.',
  drumLegs: 'Turn the legs of one drum, or move one of the two.',
  tripod: 'Turn one tripod so that a leg goes between the others, or move one base.',
};

function onDeck(id: Id, { pieces, mics }: Layout): OnDeck {
  const mount = mics.find((mic) => mic.id === id)?.mount;
  if (mount) return mount.kind === 'stand' && isRound(mount.stand) ? 'disc' : 'tripod';
  const piece = pieces.find((each) => each.id === id);
  if (piece?.kind === 'kick' || piece?.kind === 'pedal') return piece.kind;
  const onLegs = piece && 'support' in piece && piece.support.kind === 'legs';
  return onLegs ? 'drumLegs' : 'tripod';
}

const isRound = (stand: Parameters<typeof standSpec>[0]): boolean =>
  standSpec(stand).base === 'round';
