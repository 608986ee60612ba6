import type { Page } from '@playwright/test';
import { ELEVATION_BORDER, kitExtent } from '../../src/editor/elevation/extent.ts';
import { createTurner } from '../../src/editor/elevation/turned.ts';
import { fitted, toScreen } from '../../src/editor/view/view.ts';
import type { Vec3 } from '../../src/geometry/vector.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { figureOf } from '../../src/report/figure.ts';
import { type Facing, standpointOf } from '../../src/rig/standpoint.ts';
import type { OpenPlan } from './plan.ts';

/** An elevation that stands alone on the page, as it is at first: where points of the kit lie on the page, and its px per mm. */
export async function openElevation(page: Page, plan: OpenPlan, facing: Facing) {
  await page
    .getByRole('radio', { name: facing === 'front' ? 'Front' : 'Side', exact: true })
    .check();
  const name = facing === 'front' ? 'Front elevation' : 'Side elevation';
  const surface = page.getByRole('application', { name });
  const box = await surface.boundingBox();
  if (!box) throw new Error('expected the elevation on the page');
  const { layout } = plan;
  const turner = createTurner(standpointOf(layout.deck, facing, 'house'));
  const { rig } = turner.report(createAnalyst()(layout));
  const extent = kitExtent(rig, turner.figure(figureOf(layout.player, layout.pieces)));
  const size = { width: Math.floor(box.width), height: Math.floor(box.height) };
  const view = fitted(
    { seenFrom: 'player', size, centre: { x: 0, y: 0 }, scale: 1 },
    extent,
    ELEVATION_BORDER,
  );
  return {
    surface,
    scale: view.scale,
    at(point: Vec3) {
      const { x, y } = turner.standpoint.point(point);
      const spot = toScreen(view, { x, y });
      return { x: box.x + spot.x, y: box.y + spot.y };
    },
  };
}
