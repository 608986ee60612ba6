import { type CDPSession, expect, type Locator, type Page } from '@playwright/test';
import { hitsAt } from '../../src/editor/pick/pick.ts';
import { pickablesOf } from '../../src/editor/pick/pickables.ts';
import { extentOf, FIT_BORDER } from '../../src/editor/view/extent.ts';
import { type KitView, kitToScreen } from '../../src/editor/view/kitView.ts';
import { fitted, toScreen } from '../../src/editor/view/view.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { SeenFrom } from '../../src/rig/standpoint.ts';
import { downloaded, startLayout } from './layouts.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The plan of the five-piece kit on a fresh profile, and where things are on the page. */
export interface OpenPlan {
  readonly surface: Locator;
  /** What the plan says of the selected thing. */
  readonly spoken: Locator;
  readonly layout: Layout;
  /** Where a point of the kit lies on the page. */
  kit(spot: Point): Point;
  /** Where a point of the deck lies on the page. */
  deck(spot: Point): Point;
  /** Where a point of the plan's own screen lies on the page. */
  page(point: Point): Point;
  readonly view: KitView;
  /** px per mm. */
  readonly scale: number;
  /** The layout as it is now, read from an exported file. */
  now(): Promise<Layout>;
}

export async function openPlan(page: Page): Promise<OpenPlan> {
  await startLayout(page);
  const surface = page.getByRole('application', { name: 'Plan of the deck' });
  await expect(surface).toBeVisible();
  const layout = fivePieceOneRack('kit');
  const { view, at } = await seen(surface, layout, 'house');
  return {
    surface,
    spoken: page.locator('.plan').getByRole('status'),
    layout,
    kit: (spot) => at(kitToScreen(view, spot)),
    deck: (spot) => at(toScreen(view.view, spot)),
    page: at,
    view,
    scale: view.view.scale,
    async now() {
      const button = page.getByRole('button', { name: /Export/ }).first();
      return JSON.parse((await downloaded(page, button)).text);
    },
  };
}

/** A spot of the kit where a finger on the plan means this piece, whatever hangs over the rest of it. */
export function spotOn({ layout, scale }: Pick<OpenPlan, 'layout' | 'scale'>, id: string): Point {
  const piece = layout.pieces.find((one) => one.id === id);
  if (!piece || piece.kind === 'throne' || piece.kind === 'pedal') {
    throw new Error(`expected a drum or cymbal, found ${id}`);
  }
  const pickables = pickablesOf(layout, createAnalyst()(layout), true);
  for (const share of [0, 0.3, 0.5, 0.7, 0.85]) {
    for (let round = 0; round < 12; round += 1) {
      const reach = (share * piece.diameter) / 2;
      const [x, y] = [Math.cos((round * Math.PI) / 6), Math.sin((round * Math.PI) / 6)];
      const spot = { x: piece.x + reach * x, y: piece.y + reach * y };
      const first = hitsAt(pickables, spot, scale)[0]?.pickable.selection;
      if (first?.kind === 'piece' && first.id === id) return spot;
    }
  }
  throw new Error(`nowhere does a finger mean ${id} first`);
}

/** The fitted view of a layout on the page. */
async function seen(
  surface: Locator,
  layout: Layout,
  seenFrom: SeenFrom,
): Promise<{ view: KitView; at(point: Point): Point }> {
  const box = await surface.boundingBox();
  if (!box) throw new Error('expected the plan on the page');
  const size = { width: Math.floor(box.width), height: Math.floor(box.height) };
  const start = { seenFrom, size, centre: { x: 0, y: 0 }, scale: 1 };
  return {
    view: { view: fitted(start, extentOf(layout), FIT_BORDER), deck: layout.deck },
    at: ({ x, y }) => ({ x: box.x + x, y: box.y + y }),
  };
}

/** Fingers on the glass. Playwright's own touch screen can only tap. */
export class Fingers {
  readonly #session: CDPSession;

  private constructor(session: CDPSession) {
    this.#session = session;
  }

  static async on(page: Page): Promise<Fingers> {
    return new Fingers(await page.context().newCDPSession(page));
  }

  async down(...points: readonly Point[]): Promise<void> {
    await this.#send('touchStart', points);
  }

  async move(...points: readonly Point[]): Promise<void> {
    await this.#send('touchMove', points);
  }

  async up(): Promise<void> {
    await this.#send('touchEnd', []);
  }

  /** One finger from one point to another in so many steps; it stays down. */
  async slide(from: Point, to: Point, steps = 6): Promise<void> {
    await this.down(from);
    for (let step = 1; step <= steps; step += 1) {
      const t = step / steps;
      await this.move({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
    }
  }

  async drag(from: Point, to: Point): Promise<void> {
    await this.slide(from, to);
    await this.up();
  }

  async #send(type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) {
    const touchPoints = points.map(({ x, y }, id) => ({ x, y, id }));
    await this.#session.send('Input.dispatchTouchEvent', { type, touchPoints });
  }
}
