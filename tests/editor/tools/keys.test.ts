import { describe, expect, test } from 'vitest';
import { commandOf, type KeyPress } from '../../../src/editor/tools/keys.ts';

const press = (key: string, held: Partial<KeyPress> = {}) =>
  commandOf({ key, shift: false, alt: false, control: false, ...held });

describe('keys', () => {
  test('K1: arrows nudge by 10 mm in the sense of the screen, Shift by 1, Alt by 50', () => {
    expect(press('ArrowRight')).toEqual({ kind: 'nudge', x: 10, y: 0, foot: false });
    expect(press('ArrowUp', { shift: true })).toEqual({ kind: 'nudge', x: 0, y: -1, foot: false });
    expect(press('ArrowDown', { alt: true })).toEqual({ kind: 'nudge', x: 0, y: 50, foot: false });
    expect(press('ArrowLeft', { control: true })).toEqual({
      kind: 'nudge',
      x: -10,
      y: 0,
      foot: true,
    });
  });

  test('K2: brackets turn by 5 degrees, with Shift by 1, with Alt the feet', () => {
    expect(press('[')).toEqual({ kind: 'turn', by: 5, foot: false });
    expect(press('}', { shift: true })).toEqual({ kind: 'turn', by: -1, foot: false });
    expect(press(']', { alt: true })).toEqual({ kind: 'turn', by: -5, foot: true });
  });

  test('K3 and K4: lean and height', () => {
    expect(press('.')).toEqual({ kind: 'lean', by: 5 });
    expect(press('<', { shift: true })).toEqual({ kind: 'lean', by: -1 });
    expect(press('PageUp')).toEqual({ kind: 'raise', by: 10 });
    expect(press('PageDown', { shift: true })).toEqual({ kind: 'raise', by: -1 });
  });

  test('K5 and K6: remove, go on, let go, zoom', () => {
    expect(press('Delete')).toEqual({ kind: 'remove' });
    expect(press('Tab', { shift: true })).toEqual({ kind: 'cycle', by: -1 });
    expect(press('Escape')).toEqual({ kind: 'clear' });
    expect(press('0')).toEqual({ kind: 'fit' });
  });

  test('undo, redo and every other shortcut of page and browser are left alone', () => {
    for (const key of ['z', 'y', 's', 'p', '+', '-', '0', '[', 'Tab', 'Delete']) {
      expect(press(key, { control: true }), key).toBeUndefined();
    }
    for (const key of ['a', 'F5', 'Enter', ' ']) expect(press(key), key).toBeUndefined();
  });
});
