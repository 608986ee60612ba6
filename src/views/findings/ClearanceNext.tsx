import { useEffect, useState } from 'react';
import type { ClearanceRow, Finding } from '../../report/report.ts';
import { type TurnAway, turnAway } from '../../report/turnAway.ts';
import { useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { findingWords } from '../words/findingWords.ts';

interface Props {
  readonly row: ClearanceRow;
  /** That it is struck or tight. */
  readonly finding: Finding;
}

/** What gets a mic out of the way of what moves. */
export function ClearanceNext({ row, finding }: Props) {
  const { layout, report } = useOpen();
  const turn = useTurn(row);
  return <p className="next">{findingWords(finding, layout, report.clearances, turn).next}</p>;
}

/** Looked for once nothing is being dragged: it is too much work for every frame. */
function useTurn(row: ClearanceRow): TurnAway | null {
  const { layout, report } = useOpen();
  const isStill = useSession((state) => state.gesture === null);
  const [turn, setTurn] = useState<TurnAway | null>(null);
  useEffect(() => {
    setTurn(isStill ? turnAway(row, layout, report) : null);
  }, [isStill, row, layout, report]);
  return turn;
}
