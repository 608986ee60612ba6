import { afterEach, expect, it, vi } from 'vitest';
import { watchForLoss } from '../../src/app/storedBefore.ts';
import type { LibraryRow } from '../../src/session/library.ts';
import { initialState, session } from '../../src/session/session.ts';

const row: LibraryRow = {
  ...{ id: 'one', name: 'One', venue: '', date: null, player: 'Drummer', pieces: 1, mics: 0 },
  ...{ picture: '', signOff: 'none', changedAt: 1, otherLines: 0 },
  ...{ favourite: false, archived: false, tags: [] },
};

afterEach(() => {
  session.setState(initialState);
});

/** A start of the page with a count from before; what was said, and the count after. */
function start(before: string | null) {
  let count = before;
  const onLoss = vi.fn();
  const storage = {
    getItem: () => count,
    setItem: (_: string, value: string) => {
      count = value;
    },
  };
  watchForLoss(() => storage as unknown as Storage, onLoss);
  return { onLoss, count: () => count };
}

it('says when a list is empty that was not, once', () => {
  const { onLoss, count } = start('3');
  session.setState({ library: [] });
  session.setState({ library: [] });
  expect(onLoss).toHaveBeenCalledExactlyOnceWith(3);
  expect(count()).toBe('0');
});

it('says nothing when layouts are there and are deleted then', () => {
  const { onLoss, count } = start('1');
  session.setState({ library: [row] });
  session.setState({ library: [] });
  expect(onLoss).not.toHaveBeenCalled();
  expect(count()).toBe('0');
});

it.each([null, '', 'many', '-1', '0'])('says nothing at a first start (%s before)', (before) => {
  const { onLoss, count } = start(before);
  session.setState({ library: [] });
  expect(onLoss).not.toHaveBeenCalled();
  session.setState({ library: [row, row] });
  expect(count()).toBe('2');
});

it('a storage that refuses has lost nothing', () => {
  const { onLoss, count } = start('2');
  session.setState({
    library: [],
    saving: { kind: 'failed', reason: 'unavailable', detail: 'blocked' },
  });
  expect(onLoss).not.toHaveBeenCalled();
  expect(count()).toBe('2');
});
