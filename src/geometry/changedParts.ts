import { type Fields, isPlain } from './plainData.ts';
import { sharedParts } from './sharedParts.ts';

/**
 * How plain data came of earlier plain data, told by the parts that differ. It goes by message, and is told in two lists, one part after the other, because a
 * message of many small objects takes longer to read, and leaves more behind, than what it tells.
 */
export interface Change {
  /** What became of each part (the signs below) with its counts and places, and the numbers among the data as they are. */
  readonly numbers: Float64Array<ArrayBuffer>;
  /** What is no number, each once: names of fields, texts, and whatever is no plain data. Numbers point at their places in this list. */
  readonly values: readonly unknown[];
}

/** Nothing changed. */
const SAME = 0;
/** A number stands there: which. */
const NUMBER = 1;
/** Another value stands there: its place among the values. */
const VALUE = 2;
/** A new list stands there: its length, then what each entry is. */
const NEW_LIST = 3;
/** A new object stands there: how many fields it has, then the name of each and what it is. */
const NEW_FIELDS = 4;
/** An object has other fields: how many, then the name of each and what became of it; how many are gone, then their names. */
const FIELDS = 5;
/** A list has other entries: its length and how many, then where each stands, where it stood before, and what became of it. */
const ENTRIES = 6;

/**
 * What changed from some data to the next. What both share, as the very same object, is not looked into.
 *
 * @param before Data of any shape.
 * @param now Plain data: objects, lists and primitive values. Anything else in it counts as changed.
 */
export function changeFrom(before: unknown, now: unknown): Change {
  const teller = new Teller();
  if (!teller.tell(before, now)) teller.numbers.push(SAME);
  return { numbers: new Float64Array(teller.numbers), values: teller.values };
}

/**
 * The data after a change.
 *
 * @param before The data that the change was told from, or data equal to it.
 * @returns Data equal to what the change was told of; each part that did not change is the very object that it was in `before`, as in {@link sharedParts}.
 */
export const changed = (before: unknown, change: Change): unknown =>
  new Reader(change).read(before);

class Teller {
  readonly numbers: number[] = [];
  readonly values: unknown[] = [];
  readonly #places = new Map<unknown, number>();

  /** Tells what changed; false, and nothing told, where nothing did. */
  tell(before: unknown, now: unknown): boolean {
    if (Object.is(before, now)) return false;
    if (Array.isArray(now) && Array.isArray(before)) return this.#entries(before, now);
    if (isPlain(now) && isPlain(before)) return this.#fields(before, now);
    this.#whole(now);
    return true;
  }

  #whole(now: unknown): void {
    if (typeof now === 'number') this.numbers.push(NUMBER, now);
    else if (Array.isArray(now)) {
      this.numbers.push(NEW_LIST, now.length);
      for (const entry of now) this.#whole(entry);
    } else if (isPlain(now)) {
      const names = Object.keys(now);
      this.numbers.push(NEW_FIELDS, names.length);
      for (const name of names) {
        this.numbers.push(this.#placeOf(name));
        this.#whole(now[name]);
      }
    } else this.numbers.push(VALUE, this.#placeOf(now));
  }

  #placeOf(value: unknown): number {
    const known = this.#places.get(value);
    if (known !== undefined) return known;
    this.#places.set(value, this.values.length);
    return this.values.push(value) - 1;
  }

  #fields(before: Fields, now: Fields): boolean {
    const { numbers } = this;
    const start = numbers.length;
    let count = 0;
    numbers.push(FIELDS, count);
    for (const name of Object.keys(now)) {
      const from = numbers.length;
      numbers.push(from);
      if (!Object.hasOwn(before, name)) this.#whole(now[name]);
      else if (!this.tell(before[name], now[name])) {
        numbers.length = from;
        continue;
      }
      numbers[from] = this.#placeOf(name);
      count += 1;
    }
    const gone = Object.keys(before).filter((name) => !Object.hasOwn(now, name));
    if (count + gone.length === 0) {
      numbers.length = start;
      return false;
    }
    numbers[start + 1] = count;
    numbers.push(gone.length, ...gone.map((name) => this.#placeOf(name)));
    return true;
  }

  /** Entries are set beside those at the same place; in a longer or shorter list also beside those as far from its end. */
  #entries(before: readonly unknown[], now: readonly unknown[]): boolean {
    const { numbers } = this;
    const start = numbers.length;
    const longer = now.length - before.length;
    let count = 0;
    numbers.push(ENTRIES, now.length, count);
    for (let at = 0; at < now.length; at += 1) {
      const entry = now[at];
      const from = numbers.length;
      numbers.push(at, at);
      if (at >= before.length) this.#whole(entry);
      else if (!this.tell(before[at], entry)) {
        numbers.length = from;
        continue;
      }
      count += 1;
      const moved = at - longer;
      if (longer === 0 || moved < 0) continue;
      const end = numbers.length;
      if (this.tell(before[moved], entry)) numbers.length = end;
      else {
        numbers.length = from;
        numbers.push(at, moved, SAME);
      }
    }
    if (count === 0 && longer === 0) {
      numbers.length = start;
      return false;
    }
    numbers[start + 2] = count;
    return true;
  }
}

class Reader {
  readonly #numbers: Float64Array;
  readonly #values: readonly unknown[];
  #at = 0;

  constructor({ numbers, values }: Change) {
    this.#numbers = numbers;
    this.#values = values;
  }

  read(before: unknown): unknown {
    switch (this.#next()) {
      case NUMBER:
        return this.#next();
      case VALUE:
        return this.#values[this.#next()];
      case NEW_LIST:
        return this.#list();
      case NEW_FIELDS:
        return this.#fields({});
      case FIELDS: {
        const made = this.#fields({ ...(before as Fields) });
        for (let gone = this.#next(); gone > 0; gone -= 1) delete made[this.#name()];
        return made;
      }
      case ENTRIES:
        return this.#entries(before as readonly unknown[]);
      default:
        return before;
    }
  }

  #next(): number {
    const number = this.#numbers[this.#at] as number;
    this.#at += 1;
    return number;
  }

  #name(): string {
    return this.#values[this.#next()] as string;
  }

  #list(): unknown[] {
    const made: unknown[] = [];
    for (let count = this.#next(); count > 0; count -= 1) made.push(this.read(undefined));
    return made;
  }

  #fields(made: Record<string, unknown>): Record<string, unknown> {
    for (let count = this.#next(); count > 0; count -= 1) {
      const name = this.#name();
      made[name] = this.read(made[name]);
    }
    return made;
  }

  #entries(before: readonly unknown[]): readonly unknown[] {
    const length = this.#next();
    const made = before.slice(0, length);
    for (let count = this.#next(); count > 0; count -= 1) {
      const at = this.#next();
      made[at] = this.read(before[this.#next()]);
    }
    // What moved among entries that came or went may share more with its neighbour than with what stood at its place.
    return length === before.length ? made : sharedParts(before, made);
  }
}
