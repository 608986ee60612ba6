import { cylinderOutline } from '../../geometry/cylinderOutline.ts';
import { remembered } from '../../geometry/remembered.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../../rig/placed.ts';
import type { Selection } from '../../session/selection.ts';
import type { Outline } from '../pick/outline.ts';
import { type Pickable, pickablesOfMic } from '../pick/pickables.ts';

/** Everything in an elevation that a finger can mean: as on the plan, what is nearest to the viewer first (rule P1). */
export const elevationPickables = remembered(({ mics, pieces }: Rig): readonly Pickable[] => [
  ...mics.flatMap(ofMic),
  ...pieces.flatMap(ofPiece),
]);

/** From the side nothing hides the floor. */
const ofMic = remembered((placed: PlacedMic): readonly Pickable[] =>
  pickablesOfMic(placed).map(({ isOnFloor: _, ...pickable }) => pickable),
);

const ofPiece = remembered((placed: PlacedPiece): readonly Pickable[] => {
  const { piece, shells, hardware } = placed;
  const selection: Selection = { kind: 'piece', id: piece.id };
  const part = (outline: Outline, height: number, fineness: Pickable['fineness']): Pickable => ({
    selection,
    grip: 'whole',
    fineness,
    height,
    outline,
  });
  // A pedal is nothing but its plate; elsewhere what carries a piece answers only where nothing else is.
  const carrier = shells.length === 0 ? 'broad' : 'ground';
  return [
    ...shells.map((shell) =>
      part({ kind: 'area', ring: cylinderOutline(shell) }, shell.centre.z, 'broad'),
    ),
    ...hardware.map(({ a, b, radius }) =>
      part({ kind: 'line', a, b, radius }, Math.max(a.z, b.z), carrier),
    ),
  ];
});
