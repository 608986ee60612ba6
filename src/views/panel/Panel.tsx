import type { ReactNode } from 'react';
import type { Selection } from '../../session/selection.ts';
import { useSession } from '../../session/session.ts';
import { Details } from '../inspector/Details.tsx';
import { useOpenPart } from '../parts/useOpen.ts';
import { CablesSection } from '../sections/CablesSection.tsx';
import { FindingsSection } from '../sections/FindingsSection.tsx';
import { KitSection } from '../sections/KitSection.tsx';
import { MicsSection } from '../sections/MicsSection.tsx';
import { PatchSection } from '../sections/PatchSection.tsx';
import { PlayerSection } from '../sections/PlayerSection.tsx';
import { SoundSection } from '../sections/SoundSection.tsx';
import { StageSection } from '../sections/StageSection.tsx';
import { PanelTabs } from './PanelTabs.tsx';
import { SelectedBar } from './SelectedBar.tsx';
import { titleOf } from './titleOf.ts';
import { useFocusInView } from './useFocusInView.ts';
import { PanelContext, type SectionId, usePanelState } from './usePanel.ts';
import { useQuietAtFirst } from './useQuietAtFirst.ts';

const sections: Readonly<Record<SectionId, () => ReactNode>> = {
  findings: FindingsSection,
  kit: KitSection,
  mics: MicsSection,
  cables: CablesSection,
  patch: PatchSection,
  sound: SoundSection,
  stage: StageSection,
  player: PlayerSection,
};

const keyOf = (selection: Selection): string =>
  'id' in selection ? `${selection.kind}:${selection.id}` : selection.kind;

/** Everything in numbers and words, beside the plan. */
export function Panel() {
  const panel = usePanelState();
  const selection = useSession((state) => state.selection);
  const isTold = useSession((state) => state.shownFinding !== null);
  const Section = sections[panel.section];
  // Only the list of findings says by an open line what is selected.
  const saysItself = isTold && panel.section === 'findings';
  const title = useOpenPart(({ layout }) => selection && titleOf(selection, layout));
  const shown = panel.details && title !== null ? selection : null;
  const view = shown === null ? panel.section : keyOf(shown);
  useFocusInView(view);
  const quiet = useQuietAtFirst(view);
  return (
    <PanelContext value={panel}>
      <section className="panel" aria-label="Numbers and findings">
        <PanelTabs />
        <div
          className="panel-view"
          role="tabpanel"
          id="panel-view"
          aria-labelledby={`tab-${panel.section}`}
          key={view}
          {...quiet}
        >
          {shown === null ? <Section /> : <Details selection={shown} />}
        </div>
        {shown === null && selection !== null && title !== null && !saysItself && (
          <SelectedBar selection={selection} title={title} />
        )}
      </section>
    </PanelContext>
  );
}
