import type { Browser, Page } from '@playwright/test';
import { type Percentiles, percentiles } from './percentiles.ts';
import { START_MARK, TRACED, workPerFrame } from './trace.ts';

/** What one drag cost. */
export interface DragCost {
  /** From frame to frame, ms. */
  readonly frames: Percentiles;
  /** Script and drawing of the main thread in each frame, ms. */
  readonly work: Percentiles;
  /** How many frames later a rim ring that was asked for was there; null when none was. */
  readonly ringAge: Percentiles | null;
  /** How many frames after a question about what is drawn its answers were there; null when nothing was asked. */
  readonly answerAge: Percentiles | null;
  /** How many frames before each frame that was placed whose answers it shows on the plan; null when none did. */
  readonly drawnAge: Percentiles | null;
  /** Frames from one change of the panel's numbers to the next; null where they did not change. */
  readonly panelAge: Percentiles | null;
}

/** What the page being measured holds for the bench; {@link exposeSession} hands over its session. */
export interface Bench {
  frame: number;
  readonly ages: { readonly ring: number[]; readonly answer: number[] };
  session: {
    getState(): { readonly open: Shown | null; readonly selection: object | null };
  } | null;
  /** What the plan was painted with, and when, ms since 1970. */
  readonly painted: { readonly at: number; readonly open: Shown | null }[];
  /** Hears when the number of a field is set: no observer sees that. */
  hearField: (() => void) | null;
}

interface Shown {
  readonly layout: object;
  readonly answered?: { readonly layout: object };
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Frames of one drag, and of its beginning that are left out: the first ones select and make room. */
const FRAMES = 150;
const WARM_UP = 30;
/** The finger goes round in a circle of this radius, px, once in so many frames. */
const RADIUS = 42;
const ROUND = 75;

/**
 * Prepares a page for drags that are made inside it, one move of the finger in every frame: what a driver sends from outside costs
 * more than what is measured.
 */
export async function prepareDrags(page: Page): Promise<void> {
  await page.addInitScript(() => {
    // A finger that the browser does not know of can't be captured.
    Element.prototype.setPointerCapture = () => undefined;
    const bench: Bench = {
      frame: 0,
      ages: { ring: [], answer: [] },
      session: null,
      painted: [],
      hearField: null,
    };
    Object.assign(window, { bench });
    const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value') ?? {};
    Object.defineProperty(HTMLInputElement.prototype, 'value', {
      ...value,
      set(this: HTMLInputElement, text: string) {
        bench.hearField?.();
        value.set?.call(this, text);
      },
    });
    const sent: (Shown | null)[] = [];
    let isHeard = false;
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, message: unknown, ...rest: never[]) {
      const { kind, paintings } = message as { kind?: string; paintings?: readonly object[] };
      const asked = bench.frame;
      const open = bench.session?.getState().open ?? null;
      const hear = (told: () => void): void =>
        this.addEventListener('message', told, { once: true });
      // Drawings are sent to be painted, and heard of when the plan shows them: two at most are under way, and heard of in turn.
      if (paintings) {
        if (!isHeard) {
          this.addEventListener('message', ({ data }: MessageEvent<{ at: number }>) => {
            bench.painted.push({ at: data.at, open: sent.shift() ?? null });
          });
        }
        isHeard = true;
        sent.push(open);
      }
      // Rings are asked for by kind; whole layouts are asked to be answered.
      else if (kind === 'ring') hear(() => bench.ages.ring.push(bench.frame - asked));
      else if (kind === undefined) hear(() => bench.ages.answer.push(bench.frame - asked));
      post.call(this, message, ...rest);
    } as typeof post;
  });
}

/** Drags from a spot of an element in a circle, and tells what each frame cost. */
export async function measureDrag(
  browser: Browser,
  page: Page,
  element: string,
  from: Spot,
): Promise<DragCost> {
  await browser.startTracing(page, { categories: TRACED });
  const { times, begun, ages, drawn, changed } = await page.evaluate(dragInside, {
    element,
    from,
    mark: START_MARK,
    shape: { frames: FRAMES, radius: RADIUS, round: ROUND },
  });
  const work = workPerFrame(await browser.stopTracing(), begun);
  const intervals = times.slice(1).map((time, i) => time - (times[i] ?? time));
  return {
    frames: percentiles(intervals.slice(WARM_UP)),
    work: percentiles(work.slice(WARM_UP)),
    ringAge: ages.ring.length > 0 ? percentiles(ages.ring) : null,
    answerAge: ages.answer.length > 0 ? percentiles(ages.answer) : null,
    drawnAge: drawn.length > WARM_UP ? percentiles(drawn.slice(WARM_UP)) : null,
    panelAge: panelAge(changed.filter((frame) => frame >= WARM_UP)),
  };
}

function panelAge(changed: readonly number[]): Percentiles | null {
  const gaps = changed.slice(1).map((frame, i) => frame - (changed[i] ?? frame));
  return gaps.length > 0 ? percentiles(gaps) : null;
}

interface Asked {
  readonly element: string;
  readonly from: Spot;
  readonly mark: string;
  readonly shape: { readonly frames: number; readonly radius: number; readonly round: number };
}

/** Runs in the page. */
async function dragInside({ element, from, mark, shape }: Asked) {
  const target = document.querySelector(element);
  if (!target) throw new Error(`there is no ${element} on the page`);
  const { bench } = window as unknown as { bench: Bench };
  bench.ages.ring.length = 0;
  bench.ages.answer.length = 0;
  const changed = new Set<number>();
  bench.painted.length = 0;
  const placed = new Map<object, number>();
  let last: object | undefined;
  /** After a frame: which layout it placed, and when. */
  const look = (now: number): void => {
    const open = bench.session?.getState().open;
    // What comes round to where it was is placed anew.
    if (open && open.layout !== last) placed.set(open.layout, now);
    last = open?.layout;
  };
  let frame = 0;
  const watch = new MutationObserver(() => changed.add(frame));
  const panel = document.querySelector('.panel-view');
  if (panel?.parentElement) {
    const what = { subtree: true, childList: true, characterData: true, attributes: true };
    watch.observe(panel.parentElement, what);
  }
  bench.hearField = () => changed.add(frame);
  const finger = { pointerId: 7, pointerType: 'touch', isPrimary: true };
  const send = (type: string, clientX: number, clientY: number): void => {
    const buttons = type === 'pointerup' ? 0 : 1;
    const how = { ...finger, bubbles: true, cancelable: true, buttons, clientX, clientY };
    target.dispatchEvent(new PointerEvent(type, how));
  };
  const nextFrame = (): Promise<number> => new Promise((go) => requestAnimationFrame(go));
  send('pointerdown', from.x, from.y);
  const times: number[] = [];
  // One mark for all frames: a mark in each costs more of it than a finger's event.
  const begun: number[] = [];
  const start = performance.mark(mark).startTime;
  for (let i = 0; i < shape.frames; i += 1) {
    times.push(await nextFrame());
    bench.frame += 1;
    frame = i;
    begun.push(performance.now() - start);
    setTimeout(look, 0, i);
    const angle = (2 * Math.PI * i) / shape.round;
    send(
      'pointermove',
      from.x + shape.radius * (1 - Math.cos(angle)),
      from.y + shape.radius * Math.sin(angle),
    );
  }
  await nextFrame();
  send('pointerup', from.x, from.y);
  await nextFrame();
  watch.disconnect();
  bench.hearField = null;
  /** How many frames before each frame that was placed whose answers are painted when the next one begins, and seen with it. */
  const drawn = begun.slice(1).flatMap((next, now) => {
    const end = performance.timeOrigin + start + next;
    const open = bench.painted.findLast(({ at }) => at <= end)?.open;
    const frame = open && placed.get((open.answered ?? open).layout);
    return frame === undefined || frame === null ? [] : [now - frame];
  });
  return { times, begun, ages: structuredClone(bench.ages), drawn, changed: [...changed] };
}
