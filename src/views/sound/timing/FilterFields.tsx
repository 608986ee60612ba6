import type { Id } from '../../../layout/fields.ts';
import type { TimingRow } from '../../../report/sound.ts';
import { SelectField } from '../../fields/SelectField.tsx';
import { useOpen } from '../../parts/useOpen.ts';
import { nameOf } from '../../words/nameOf.ts';
import { type PairFilter, partnersOf, timedMics } from './pairFilter.ts';

const ANY = '';

interface FilterFieldsProps {
  readonly rows: readonly TimingRow[];
  readonly filter: PairFilter;
  readonly onFilter: (filter: PairFilter) => void;
}

/** Shows the pairs of one mic, or of one mic with one overhead, alone. */
export function FilterFields({ rows, filter, onFilter }: FilterFieldsProps) {
  const { layout } = useOpen();
  const all = layout.mics.map(({ id }) => id);
  const options = (mics: readonly Id[]) => [
    { value: ANY, text: 'Any mic' },
    ...mics.map((mic) => ({ value: mic, text: nameOf(layout, mic) })),
  ];
  const { mic, against } = filter;
  const idIn = (value: string): Id | null => (value === ANY ? null : value);
  return (
    <div className="field-grid">
      <SelectField
        label="Pairs of"
        value={mic ?? ANY}
        options={options(timedMics(rows, all))}
        onChoose={(value) => onFilter({ ...filter, mic: idIn(value) })}
      />
      <SelectField
        label="With"
        value={against ?? ANY}
        options={options(partnersOf(rows, mic, all))}
        onChoose={(value) => onFilter({ ...filter, against: idIn(value) })}
      />
    </div>
  );
}
