import { useClearSpots } from '../parts/useClearSpots.ts';

interface SearchWorkingProps {
  readonly text: string;
  /** Of how many searches how many are done; left out for a single one, whose end is not known. */
  readonly done?: number;
  readonly of?: number;
}

/** A search under way, which can be stopped. */
export function SearchWorking({ text, done, of }: SearchWorkingProps) {
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
    </div>
  );
}
