import { lazy, type ReactNode, Suspense } from 'react';
import type { BoxSpotFinder } from '../session/boxSearch.ts';
import type { ClearSpots } from '../session/clearing.ts';
import type { HandOver } from '../session/handOver.ts';
import type { LibraryActions } from '../session/library.ts';
import { useSession } from '../session/session.ts';
import { HandOverContext } from '../views/handOver/HandOverContext.ts';
import { LibraryScreen } from '../views/LibraryScreen.tsx';
import { Notices } from '../views/Notices.tsx';
import { type BackSteps, BackStepsContext } from '../views/parts/backSteps.ts';
import { Workspace } from '../views/Workspace.tsx';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { NewsLine } from './NewsLine.tsx';
import { TroubleNotice } from './TroubleNotice.tsx';

/** The canvas library is as large as all the rest; the list of layouts does not wait for it. */
const Plan = lazy(async () => ({ default: (await import('../editor/Plan.tsx')).Plan }));
const DrummerPlan = lazy(async () => ({
  default: (await import('../editor/DrummerPlan.tsx')).DrummerPlan,
}));

interface AppProps {
  readonly actions: LibraryActions;
  readonly clearSpots: ClearSpots;
  readonly boxSpots: BoxSpotFinder;
  readonly handOver: HandOver;
  readonly backSteps: BackSteps;
}

/** A drawing that says while it comes, and does not take the page with it when it fails. */
const drawing = (plan: ReactNode): ReactNode => (
  <ErrorBoundary what="The plan" extent="part">
    <Suspense fallback={<p role="status">Drawing the plan…</p>}>{plan}</Suspense>
  </ErrorBoundary>
);

/** The page: the list of layouts, or the open one. */
export function App({ actions, clearSpots, boxSpots, handOver, backSteps }: AppProps) {
  const isOpen = useSession((state) => state.open !== null);
  return (
    <ErrorBoundary what="This page" extent="page">
      <BackStepsContext value={backSteps}>
        <TroubleNotice />
        <Notices actions={actions} />
        <HandOverContext value={handOver}>
          {isOpen ? (
            <Workspace
              actions={actions}
              clearSpots={clearSpots}
              boxSpots={boxSpots}
              plan={drawing(<Plan />)}
              drummerPlan={drawing(<DrummerPlan />)}
            />
          ) : (
            <LibraryScreen actions={actions} />
          )}
        </HandOverContext>
        <NewsLine />
      </BackStepsContext>
    </ErrorBoundary>
  );
}
