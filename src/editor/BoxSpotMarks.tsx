import { moveBox } from '../layout/edit/stage.ts';
import type { Layout } from '../layout/layout.ts';
import { edit } from '../session/session.ts';
import { showLongLength } from '../units/lengthText.ts';
import type { BoxSpotMark } from './spotMarks.ts';

interface Props {
  readonly layout: Layout;
  readonly marks: readonly BoxSpotMark[];
}

/** The best spots for the box that were found, where it would stand: a tap takes one. */
export function BoxSpotMarks({ layout: { units }, marks }: Props) {
  return marks.map(({ spot, letter, at }) => {
    const needs = `${showLongLength(spot.cable, units)} of cable, longest ${showLongLength(spot.longest, units)}`;
    return (
      <button
        key={`${spot.edge} ${spot.along}`}
        type="button"
        className="plan-spot"
        style={{ left: at.x, top: at.y }}
        aria-label={`Put the box at spot ${letter}: ${needs}`}
        onClick={() => edit('Move the box', (from) => moveBox(from, spot.box))}
      >
        {letter}
      </button>
    );
  });
}
