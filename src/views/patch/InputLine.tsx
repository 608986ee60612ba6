import { Fragment, type KeyboardEvent, useId } from 'react';
import { sourceWords } from '../../patch/csv/cellWords.ts';
import type { InputRow } from '../../patch/inputList.ts';
import { AboutFindings } from '../inspector/AboutFindings.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { mountWords } from '../words/kindWords.ts';
import { counted } from '../words/nameOf.ts';
import { BoxInput } from './BoxInput.tsx';
import { ChannelFields } from './ChannelFields.tsx';
import { ChannelNumber } from './ChannelNumber.tsx';
import { isAboutRow, worstOf } from './rowFindings.ts';
import { rowWords } from './rowWords.ts';
import type { DropSide, useReorder } from './useReorder.ts';

interface InputLineProps {
  readonly row: InputRow;
  readonly place: number;
  readonly last: number;
  readonly dropAt: DropSide | null;
  readonly shown: boolean;
  readonly handle: ReturnType<ReturnType<typeof useReorder>['handle']>;
  readonly onMove: (to: number) => void;
  readonly onToggle: () => void;
}

/** One channel; tapped, it shows what can be set. Its handle is dragged, or moved with the arrow keys. */
export function InputLine({ row, place, last, shown, onMove, ...rest }: InputLineProps) {
  const more = useId();
  const onKeyDown = (event: KeyboardEvent) => {
    const to = { ArrowUp: place - 1, ArrowDown: place + 1, Home: 0, End: last }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    onMove(to);
  };
  const classes = ['line', shown ? 'shown' : '', rest.dropAt === null ? '' : `drop-${rest.dropAt}`];
  return (
    <li className={classes.join(' ').trim()}>
      <div className="input-line">
        <button
          type="button"
          className="quiet square drag-handle"
          aria-label={`Move channel ${row.channel}, ${row.name}: drag, or arrow keys`}
          onKeyDown={onKeyDown}
          {...rest.handle}
        >
          <Icon name="grip" />
        </button>
        <button
          type="button"
          className="line-button"
          aria-expanded={shown}
          aria-controls={more}
          onClick={rest.onToggle}
        >
          <ChannelNumber channel={row.channel} />
          <span className="line-text">
            <span className="line-name">{row.name}</span>
            <RowNote row={row} />
          </span>
          <RowSign row={row} />
          <BoxInput named input={row.input} />
        </button>
      </div>
      <div id={more} hidden={!shown}>
        {shown && (
          <>
            <div className="buttons input-moves">
              <button type="button" disabled={place === 0} onClick={() => onMove(place - 1)}>
                Up
              </button>
              <button type="button" disabled={place === last} onClick={() => onMove(place + 1)}>
                Down
              </button>
            </div>
            <RowFacts row={row} />
            <ChannelFields row={row} />
          </>
        )}
      </div>
    </li>
  );
}

/** The settings, each whole in one line: `48 V` broken in two is read as 48 of something else. */
function RowNote({ row }: { readonly row: InputRow }) {
  const words = rowWords(row);
  return (
    <span className="line-note">
      {words.map(({ of, text }, i) => (
        <Fragment key={of}>
          {i > 0 && ' '}
          <span className={of === 'notes' ? undefined : 'unbroken'}>
            {i < words.length - 1 ? `${text},` : text}
          </span>
        </Fragment>
      ))}
    </span>
  );
}

/** Says on the row that something about it is wrong; what, stands in it. */
function RowSign({ row }: { readonly row: InputRow }) {
  const { report } = useOpen();
  const found = report.findings.filter(isAboutRow(row.mic));
  const worst = worstOf(found);
  if (worst === null) return null;
  return (
    <span className={`severity ${worst}`}>
      <Icon name={worst === 'note' ? 'target' : 'alert'} />
      <span className="spoken">{counted(found.length, 'finding')}</span>
    </span>
  );
}

/** What the row is for and how its mic is held, with all that is wrong about it. */
function RowFacts({ row }: { readonly row: InputRow }) {
  const { layout } = useOpen();
  const names = new Map(layout.pieces.map(({ id, name }) => [id, name]));
  const source = sourceWords(row, names);
  return (
    <div className="line-more">
      <p className="soft">
        {source === '' ? 'No source' : source}. {mountWords(row.mount)}.
      </p>
      <AboutFindings of={isAboutRow(row.mic)} />
    </div>
  );
}
