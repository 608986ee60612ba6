/**
 * Leaves the field in which something is being typed, as a tap elsewhere does: a field takes what was typed when it is left. A field of a dialog
 * stays as it is: there a button takes what was typed.
 */
export function leaveField(): void {
  const field = document.activeElement;
  const isTyped = field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement;
  if (isTyped && field.closest('dialog') === null) field.blur();
}
