import { expect, it } from 'vitest';
import { stepOf } from '../../src/app/shortcuts.ts';

const none = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false };

it.each([
  ['Ctrl+Z', { key: 'z', ctrlKey: true }, 'undo'],
  ['Cmd+Z', { key: 'z', metaKey: true }, 'undo'],
  ['Ctrl+Z with caps lock', { key: 'Z', ctrlKey: true }, 'undo'],
  ['Ctrl+Shift+Z', { key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
  ['Cmd+Shift+Z', { key: 'z', metaKey: true, shiftKey: true }, 'redo'],
  ['Ctrl+Y', { key: 'y', ctrlKey: true }, 'redo'],
  ['Z alone', { key: 'z' }, null],
  ['Ctrl+Alt+Z', { key: 'z', ctrlKey: true, altKey: true }, null],
  ['Cmd+Y, the history of some browsers', { key: 'y', metaKey: true }, null],
  ['Ctrl+X', { key: 'x', ctrlKey: true }, null],
])('%s', (_, keys, step) => {
  expect(stepOf({ ...none, ...keys })).toBe(step);
});
