import { useCallback, useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import { withPlanned } from '../../report/plannedRing.ts';
import { clipIn, type RingOfMic, type RingPlace } from '../../report/ring.ts';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintRing, paintRingPlace } from '../shapes/ring.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly layout: Layout;
  readonly ring: RingOfMic;
  /** The place on it that was asked about. */
  readonly asked: RingPlace | null;
  readonly colours: Palette;
}

/** The ring round the drum of a clip mic, placed or not (inside the kit frame). */
export function RimRing({ layout, ring, asked, colours }: Props) {
  const clip = clipIn(withPlanned(layout, ring), ring.mic);
  const drum = clip?.drum;
  const at = clip?.mount.angle ?? 0;
  const { arcs } = ring;
  const isPlanned = ring.planned !== undefined;
  const paintArcs = useCallback(
    (pen: Pen) => {
      if (drum) paintRing(pen, { drum, arcs, at, isPlanned });
    },
    [drum, arcs, at, isPlanned],
  );
  const place = useMemo(
    () => asked && drum && { drum, angle: asked.angle, verdict: asked.verdict },
    [asked, drum],
  );
  const paintAsked = useCallback(
    (pen: Pen) => {
      if (place) paintRingPlace(pen, place.drum, place.angle, place.verdict);
    },
    [place],
  );
  return (
    <>
      <Drawn paint={paintArcs} colours={colours} />
      <Drawn paint={paintAsked} colours={colours} />
    </>
  );
}
