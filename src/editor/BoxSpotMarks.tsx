import { moveBox } from '../layout/edit/stage.ts';
import type { Layout } from '../layout/layout.ts';
import { bestSpots, SPOT_LETTERS, useBoxSearch } from '../session/boxSearch.ts';
import { edit } from '../session/session.ts';
import { showLongLength } from '../units/lengthText.ts';
import { toScreen, type View } from './view/view.ts';

interface Props {
  readonly layout: Layout;
  readonly view: View;
}

/** The best spots for the box that were found, where it would stand: a tap takes one. The box itself shows where it is. */
export function BoxSpotMarks({ layout, view }: Props) {
  const { current, by } = useBoxSearch();
  if (current?.kind !== 'found') return null;
  const { box, units } = layout;
  return bestSpots(current.spots, by).map((spot, place) => {
    const to = moveBox(layout, spot.box).box;
    if (to.x === box.x && to.y === box.y && to.turn === box.turn) return null;
    const at = toScreen(view, to);
    const needs = `${showLongLength(spot.cable, units)} of cable, longest ${showLongLength(spot.longest, units)}`;
    return (
      <button
        key={`${spot.edge} ${spot.along}`}
        type="button"
        className="plan-spot"
        style={{ left: at.x, top: at.y }}
        aria-label={`Put the box at spot ${SPOT_LETTERS[place] ?? ''}: ${needs}`}
        onClick={() => edit('Move the box', (from) => moveBox(from, spot.box))}
      >
        {SPOT_LETTERS[place]}
      </button>
    );
  });
}
