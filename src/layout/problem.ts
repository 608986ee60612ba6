/** What is wrong with a document, by kind; words for people are made in views. */
export type ProblemCode =
  | 'too-large'
  | 'not-json'
  | 'too-deep'
  | 'too-many'
  | 'forbidden-key'
  | 'not-finite'
  | 'newer-version'
  | 'missing'
  | 'unknown-field'
  | 'wrong-type'
  | 'wrong-value'
  | 'out-of-range'
  | 'bad-format'
  | 'id-twice'
  | 'no-such-thing'
  | 'held-in-a-circle'
  | 'second-throne'
  | 'built-in-id';

/** One thing wrong with a document: where (`pieces[3].diameter`; empty: the whole), what was expected, what is there. */
export interface Problem {
  readonly code: ProblemCode;
  readonly path: string;
  readonly expected: string;
  readonly actual: string;
}

/** Problems handed on from one document. */
export const MOST_PROBLEMS = 20;

export type Path = readonly PropertyKey[];

/** A path as people read it: `pieces[3].support.by`. Names are cut at 60 characters: they can come from a hostile file. */
export function showPath(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    const name = cut(String(step), 60);
    return text === '' ? name : `${text}.${name}`;
  }, '');
}

/** A value in a few words, never longer than a line, however large the value is. */
export function summary(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') {
    return value.length > 80 ? `a text of ${value.length} characters` : JSON.stringify(value);
  }
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

/** The value a path leads to; undefined when it leads nowhere. */
export function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, step)
        ? Reflect.get(inner, step)
        : undefined,
    value,
  );
}

const cut = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most)}…` : text;
