import type { ReactNode } from 'react';
import type { BoxSpotFinder } from '../session/boxSearch.ts';
import type { ClearSpots } from '../session/clearing.ts';
import type { LibraryActions } from '../session/library.ts';
import { useSession } from '../session/session.ts';
import { DrawingContext } from './pages/DrawingContext.ts';
import { DrummerPlanContext } from './pages/DrummerPlanContext.ts';
import { PageFrame } from './pages/PageFrame.tsx';
import { Panel } from './panel/Panel.tsx';
import { ActionsContext } from './parts/useActions.ts';
import { BoxSpotsContext } from './parts/useBoxSpots.ts';
import { ClearSpotsContext } from './parts/useClearSpots.ts';
import { useRootTheme } from './parts/useRootTheme.ts';
import { PlanBar } from './workspace/PlanBar.tsx';
import { TopBar } from './workspace/TopBar.tsx';
import { VerdictNews } from './workspace/VerdictNews.tsx';

interface WorkspaceProps {
  readonly actions: LibraryActions;
  readonly clearSpots: ClearSpots;
  readonly boxSpots: BoxSpotFinder;
  /** The drawing of the open layout. */
  readonly plan: ReactNode;
  /** The plan as the drummer sees it, for the sign-off. */
  readonly drummerPlan: ReactNode;
}

/** The open layout: its plan always in view, its numbers and findings beside or below it; or one of its pages. */
export function Workspace({ actions, clearSpots, boxSpots, plan, drummerPlan }: WorkspaceProps) {
  useRootTheme();
  const isOpen = useSession((state) => state.open !== null);
  const page = useSession((state) => state.page);
  if (!isOpen) return null;
  return (
    <ActionsContext value={actions}>
      <ClearSpotsContext value={clearSpots}>
        <BoxSpotsContext value={boxSpots}>
          {page === null ? (
            <div className="workspace">
              <TopBar actions={actions} />
              <main className="workspace-body">
                <div className="plan-area">
                  <div className="plan-frame">{plan}</div>
                  <PlanBar />
                </div>
                <Panel />
              </main>
              <VerdictNews />
            </div>
          ) : (
            <DrawingContext value={plan}>
              <DrummerPlanContext value={drummerPlan}>
                <PageFrame key={page} name={page} />
              </DrummerPlanContext>
            </DrawingContext>
          )}
        </BoxSpotsContext>
      </ClearSpotsContext>
    </ActionsContext>
  );
}
