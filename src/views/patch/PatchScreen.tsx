import type { PatchPart } from '../../session/patchView.ts';
import { showPatch, useSession } from '../../session/session.ts';
import { Choice } from '../fields/Choice.tsx';
import { InputList } from './InputList.tsx';
import { LineCheck } from './LineCheck.tsx';
import { PatchOut } from './PatchOut.tsx';
import { PullListView } from './PullListView.tsx';
import { SplitsEditor } from './SplitsEditor.tsx';
import { SwapPart } from './SwapPart.tsx';
import { usePatch } from './usePatch.ts';

const PARTS: readonly { readonly value: PatchPart; readonly text: string }[] = [
  { value: 'inputs', text: 'Inputs' },
  { value: 'splits', text: 'Splits' },
  { value: 'check', text: 'Check' },
  { value: 'swap', text: 'Swap' },
  { value: 'pull', text: 'Pull' },
];

/** From plan to show: what is plugged, split, checked and taken. */
export function PatchScreen() {
  const part = useSession((state) => state.patchView.part);
  const patch = usePatch();
  return (
    <div className="patch">
      <h2 className="spoken">Patch</h2>
      <Choice
        label="Part of the patch"
        value={part}
        options={PARTS}
        onChoose={(to) => showPatch({ part: to })}
        hideLabel
      />
      {part === 'inputs' && <InputList patch={patch} />}
      {part === 'splits' && <SplitsEditor />}
      {part === 'check' && <LineCheck patch={patch} />}
      {part === 'swap' && <SwapPart />}
      {part === 'pull' && <PullListView patch={patch} />}
      <PatchOut patch={patch} />
    </div>
  );
}
