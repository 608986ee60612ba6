import { type ReactNode, useLayoutEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { KonvaRenderer, Stage } from 'react-konva/es/ReactKonvaCore.js';
import type { ScreenSize } from '../view/view.ts';
import { useCanvasKey } from './paintedBeside.ts';

interface Props {
  readonly size: ScreenSize;
  readonly children: ReactNode;
}

/**
 * A stage whose drawing is rendered anew without the stage: whenever a stage is rendered it walks up the page for all that its children could ask of it, which costs as
 * much as what moves in a frame of a drag.
 */
export function FedStage({ size, children }: Props) {
  const canvasKey = useCanvasKey();
  const [feed] = useState(() => createFeed(children));
  useLayoutEffect(() => {
    feed.put(children);
    // Drawn with what the page shows, not in a frame of its own.
    KonvaRenderer.flushSyncWork();
  }, [feed, children]);
  const { width, height } = size;
  return useMemo(
    () => (
      <Stage key={canvasKey} width={width} height={height} listening={false}>
        <Fed feed={feed} />
      </Stage>
    ),
    [canvasKey, width, height, feed],
  );
}

const Fed = ({ feed }: { readonly feed: Feed }): ReactNode =>
  useSyncExternalStore(feed.subscribe, feed.read);

/** Hands what is to be drawn over to where it is drawn. */
interface Feed {
  readonly subscribe: (hear: () => void) => () => void;
  readonly read: () => ReactNode;
  put(children: ReactNode): void;
}

function createFeed(first: ReactNode): Feed {
  const hearers = new Set<() => void>();
  let now = first;
  return {
    subscribe(hear) {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
    read: () => now,
    put(children) {
      now = children;
      for (const hear of hearers) hear();
    },
  };
}
