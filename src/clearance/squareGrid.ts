/** Levels of squares above the cells: 1, 2, 4, 8 and 16 cells a side. */
const LEVELS = 5;
/** Level of the coarsest square. */
export const TOP = LEVELS - 1;
/** Cells along a side of the coarsest square. */
export const COARSEST = 2 ** TOP;

/** A square of 2^level cells a side; `column` and `row` count squares of its own size. */
export interface Square {
  readonly level: number;
  readonly column: number;
  readonly row: number;
}

/** Cells that are marked one by one or by whole squares, each of which knows when it is full. */
export class SquareGrid {
  readonly columns: number;
  readonly rows: number;
  private readonly full: readonly Uint8Array[];

  /** `columns` and `rows` are counts of the coarsest squares. */
  constructor(columns: number, rows: number) {
    this.columns = columns;
    this.rows = rows;
    this.full = Array.from(
      { length: LEVELS },
      (_, level) => new Uint8Array(columns * rows * (COARSEST >> level) ** 2),
    );
  }

  /** Squares of a level from side to side. */
  across(level: number): number {
    return this.columns * (COARSEST >> level);
  }

  isFull({ level, column, row }: Square): boolean {
    return this.isFullAt(level, column, row);
  }

  /** {@link isFull} without an object, for the loops that ask most. */
  isFullAt(level: number, column: number, row: number): boolean {
    return this.full[level]?.[row * this.across(level) + column] === 1;
  }

  /** Marks every cell of a square, and every square that is full with it. */
  mark(square: Square): void {
    this.markDown(square);
    this.markUp(square);
  }

  private setFull({ level, column, row }: Square): void {
    const flags = this.full[level];
    if (flags) flags[row * this.across(level) + column] = 1;
  }

  /** 1 for every marked cell, row by row. */
  cells(): Uint8Array {
    return this.full[0] ?? new Uint8Array();
  }

  private markDown(square: Square): void {
    if (this.isFull(square)) return;
    this.setFull(square);
    if (square.level > 0) for (const quarter of quarters(square)) this.markDown(quarter);
  }

  private markUp({ level, column, row }: Square): void {
    if (level >= TOP) return;
    const whole = { level: level + 1, column: column >> 1, row: row >> 1 };
    if (this.isFull(whole) || !quarters(whole).every((quarter) => this.isFull(quarter))) return;
    this.setFull(whole);
    this.markUp(whole);
  }
}

/** The four squares of the next finer level that make up one. */
export function quarters({ level, column, row }: Square): readonly Square[] {
  const finer = level - 1;
  const left = 2 * column;
  const low = 2 * row;
  return [
    { level: finer, column: left, row: low },
    { level: finer, column: left + 1, row: low },
    { level: finer, column: left, row: low + 1 },
    { level: finer, column: left + 1, row: low + 1 },
  ];
}
