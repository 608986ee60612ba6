import { changePatch } from '../../layout/edit/patch.ts';
import { edit } from '../../session/session.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { STYLES, styleWords } from './words/estimateWords.ts';

/** The style of music: one for the whole layout, in the Patch and Sound sections alike. */
export function StyleField() {
  const { style } = useOpen().layout.patch;
  return (
    <SelectField
      label="Style of music"
      value={style}
      options={STYLES.map((value) => ({ value, text: styleWords(value) }))}
      onChoose={(value) =>
        edit('Style of music', (layout) =>
          changePatch(layout, (patch) => ({
            ...patch,
            style: STYLES.find((one) => one === value) ?? patch.style,
          })),
        )
      }
    />
  );
}
