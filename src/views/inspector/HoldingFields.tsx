import { MIC_CLASSES } from '../../layout/catalogue/micClasses.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { edit } from '../../session/session.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { choiceOf, mountChoices, reclass, remount } from '../mics/mountChoices.ts';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { choiceWords } from '../words/kindWords.ts';
import { useMicName } from './useMicName.ts';

/** Which class of mic it is, and how it is held. */
export function HoldingFields({ mic }: { readonly mic: Mic }) {
  const { layout } = useOpen();
  const { id } = mic;
  const name = useMicName(mic);
  const choices = mountChoices(layout, mic);
  return (
    <Group title="Mic and mount">
      <div className="wide">
        <SelectField
          label="Class of mic"
          value={mic.micClass}
          options={[...MIC_CLASSES, ...layout.ownClasses].map((each) => ({
            value: each.id,
            text: each.name,
          }))}
          onChoose={(value) => edit(`Class of ${name}`, (from) => reclass(from, id, value))}
        />
      </div>
      <div className="wide">
        <SelectField
          label="Held by"
          value={choiceOf(mic.mount)}
          options={choices.map((value) => ({ value, text: choiceWords(value) }))}
          onChoose={(value) => {
            const choice = choices.find((each) => each === value);
            if (choice) edit(`Mount of ${name}`, (from) => remount(from, id, choice));
          }}
        />
      </div>
    </Group>
  );
}
