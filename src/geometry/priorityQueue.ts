/** A queue whose first entry has the smallest key; of equal keys, the one that came first. A binary heap, whose room is used again once it is empty. */
export class PriorityQueue<T> {
  /** Keys, the order in which they came and items, in three lists side by side; what stands behind the first `size` is done with. */
  readonly #keys: number[] = [];
  readonly #orders: number[] = [];
  readonly #items: T[] = [];
  #size = 0;
  #count = 0;

  push(key: number, item: T): void {
    const order = this.#count;
    this.#count += 1;
    let place = this.#size;
    this.#size += 1;
    while (place > 0) {
      const above = (place - 1) >> 1;
      if (!this.#comesBefore(key, order, above)) break;
      this.#move(above, place);
      place = above;
    }
    this.#put(place, key, order, item);
  }

  /** The smallest key; infinite when the queue is empty. */
  firstKey(): number {
    return this.#size > 0 ? (this.#keys[0] as number) : Number.POSITIVE_INFINITY;
  }

  /** Takes the first entry out; undefined when the queue is empty. */
  pop(): T | undefined {
    if (this.#size === 0) return undefined;
    const first = this.#items[0];
    this.#size -= 1;
    const last = this.#size;
    const key = this.#keys[last] as number;
    if (last > 0) this.#sink(key, this.#orders[last] as number, this.#items[last] as T);
    return first;
  }

  /** Takes all entries out. */
  clear(): void {
    this.#size = 0;
    this.#count = 0;
  }

  #sink(key: number, order: number, item: T): void {
    const size = this.#size;
    let place = 0;
    for (let left = 1; left < size; left = 2 * place + 1) {
      const right = left + 1;
      const isRight = right < size && this.#isBefore(right, left);
      const below = isRight ? right : left;
      if (this.#comesBefore(key, order, below)) break;
      this.#move(below, place);
      place = below;
    }
    this.#put(place, key, order, item);
  }

  #isBefore(p: number, q: number): boolean {
    return this.#comesBefore(this.#keys[p] as number, this.#orders[p] as number, q);
  }

  #comesBefore(key: number, order: number, place: number): boolean {
    const other = this.#keys[place] as number;
    return key < other || (key === other && order < (this.#orders[place] as number));
  }

  #move(from: number, to: number): void {
    this.#put(to, this.#keys[from] as number, this.#orders[from] as number, this.#items[from] as T);
  }

  #put(place: number, key: number, order: number, item: T): void {
    this.#keys[place] = key;
    this.#orders[place] = order;
    this.#items[place] = item;
  }
}
