import { useClearSpots } from '../parts/useClearSpots.ts';

interface SearchWorkingProps {
  readonly text: string;
  /** Of how many searches how many are done; left out for a single one, whose end is not known. */
  readonly done?: number;
  readonly of?: number;
  /** How many spots a search of several mics has found: it can be ended with those. */
  readonly found?: number;
}

/** A search under way, which can be stopped. */
export function SearchWorking({ text, done, of, found = 0 }: SearchWorkingProps) {
  const spots = useClearSpots();
  return (
    <div className="search-working">
      <p role="status">{text}</p>
      <progress
        aria-label="Search for clear spots"
        {...(of !== undefined && { value: done, max: of })}
      />
      <button type="button" onClick={() => spots.stop()}>
        Stop
      </button>
      {found > 0 && (
        <button type="button" className="wide" onClick={() => spots.endEarly()}>
          Stop here and show {found === 1 ? 'the one found' : `the ${found} found`}
        </button>
      )}
    </div>
  );
}
