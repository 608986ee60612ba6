import { useState } from 'react';
import { renameLayout, setUnits } from '../../layout/edit/stage.ts';
import type { LibraryActions } from '../../session/library.ts';
import { edit } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { RenameDialog } from '../library/RenameDialog.tsx';
import { PagesMenu } from '../pages/PagesMenu.tsx';
import { Icon } from '../parts/Icon.tsx';
import { ThemeChoice } from '../parts/ThemeChoice.tsx';
import { useArrival } from '../parts/useArrival.ts';
import { useOpenPart } from '../parts/useOpen.ts';
import { useTask } from '../parts/useTask.ts';
import { SignOffButton } from '../signOff/SignOffButton.tsx';
import { SavedSign } from './SavedSign.tsx';
import { TickNews } from './TickNews.tsx';
import { UndoButtons } from './UndoButtons.tsx';

/** Back to the list, the layout's name and whether it is saved, undo, units, theme, export, and the pages. */
export function TopBar({ actions }: { readonly actions: LibraryActions }) {
  const name = useOpenPart(({ layout }) => layout.name);
  const units = useOpenPart(({ layout }) => layout.units);
  const task = useTask();
  return (
    <header className="top-bar">
      <button type="button" onClick={() => task.run('Closing', () => actions.close())}>
        <Icon name="back" /> Layouts
      </button>
      <LayoutTitle name={name} />
      <SignOffButton />
      <UndoButtons />
      <div className="bar-group">
        <Choice
          label="Units"
          hideLabel
          value={units}
          options={[
            { value: 'mm', text: 'mm' },
            { value: 'in', text: 'in' },
          ]}
          onChoose={(units) => edit('Units shown', (from) => setUnits(from, units))}
        />
        <ThemeChoice />
        <button
          type="button"
          className="sign-only"
          onClick={() => task.run('Export', () => actions.exportFile())}
        >
          <Icon name="save" />
          <span className="sign-text">Export</span>
        </button>
        <PagesMenu />
      </div>
      {task.failure !== '' && (
        <p className="field-problem bar-problem" role="alert">
          {task.failure}
        </p>
      )}
    </header>
  );
}

function LayoutTitle({ name }: { readonly name: string }) {
  const [renaming, setRenaming] = useState(false);
  const heading = useArrival();
  return (
    <div className="bar-title">
      <h1 ref={heading} tabIndex={-1}>
        <button type="button" className="quiet title-button" onClick={() => setRenaming(true)}>
          <span className="title-text">{name}</span>
          <Icon name="pen" />
          <span className="spoken">, rename</span>
        </button>
      </h1>
      <div className="bar-signs">
        <SavedSign />
        <TickNews />
      </div>
      {renaming && (
        <RenameDialog
          name={name}
          onClose={() => setRenaming(false)}
          onRename={(to) => {
            setRenaming(false);
            edit('Rename the layout', (from) => renameLayout(from, to));
          }}
        />
      )}
    </div>
  );
}
