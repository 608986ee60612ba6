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
  const found: Standing[] = [];
  for (const solid of mic.solids) {
    if (!boundsMeet(solid.bounds, piece.bounds)) continue;
    const { part } = solid;
    const bodies = ownDrum && part === 'clipArm' ? [] : bodyContacts(solid, piece);
    for (const contact of bodies) found.push(standing(bodyCode(part), about, contact));
    const stands = meetsStands(part, feetOverlap) ? standContacts(solid, piece) : [];
    for (const contact of stands) found.push(standing('mic-against-stand', about, contact));
  }
  return worstOfEach(found);
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

function bodyContacts(
  { solid, bounds }: BoxedMicSolid,
  { placed: { piece }, shells, hoops }: BoxedPiece,
): CapsuleContact[] {
  const contacts: CapsuleContact[] = [];
  for (const shell of shells) {
    if (!boundsMeet(bounds, shell.bounds)) continue;
    contacts.push(
      piece.kind === 'kick' && piece.port
        ? kickContact(solid, piece, piece.port)
        : capsuleToCylinder(solid, shell.solid),
    );
  }
  for (const hoop of hoops) {
    if (boundsMeet(bounds, hoop.bounds)) contacts.push(capsuleToTube(solid, hoop.solid));
  }
  return contacts;
}

function standContacts(
  { solid, bounds }: BoxedMicSolid,
  { hardware }: BoxedPiece,
): CapsuleContact[] {
  const contacts: CapsuleContact[] = [];
  for (const part of hardware) {
    if (boundsMeet(bounds, part.bounds)) contacts.push(capsuleToCapsule(solid, part.solid));
  }
  return contacts;
}
