import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { pullWords } from '../../patch/csv/pullTable.ts';
import { isSameItem } from '../../patch/pull/pullItem.ts';
import type { PullLine } from '../../patch/pull/pullList.ts';
import {
  type Awaited,
  awaited,
  clearTicks,
  hasStrikeBegun,
  type StrikeLine,
  setTick,
  stillMissing,
  tickAllOut,
} from '../../patch/pull/ticks.ts';
import type { PatchReport } from '../../report/patch.ts';
import { prefer, session, useSession } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { counted, listed } from '../words/nameOf.ts';
import { pullLineWords } from '../words/pullLineWords.ts';
import { SpareFields } from './SpareFields.tsx';
import { editPatch } from './usePatch.ts';

/** Sorts of missing things that are named one by one above the list. */
const NAMED_AT_MOST = 6;

/** Everything to take: ticked out, ticked back in, and what is still missing. */
export function PullListView({ patch }: { readonly patch: PatchReport }) {
  const { layout } = useOpen();
  const missing = stillMissing(patch.strike);
  const strikesOver = useSession((state) => state.preferences.strikesOver);
  const hasBegun = hasStrikeBegun(patch.strike);
  const isOver = hasBegun && strikesOver.includes(layout.id);
  const isOut = patch.strike.some(({ out }) => out > 0);
  return (
    <>
      <p role="status" className={missing.length > 0 && isOver ? 'struck' : 'soft'}>
        {missing.length > 0
          ? `${isOver ? 'Missing' : hasBegun ? 'Still out' : 'Out'}: ${missingWords(missing, layout)}.`
          : isOut
            ? 'Everything that went out is back.'
            : 'Nothing has gone out yet.'}
      </p>
      <div className="buttons">
        <button
          type="button"
          onClick={() => {
            sayOver(false, layout.id);
            editPatch('Tick all out', (from) => tickAllOut(from, patch.pull));
          }}
        >
          All out
        </button>
        <button
          type="button"
          disabled={!isOut}
          onClick={() => {
            sayOver(false, layout.id);
            editPatch('Clear the ticks', clearTicks);
          }}
        >
          Clear ticks
        </button>
        <button
          type="button"
          aria-pressed={isOver}
          disabled={!hasBegun}
          onClick={() => sayOver(!isOver, layout.id)}
        >
          Strike is over
        </button>
      </div>
      <ul className="lines" aria-label="Pull list">
        {patch.strike.map((line) => (
          <PullLineView
            key={`${line.kind} ${line.which}`}
            line={line}
            as={awaited(line, patch.strike, isOver)}
            asked={patch.pull.find((each) => isSameItem(each, line))}
          />
        ))}
      </ul>
      <SpareFields />
    </>
  );
}

/** So many layouts are remembered. */
const STRIKES = 100;

/** That a strike is over is said on this device, and stays said when the layout is left. */
function sayOver(isOver: boolean, layout: Id): void {
  const others = session.getState().preferences.strikesOver.filter((id) => id !== layout);
  prefer({ strikesOver: isOver ? [layout, ...others].slice(0, STRIKES) : others });
}

/** What is missing, by name as long as that can be read at a glance. */
function missingWords(missing: readonly StrikeLine[], layout: Layout): string {
  if (missing.length <= NAMED_AT_MOST) {
    return listed(missing.map((line) => `${line.missing} × ${pullWords(line, layout)}`));
  }
  const things = missing.reduce((sum, line) => sum + line.missing, 0);
  return `${counted(things, 'thing')} of ${missing.length} sorts, marked in the list`;
}

interface PullLineProps {
  readonly line: StrikeLine;
  readonly as: Awaited;
  /** Undefined for what went out and is no longer on the list. */
  readonly asked: PullLine | undefined;
}

function PullLineView({ line, as, asked }: PullLineProps) {
  const { layout } = useOpen();
  const { total, out, back, missing } = line;
  const name = pullWords(line, layout);
  const made = asked ? pullLineWords(asked, layout) : '';
  const tick = (label: string, counts: { readonly out?: number; readonly back?: number }) =>
    editPatch(`${name} ${label}`, (from) => setTick(from, line, counts));
  return (
    <li className="line pull-line">
      <span className="line-text">
        <span className="line-name">
          {total} × {name}
        </span>
        <span className="line-note">
          {made !== '' && `${made}. `}
          {out} out, {back} back
          {missing > 0 && as === 'stillOut' && `, ${missing} still out`}
          {missing > 0 && as === 'missing' && <span className="struck">, {missing} missing</span>}
        </span>
      </span>
      <span className="buttons">
        <button
          type="button"
          aria-pressed={total > 0 && out >= total}
          onClick={() => tick('out', { out: out >= total ? 0 : total })}
        >
          {total > 0 && out >= total ? '✓ Out' : 'Out'}
          <span className="spoken">: {name}</span>
        </button>
        <button
          type="button"
          disabled={missing === 0}
          onClick={() => tick('one back', { back: back + 1 })}
        >
          1 in<span className="spoken">: {name}</span>
        </button>
        <button
          type="button"
          aria-pressed={out > 0 && missing === 0}
          disabled={out === 0}
          onClick={() => tick('back', { back: missing === 0 ? 0 : out })}
        >
          {out > 0 && missing === 0 ? '✓ In' : 'All in'}
          <span className="spoken">: {name}</span>
        </button>
      </span>
    </li>
  );
}
