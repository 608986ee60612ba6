import { redo, undo } from '../session/session.ts';

/** The step a key asks for: Ctrl or Cmd with Z, Shift+Z or Y. */
export function stepOf(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>,
): 'undo' | 'redo' | null {
  if (event.ctrlKey === event.metaKey || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && event.ctrlKey && !event.shiftKey ? 'redo' : null;
}

/** Undo and redo by keys, wherever no text is being typed and no dialog asks something. */
export function listenForSteps(target: Window): void {
  target.addEventListener('keydown', (event) => {
    const step = stepOf(event);
    if (step === null || event.defaultPrevented || isTyping(event.target)) return;
    event.preventDefault();
    if (step === 'undo') undo();
    else redo();
  });
}

const withoutText = new Set([
  'button',
  'checkbox',
  'color',
  'file',
  'radio',
  'range',
  'reset',
  'submit',
]);

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.closest('dialog') || target.isContentEditable) return true;
  if (target instanceof HTMLInputElement) return !withoutText.has(target.type);
  return target instanceof HTMLTextAreaElement;
}
