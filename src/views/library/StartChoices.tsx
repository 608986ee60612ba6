import { useMemo } from 'react';
import { STARTING_KITS, type StartingKit } from '../../layout/catalogue/kits/startingKits.ts';
import { kitOutline } from '../../layout/kitOutline.ts';
import type { Layout } from '../../layout/layout.ts';
import { KitPicture } from './KitPicture.tsx';
import { newLayoutId } from './newLayoutId.ts';

interface StartChoicesProps {
  readonly disabled: boolean;
  readonly onStart: (layout: Layout) => void;
}

/** Every starting kit with its picture; one tap starts. */
export function StartChoices({ disabled, onStart }: StartChoicesProps) {
  return (
    <ul className="starts">
      {STARTING_KITS.map((choice) => (
        <li key={choice.key}>
          <StartCard choice={choice} disabled={disabled} onStart={onStart} />
        </li>
      ))}
    </ul>
  );
}

interface StartCardProps extends StartChoicesProps {
  readonly choice: StartingKit;
}

function StartCard({ choice, disabled, onStart }: StartCardProps) {
  const outline = useMemo(() => kitOutline(choice.make('example').pieces), [choice]);
  return (
    <button
      type="button"
      className="start-card"
      disabled={disabled}
      onClick={() => onStart(choice.make(newLayoutId()))}
    >
      <KitPicture outline={outline} />
      <span className="start-words">
        <strong>{choice.name}</strong>
        <span className="small soft">{choice.about}</span>
      </span>
    </button>
  );
}
