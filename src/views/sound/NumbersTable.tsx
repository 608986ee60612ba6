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
  return (
    <table>
      <caption className="spoken">{caption}</caption>
      <thead>
        <tr>
          {head.map((text) => (
            <th key={text} scope="col">
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, i) => (
              <td key={head[i + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
