import type { Selection } from '../../session/selection.ts';
import { select } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { usePanel } from './usePanel.ts';

interface SelectedBarProps {
  readonly selection: Selection;
  readonly title: string;
}

/** What is selected while the panel shows something else, and the way to its numbers. */
export function SelectedBar({ selection, title }: SelectedBarProps) {
  const panel = usePanel();
  return (
    <div className="selected-bar">
      <span className="selected-name">
        <span className="small soft">Selected</span>
        <strong>{title}</strong>
      </span>
      <button type="button" className="primary" onClick={() => panel.open(selection)}>
        Adjust<span className="spoken"> {title}</span>
      </button>
      <button type="button" className="quiet square" onClick={() => select(null)}>
        <Icon name="close" />
        <span className="spoken">Let go of {title}</span>
      </button>
    </div>
  );
}
