/** Keys that move the focus or work what has it; letters and Enter in a text field do not. */
const MOVES = /^(Tab|Arrow|Home|End|Page)/;

/**
 * Marks the page's root while fingers or a mouse are at work, so that a frame that keys brought, or a dialog that closed, does not
 * stay round a heading like a selected field.
 */
export function watchPointer(target: Window, root: HTMLElement): void {
  target.addEventListener('pointerdown', () => root.toggleAttribute('data-pointer', true), true);
  target.addEventListener(
    'keydown',
    (event) => {
      const isTyping = event.target instanceof HTMLInputElement && event.key !== 'Tab';
      if (!isTyping && MOVES.test(event.key)) root.toggleAttribute('data-pointer', false);
    },
    true,
  );
}
