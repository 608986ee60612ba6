import type { Measure } from '../labels/lettering.ts';
import type { PaintedMessage, Painting, PaintMessage } from './painting.ts';
import { RecordedInk } from './recordedInk.ts';

/** Sends to what paints beside the page. */
export type SendPaintings = (message: PaintMessage, given: Transferable[]) => void;

/** Messages that may be under way: with one the painter would wait for the page, with many the page would run ahead of what is seen. */
const UNDER_WAY = 2;
/** Texts known at once: numbers change in every frame of a drag. */
const TEXTS = 4000;
/** Numbers that a first recording has room for. */
const ROOM = 4096;
/** Recordings that are kept for their room. */
const SPARE = 8;

/**
 * Has canvases painted beside the page.
 *
 * B1 What is drawn in one turn of the page goes in one message, so that layers don't come apart.
 * B2 Of a canvas that is drawn again before it could be sent only the last drawing is sent; two messages at most are under way.
 */
export class BesidePainter {
  readonly #send: SendPaintings;
  readonly #soon: (run: () => void) => void;
  readonly #measure: Measure;
  readonly #lost: () => void;
  #ids = 0;
  #underWay = 0;
  #isDue = false;
  #come: PaintMessage['come'][number][] = [];
  #gone: number[] = [];
  readonly #paintings = new Map<number, Painting>();
  readonly #numbers = new Map<string, number>();
  #texts: string[] = [];
  #spare: Float64Array<ArrayBuffer>[] = [];

  /**
   * @param soon Runs something after the page's turn.
   * @param lost Has all canvases drawn again.
   */
  constructor(
    send: SendPaintings,
    soon: (run: () => void) => void,
    measure: Measure,
    lost: () => void,
  ) {
    this.#send = send;
    this.#soon = soon;
    this.#measure = measure;
    this.#lost = lost;
  }

  /** Takes a canvas over; what is returned names it. */
  takeOver(canvas: OffscreenCanvas): number {
    const id = this.#ids;
    this.#ids += 1;
    this.#come.push({ id, canvas });
    this.#schedule();
    return id;
  }

  leave(id: number): void {
    this.#gone.push(id);
    this.#paintings.delete(id);
    this.#schedule();
  }

  /** Something to draw on for a canvas that was taken over. */
  newInk(): RecordedInk {
    return new RecordedInk({
      numberOf: (text) => this.#numberOf(text),
      room: () => this.#spare.pop() ?? new Float64Array(ROOM),
      measure: this.#measure,
    });
  }

  paint(painting: Painting): void {
    const before = this.#paintings.get(painting.id);
    if (before) this.#keep(before.numbers);
    this.#paintings.set(painting.id, painting);
    this.#schedule();
  }

  hear(message: PaintedMessage): void {
    if ('lost' in message) {
      this.#lost();
      return;
    }
    this.#underWay -= 1;
    for (const numbers of message.painted) this.#keep(numbers);
    this.#sendAll();
  }

  #keep(numbers: Float64Array<ArrayBuffer>): void {
    if (this.#spare.length < SPARE) this.#spare.push(numbers);
  }

  #numberOf(text: string): number {
    const known = this.#numbers.get(text);
    if (known !== undefined) return known;
    const number = this.#numbers.size;
    this.#numbers.set(text, number);
    this.#texts.push(text);
    return number;
  }

  #schedule(): void {
    if (this.#isDue) return;
    this.#isDue = true;
    this.#soon(() => {
      this.#isDue = false;
      this.#sendAll();
    });
  }

  #sendAll(): void {
    const [come, gone, paintings] = [this.#come, this.#gone, [...this.#paintings.values()]];
    const isIdle = come.length + gone.length + paintings.length === 0;
    if (isIdle || this.#underWay >= UNDER_WAY) return;
    const forgetsTexts = this.#numbers.size > TEXTS;
    this.#underWay += 1;
    this.#send({ come, gone, texts: this.#texts, forgetsTexts, paintings }, [
      ...come.map(({ canvas }) => canvas),
      ...paintings.map(({ numbers }) => numbers.buffer),
    ]);
    this.#come = [];
    this.#gone = [];
    this.#texts = [];
    this.#paintings.clear();
    if (forgetsTexts) this.#numbers.clear();
  }
}
