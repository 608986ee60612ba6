import { useState } from 'react';

interface NumbersTableProps {
  readonly caption: string;
  readonly head: readonly string[];
  /** Each row's first cell names it. */
  readonly rows: readonly (readonly [string, ...string[]])[];
}

/** The numbers of a chart: always there for reading aids and for print, on the screen when wanted. */
export function NumbersTable({ caption, head, rows }: NumbersTableProps) {
  const [shown, setShown] = useState(false);
  return (
    <div className="sound-numbers">
      <button type="button" aria-expanded={shown} onClick={() => setShown(!shown)}>
        {shown ? 'Hide the numbers' : 'Show the numbers'}
        <span className="spoken"> of {caption}</span>
      </button>
      <div className={shown ? 'sound-table' : 'spoken printed'}>
        <FigureTable caption={caption} head={head} rows={rows} />
      </div>
    </div>
  );
}

/** A table of figures. */
export function FigureTable({ caption, head, rows }: NumbersTableProps) {
  // Two rows, or two mics in the head, can have the same name.
  const lines = rows.map(([name, ...cells], place) => ({ name, cells, place }));
  const titles = head.map((text, place) => ({ text, place }));
  return (
    <table>
      <caption className="spoken">{caption}</caption>
      <thead>
        <tr>
          {titles.map(({ text, place }) => (
            <th key={place} scope="col">
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map(({ name, cells, place }) => (
          <tr key={place}>
            <th scope="row">{name}</th>
            {titles.slice(1).map((title) => (
              <td key={title.place}>{cells[title.place - 1]}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
