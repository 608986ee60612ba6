import type { Id } from '../../layout/fields.ts';
import type { Clearing } from '../../session/clearing.ts';
import { useOpen } from '../parts/useOpen.ts';
import { BEST_FOUND, roomWords, spareSentence } from '../words/clearSpotWords.ts';
import { type MoveRow, moveRows } from '../words/moveRows.ts';
import { moveToDo } from '../words/moveToDo.ts';
import { nameOf, unbroken } from '../words/nameOf.ts';
import { NewFindings } from './NewFindings.tsx';
import { OfferButtons } from './OfferButtons.tsx';
import { SoundOfSpot } from './SoundOfSpot.tsx';

interface MicOfferProps {
  readonly mic: Id;
  readonly offer: Extract<Clearing, { kind: 'offered' }>;
}

/** The clear spot of one mic: what would change, number by number, before it is taken. */
export function MicOffer({ mic, offer: { before, unproven } }: MicOfferProps) {
  const { layout, report } = useOpen();
  const name = nameOf(layout, mic);
  const old = before.layout.mics.find(({ id }) => id === mic);
  const now = layout.mics.find(({ id }) => id === mic);
  const was = before.report.clearances.find((row) => row.mic === mic);
  const would = report.clearances.find((row) => row.mic === mic);
  if (!old || !now) return null;
  const spare = would ? spareSentence(would, layout, before.report) : '';
  return (
    <section className="offer" aria-label={`Clear spot of ${name}`}>
      <p role="status">
        <strong>There is a clear spot.</strong>{' '}
        {was &&
          would &&
          unbroken(`Now ${roomWords(was, before)}; there ${roomWords(would, { layout, report })}.`)}
      </p>
      <p>
        <strong>To do:</strong> {unbroken(moveToDo(old, now, layout.units))}
      </p>
      {spare !== '' && <p>{spare}</p>}
      <p>
        <SoundOfSpot mic={mic} before={before} />
      </p>
      {unproven.includes(mic) && <p className="soft">{BEST_FOUND}</p>}
      <p className="small soft">Shown on the plan. Nothing is changed until you take it.</p>
      <MoveTable name={name} rows={moveRows(old, now, layout.units)} />
      <NewFindings before={before.report} />
      <OfferButtons take="Take it" />
    </section>
  );
}

function MoveTable({ name, rows }: { readonly name: string; readonly rows: readonly MoveRow[] }) {
  return (
    <table className="parts moves">
      <caption className="spoken">What would change for {name}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Now</th>
          <th scope="col">There</th>
          <th scope="col">By</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, from, to, by }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{unbroken(from)}</td>
            <td>{unbroken(to)}</td>
            <td>{unbroken(by)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
