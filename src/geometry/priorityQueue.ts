/** A queue whose first entry has the smallest key; of equal keys, the one that came first. A binary heap. */
export class PriorityQueue<T> {
  readonly #heap: Entry<T>[] = [];
  #count = 0;

  push(key: number, item: T): void {
    const entry = { key, order: this.#count, item };
    this.#count += 1;
    let place = this.#heap.length;
    while (place > 0) {
      const above = (place - 1) >> 1;
      const other = this.#heap[above];
      if (!other || !isBefore(entry, other)) break;
      this.#heap[place] = other;
      place = above;
    }
    this.#heap[place] = entry;
  }

  /** The smallest key; infinite when the queue is empty. */
  firstKey(): number {
    return this.#heap[0]?.key ?? Number.POSITIVE_INFINITY;
  }

  /** Takes the first entry out; undefined when the queue is empty. */
  pop(): T | undefined {
    const first = this.#heap[0];
    const last = this.#heap.pop();
    if (first && last && this.#heap.length > 0) this.#sink(last);
    return first?.item;
  }

  #sink(entry: Entry<T>): void {
    let place = 0;
    for (;;) {
      const left = this.#heap[2 * place + 1];
      const right = this.#heap[2 * place + 2];
      if (!left) break;
      const isRight = right !== undefined && isBefore(right, left);
      const below = isRight ? right : left;
      if (isBefore(entry, below)) break;
      this.#heap[place] = below;
      place = 2 * place + (isRight ? 2 : 1);
    }
    this.#heap[place] = entry;
  }
}

interface Entry<T> {
  readonly key: number;
  readonly order: number;
  readonly item: T;
}

const isBefore = (p: Entry<unknown>, q: Entry<unknown>): boolean =>
  p.key < q.key || (p.key === q.key && p.order < q.order);
