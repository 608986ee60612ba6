import { useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Report } from '../../report/report.ts';
import { namesLeftOut, paintLeftOut } from '../labels/leftOut.ts';
import type { Lettering } from '../labels/lettering.ts';
import { paintLabels } from '../labels/paintLabels.ts';
import { type Box, placeLabels } from '../labels/placeLabels.ts';
import { type Furniture, reservedZones } from '../labels/reserved.ts';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly labels: readonly Lettering[];
  /** Whose mics keep free of labels where possible. */
  readonly report: Report;
  readonly kitView: KitView;
  readonly covered: readonly Box[];
  readonly furniture: Furniture;
  readonly colours: Palette;
}

/** Labels where each finds its place (screen px). */
export function PlacedLabels({ labels, report, kitView, covered, furniture, colours }: Props) {
  const before = useRef<ReadonlyMap<string, number>>(new Map());
  const placed = useMemo(() => {
    const looks = new Map(labels.map(({ wish, look }) => [wish.key, look]));
    const wishes = labels.map(({ wish }) => wish);
    const ground = {
      size: kitView.view.size,
      covered: [...covered, ...micBoxes(report, kitView)],
      reserved: reservedZones(kitView.view.size, furniture),
      before: before.current,
      tips: report.rig.mics.map(({ tip }) => kitToScreen(kitView, tip)),
    };
    return placeLabels(wishes, ground).flatMap((label) => {
      const look = looks.get(label.key);
      return look ? [{ label, look }] : [];
    });
  }, [labels, report, kitView, covered, furniture]);
  // No passive effect: React would send itself a message about it in every frame of a drag.
  useLayoutEffect(() => {
    before.current = new Map(placed.map(({ label }) => [label.key, label.place]));
  }, [placed]);
  const paint = useCallback(
    ({ canvas }: Pen) => paintLabels({ canvas, colours }, placed),
    [placed, colours],
  );
  const { size } = kitView.view;
  const tells = furniture.isFixed === undefined;
  const leftOut = useMemo(
    () =>
      tells
        ? namesLeftOut(
            labels,
            placed.map(({ label }) => label),
            size,
          )
        : 0,
    [tells, labels, placed, size],
  );
  const paintLine = useCallback(
    ({ canvas }: Pen) => paintLeftOut({ canvas, colours }, leftOut, size),
    [leftOut, size, colours],
  );
  return (
    <>
      <Drawn paint={paint} colours={colours} />
      {leftOut > 0 && <Drawn paint={paintLine} colours={colours} />}
    </>
  );
}

/** Labels keep off the mics themselves. */
const micBoxes = (report: Report, kitView: KitView): readonly Box[] =>
  report.rig.mics.flatMap(({ solids }) =>
    solids.flatMap(({ part, capsule }) => {
      if (part !== 'body' && part !== 'plate') return [];
      const [a, b] = [kitToScreen(kitView, capsule.a), kitToScreen(kitView, capsule.b)];
      const reach = capsule.radius * kitView.view.scale + 4;
      return [
        {
          left: Math.min(a.x, b.x) - reach,
          top: Math.min(a.y, b.y) - reach,
          width: Math.abs(a.x - b.x) + 2 * reach,
          height: Math.abs(a.y - b.y) + 2 * reach,
        },
      ];
    }),
  );
