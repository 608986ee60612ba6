/** A key press, as the browser says it. */
export interface KeyPress {
  readonly key: string;
  readonly shift: boolean;
  readonly alt: boolean;
  /** Control, or Command on keyboards that have it. */
  readonly control: boolean;
}

/** What a key asks of the plan. Nudges are in the sense of the screen: x to the right, y down. */
export type KeyCommand =
  | { readonly kind: 'nudge'; readonly x: number; readonly y: number; readonly foot: boolean }
  | { readonly kind: 'turn'; readonly by: number; readonly foot: boolean }
  | { readonly kind: 'lean'; readonly by: number }
  | { readonly kind: 'raise'; readonly by: number }
  | { readonly kind: 'remove' }
  | { readonly kind: 'cycle'; readonly by: 1 | -1 }
  | { readonly kind: 'clear' }
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'fit' };

/** A command that changes what is selected. */
export type ChangeCommand = Extract<KeyCommand, { kind: 'nudge' | 'turn' | 'lean' | 'raise' }>;

const arrows: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** A step in mm: 10, with Shift 1, with Alt 50. */
const stepOf = ({ shift, alt }: KeyPress): number => (shift ? 1 : alt ? 50 : 10);
/** A step in degrees: 5, with Shift 1. */
const degreesOf = ({ shift }: KeyPress): number => (shift ? 1 : 5);

const ZOOM = 1.25;

/**
 * What a key means on the plan; undefined for keys that are none of its business.
 *
 * K1. Arrows nudge by 10 mm (Shift 1, Alt 50); with Control the base of a mic's stand or the stand of a piece.
 * K2. [ and ] turn by 5 degrees (Shift 1), ] clockwise as seen on the screen; with Alt the feet.
 * K3. , and . lean a piece or tip a mic by 5 degrees (Shift 1).
 * K4. Page Up and Page Down raise and lower by 10 mm (Shift 1, Alt 50).
 * K5. Delete or Backspace removes, Tab and Shift+Tab go to the next and the last thing, Escape lets go.
 * K6. + and - zoom, 0 fits.
 */
export function commandOf(press: KeyPress): KeyCommand | undefined {
  const arrow = arrows[press.key];
  if (arrow) {
    const step = stepOf(press);
    const [x, y] = [arrow[0] * step + 0, arrow[1] * step + 0];
    return { kind: 'nudge', x, y, foot: press.control };
  }
  if (press.control) return undefined;
  return turnOrLean(press) ?? otherCommand(press);
}

/** Shifted keys carry another sign on most keyboards. */
function turnOrLean(press: KeyPress): KeyCommand | undefined {
  switch (press.key) {
    case '[':
    case '{':
      return { kind: 'turn', by: degreesOf(press), foot: press.alt };
    case ']':
    case '}':
      return { kind: 'turn', by: -degreesOf(press), foot: press.alt };
    case ',':
    case '<':
      return { kind: 'lean', by: -degreesOf(press) };
    case '.':
    case '>':
      return { kind: 'lean', by: degreesOf(press) };
    default:
      return undefined;
  }
}

function otherCommand(press: KeyPress): KeyCommand | undefined {
  switch (press.key) {
    case 'PageUp':
      return { kind: 'raise', by: stepOf(press) };
    case 'PageDown':
      return { kind: 'raise', by: -stepOf(press) };
    case 'Delete':
    case 'Backspace':
      return { kind: 'remove' };
    case 'Tab':
      return { kind: 'cycle', by: press.shift ? -1 : 1 };
    case 'Escape':
      return { kind: 'clear' };
    case '+':
    case '=':
      return { kind: 'zoom', factor: ZOOM };
    case '-':
      return { kind: 'zoom', factor: 1 / ZOOM };
    case '0':
      return { kind: 'fit' };
    default:
      return undefined;
  }
}
