import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { LibraryRow } from '../session/library.ts';
import { needOf, type RowNeed, rowNeeds } from '../session/rowNeeds.ts';
import { type OpenLayout, session } from '../session/session.ts';
import type { LoadOutcome } from '../storage/port.ts';
import { type NeedAnswer, needIn } from './needQuestion.ts';
import { keepNeeds, readNeeds } from './needsKept.ts';

/**
 * Rules, quoted by the tests:
 *
 * Q1 A row tells what is to solve only in the very layout that it shows: what is known counts for the moment of its last change.
 * Q2 A layout that is left tells it by the report that was on the screen, once it is saved. Nothing is worked out for it.
 * Q3 Rows that know nothing are looked through while the list is open and at rest, one after the other, the last changed first, a number of them for each
 *    start. Opening a layout ends that at once.
 * Q4 What can't be read or worked out is passed over, and its row tells nothing.
 */

/** Looks at a layout beside the page; it answers at the place that it was started with. */
export interface NeedComputer {
  ask(layout: Layout): void;
  end(): void;
}

export interface NeedSurroundings {
  load(id: Id): Promise<LoadOutcome>;
  start(hear: (answer: NeedAnswer | null) => void): NeedComputer;
  storage(): Storage;
  /** What is known counts for this version of the app alone: another may find other things. */
  readonly version: string;
}

/** Before the first look and between two, ms: the list itself comes first. */
const REST = 1500;
/** How many rows are looked through for each start. */
const MOST = 60;

interface Seen {
  readonly open: OpenLayout;
  readonly at: number;
}

export class NeedKeeper {
  readonly #around: NeedSurroundings;
  readonly #passed = new Set<Id>();
  #asked = 0;
  #computer: NeedComputer | null = null;
  #now: LibraryRow | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What is open, while it is saved as it is. */
  #saved: Seen | null = null;

  constructor(around: NeedSurroundings) {
    this.#around = around;
    rowNeeds.setState({ known: readNeeds(around.storage, around.version) });
    session.subscribe(() => this.#look());
  }

  #look(): void {
    const { open, gesture, saving, library } = session.getState();
    if (this.#saved && open?.layout.id !== this.#saved.open.layout.id) this.#leave(this.#saved);
    if (open && gesture === null && saving?.kind === 'saved') this.#saved = { open, at: saving.at };
    else if (saving !== null && saving.kind !== 'saved') this.#saved = null;
    if (open) this.#stop();
    else if (library !== null && this.#now === null) this.#rest();
  }

  #leave({ open: { layout, report }, at }: Seen): void {
    this.#saved = null;
    this.#keep(layout.id, { changedAt: at, ...needIn(layout, report) });
  }

  #rest(): void {
    this.#timer ??= setTimeout(() => {
      this.#timer = undefined;
      this.#next().catch(() => this.#stop());
    }, REST);
  }

  #stop(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#now = null;
    this.#computer?.end();
    this.#computer = null;
  }

  async #next(): Promise<void> {
    const { known } = rowNeeds.getState();
    const row = (session.getState().library ?? [])
      .filter((each) => !this.#passed.has(each.id) && needOf(known, each) === undefined)
      .toSorted((a, b) => b.changedAt - a.changedAt)[0];
    if (row === undefined || this.#asked >= MOST) return this.#stop();
    this.#asked += 1;
    this.#now = row;
    const there = await this.#around.load(row.id);
    if (this.#now !== row) return;
    if (!there.ok || there.at !== row.changedAt) return this.#hear(null);
    this.#computer ??= this.#around.start((answer) => this.#hear(answer));
    this.#computer.ask(there.layout);
  }

  #hear(answer: NeedAnswer | null): void {
    const row = this.#now;
    if (row === null) return;
    this.#now = null;
    if (answer === null) this.#passed.add(row.id);
    else this.#keep(row.id, { changedAt: row.changedAt, ...answer });
    this.#rest();
  }

  #keep(id: Id, need: RowNeed): void {
    const listed = session.getState().library?.map((row) => row.id);
    const still = [...rowNeeds.getState().known].filter(([each]) => listed?.includes(each) ?? true);
    const known = new Map(still).set(id, need);
    rowNeeds.setState({ known });
    keepNeeds(this.#around.storage, this.#around.version, known);
  }
}
