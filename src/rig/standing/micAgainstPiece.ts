import { boundsMeet } from '../../geometry/bounds.ts';
import {
  type CapsuleContact,
  capsuleToCapsule,
  capsuleToCylinder,
  capsuleToTube,
} from '../../geometry/capsuleContact.ts';
import type { MicPart } from '../placed.ts';
import type { BoxedMic, BoxedMicSolid, BoxedPiece } from './boxed.ts';
import { kickContact } from './kickContact.ts';
import { type Standing, type StandingCode, worstOfEach } from './standing.ts';

/**
 * K2 A mic's own parts and its mount must stay out of shells, hoops, cymbals and seats. Shells are solid, but for a kick
 *    with a port (K4). A clip's arm may touch its own drum.
 * K3 They must stay off a piece's stand, legs and pedal plates. Feet against feet are judged on the plan (K6), not here, nor
 *    is a mast whose feet are already in the way.
 */
export function micAgainstPiece(
  mic: BoxedMic,
  piece: BoxedPiece,
  feetOverlap: boolean,
): readonly Standing[] {
  const about = [mic.placed.mic.id, piece.placed.piece.id];
  const { mount } = mic.placed.mic;
  const ownDrum = mount.kind === 'clip' && mount.drum === piece.placed.piece.id;
  return worstOfEach(
    mic.solids.flatMap((solid): Standing[] => {
      if (!boundsMeet(solid.bounds, piece.bounds)) return [];
      const bodies = ownDrum && solid.part === 'clipArm' ? [] : bodyContacts(solid, piece);
      const stands = meetsStands(solid.part, feetOverlap) ? standContacts(solid, piece) : [];
      return [
        ...bodies.map((contact) => standing(bodyCode(solid.part), about, contact)),
        ...stands.map((contact) => standing('mic-against-stand', about, contact)),
      ];
    }),
  );
}

const standing = (
  code: StandingCode,
  about: readonly string[],
  { gap, at }: CapsuleContact,
): Standing => ({ code, about, place: at, overlap: -gap });

function bodyCode(part: MicPart): StandingCode {
  switch (part) {
    case 'body':
    case 'connector':
    case 'bend':
    case 'plate':
      return 'mic-in-shell';
    case 'base':
      return 'feet-overlap';
    case 'boom':
    case 'mast':
    case 'clipArm':
      return 'boom-through-piece';
  }
}

const meetsStands = (part: MicPart, feetOverlap: boolean): boolean =>
  part !== 'base' && !(part === 'mast' && feetOverlap);

function bodyContacts({ solid, bounds }: BoxedMicSolid, piece: BoxedPiece): CapsuleContact[] {
  const { placed } = piece;
  const hoops = piece.hoops
    .filter((hoop) => boundsMeet(bounds, hoop.bounds))
    .map((hoop) => capsuleToTube(solid, hoop.solid));
  const shells = piece.shells
    .filter((shell) => boundsMeet(bounds, shell.bounds))
    .map((shell) =>
      placed.piece.kind === 'kick' && placed.piece.port
        ? kickContact(solid, placed.piece, placed.piece.port)
        : capsuleToCylinder(solid, shell.solid),
    );
  return [...shells, ...hoops];
}

const standContacts = ({ solid, bounds }: BoxedMicSolid, piece: BoxedPiece): CapsuleContact[] =>
  piece.hardware
    .filter((part) => boundsMeet(bounds, part.bounds))
    .map((part) => capsuleToCapsule(solid, part.solid));
