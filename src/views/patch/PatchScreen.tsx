import { useState } from 'react';
import { Choice } from '../fields/Choice.tsx';
import { InputList } from './InputList.tsx';
import { LineCheck } from './LineCheck.tsx';
import { PatchOut } from './PatchOut.tsx';
import { PullListView } from './PullListView.tsx';
import { SplitsEditor } from './SplitsEditor.tsx';
import { usePatch } from './usePatch.ts';

type Part = 'inputs' | 'splits' | 'check' | 'pull';

const PARTS: readonly { readonly value: Part; readonly text: string }[] = [
  { value: 'inputs', text: 'Inputs' },
  { value: 'splits', text: 'Splits' },
  { value: 'check', text: 'Check' },
  { value: 'pull', text: 'Pull list' },
];

/** From plan to show: what is plugged, split, checked and taken. */
export function PatchScreen() {
  const [part, setPart] = useState<Part>('inputs');
  const patch = usePatch();
  return (
    <div className="patch">
      <h2 className="spoken">Patch</h2>
      <Choice label="Part of the patch" value={part} options={PARTS} onChoose={setPart} hideLabel />
      {part === 'inputs' && <InputList patch={patch} />}
      {part === 'splits' && <SplitsEditor />}
      {part === 'check' && <LineCheck patch={patch} />}
      {part === 'pull' && <PullListView patch={patch} />}
      <PatchOut patch={patch} />
    </div>
  );
}
