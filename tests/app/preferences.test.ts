import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { keepPreferences, readPreferences } from '../../src/app/preferences.ts';
import { initialState, prefer, session } from '../../src/session/session.ts';
import { box } from './box.ts';

const standard = initialState.preferences;

afterEach(() => {
  session.setState(initialState);
});

describe('readPreferences', () => {
  it('takes what it understands and the standard for the rest', () => {
    const text = JSON.stringify({ theme: 'light', seenFrom: 'roof', showRuns: false, extra: 1 });
    expect(readPreferences(text)).toEqual({ ...standard, theme: 'light', showRuns: false });
  });

  it('takes only ids of layouts whose strike is over', () => {
    const strikesOver = ['town-hall', 7, 'Not An Id', null];
    const kept = readPreferences(JSON.stringify({ strikesOver })).strikesOver;
    expect(kept).toEqual(['town-hall']);
    expect(readPreferences('{"strikesOver":"town-hall"}').strikesOver).toEqual([]);
  });

  it('is the standard for any other text', () => {
    for (const text of ['', 'null', '[]', '{"__proto__":{"theme":"light"}}', 'not JSON']) {
      expect(readPreferences(text)).toEqual(standard);
    }
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(Object.keys(readPreferences(text))).toEqual(Object.keys(standard));
      }),
    );
  });
});

describe('keepPreferences', () => {
  it('brings back what was preferred before', () => {
    const before = box();
    keepPreferences(() => before);
    prefer({ theme: 'light', seenFrom: 'player' });
    const kept = before.getItem('strokespace.preferences') ?? '';
    session.setState(initialState);
    keepPreferences(() => box({ 'strokespace.preferences': kept }));
    expect(session.getState().preferences).toEqual({
      ...standard,
      theme: 'light',
      seenFrom: 'player',
    });
  });

  it('goes on where the browser gives no storage at all', () => {
    keepPreferences(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    prefer({ theme: 'light' });
    expect(session.getState().preferences.theme).toBe('light');
  });
});
