import { SelectField } from '../fields/SelectField.tsx';
import { preferSound, useSoundChoices } from './useSound.ts';
import { STYLES, styleWords } from './words/estimateWords.ts';

/** The style of music. */
export function StyleField() {
  const { style } = useSoundChoices();
  return (
    <SelectField
      label="Style of music"
      value={style}
      options={STYLES.map((value) => ({ value, text: styleWords(value) }))}
      onChoose={(value) => preferSound({ style: STYLES.find((one) => one === value) ?? null })}
    />
  );
}
