import { useState } from 'react';
import { changePatch } from '../../layout/edit/patch.ts';
import type { Layout } from '../../layout/layout.ts';
import {
  type PullKind,
  patchSchema,
  pullKindField,
  type SpareRule,
  spareRule,
} from '../../layout/patch.ts';
import { pullKindWords } from '../../patch/csv/pullTable.ts';
import { setSpares } from '../../patch/pull/spares.ts';
import { COUNT, PERCENT } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { editPatch } from './usePatch.ts';

/** Parts have the spares of their stands (P4). */
const WITHOUT_RULE: readonly PullKind[] = ['base', 'boom', 'counterweight'];
const KINDS = pullKindField.options.filter((kind) => !WITHOUT_RULE.includes(kind));

/** How many spares are taken: a rule for all kinds, others for some, and the rolls of tape. */
export function SpareFields() {
  const { spares, tapeRolls } = useOpen().layout.patch;
  const own = KINDS.flatMap((kind) => {
    const rule = spares.byKind[kind];
    return rule ? [{ kind, rule }] : [];
  });
  return (
    <Group title="Spares" folded>
      <RuleFields kind={null} rule={spares.usual} />
      {own.map(({ kind, rule }) => (
        <fieldset key={kind} className="leg whole">
          <legend>{pullKindWords(kind)}</legend>
          <RuleFields kind={kind} rule={rule} />
          <button
            type="button"
            onClick={() =>
              editPatch(`Spares: ${pullKindWords(kind)}`, (from) => setSpares(from, kind, null))
            }
          >
            As all others<span className="spoken">: {pullKindWords(kind)}</span>
          </button>
        </fieldset>
      ))}
      <OtherRule kinds={KINDS.filter((kind) => spares.byKind[kind] === undefined)} />
      <NumberField
        label="Rolls of gaffer tape"
        step="Gaffer tape"
        value={tapeRolls}
        measure={COUNT}
        limits={limitsOf(patchSchema.shape.tapeRolls)}
        apply={(layout, rolls) => changePatch(layout, (from) => ({ ...from, tapeRolls: rolls }))}
      />
    </Group>
  );
}

interface RuleFieldsProps {
  /** Null: the rule for all kinds without one of their own. */
  readonly kind: PullKind | null;
  readonly rule: SpareRule;
}

function RuleFields({ kind, rule }: RuleFieldsProps) {
  const of = kind === null ? '' : `, ${pullKindWords(kind).toLowerCase()}`;
  const set = (layout: Layout, change: Partial<SpareRule>) =>
    changePatch(layout, (from) => setSpares(from, kind, { ...rule, ...change }));
  return (
    <>
      <NumberField
        label={`Spares${of}`}
        step={`Spares${of}`}
        value={rule.percent}
        measure={PERCENT}
        limits={limitsOf(spareRule.shape.percent)}
        apply={(layout, percent) => set(layout, { percent })}
      />
      <NumberField
        label={kind === null ? 'At least, of each sort' : `At least${of}`}
        step={`Least spares${of}`}
        value={rule.least}
        measure={COUNT}
        limits={limitsOf(spareRule.shape.least)}
        apply={(layout, least) => set(layout, { least })}
      />
    </>
  );
}

/** Gives one more kind a rule of its own, which starts as that of all. */
function OtherRule({ kinds }: { readonly kinds: readonly PullKind[] }) {
  const { usual } = useOpen().layout.patch.spares;
  const [chosen, setChosen] = useState<string>('');
  const kind = kinds.find((each) => each === chosen) ?? kinds[0];
  if (kind === undefined) return null;
  return (
    <div className="whole">
      <SelectField
        label="Another rule for"
        value={kind}
        options={kinds.map((value) => ({ value, text: pullKindWords(value) }))}
        onChoose={setChosen}
      />
      <button
        type="button"
        onClick={() =>
          editPatch(`Spares: ${pullKindWords(kind)}`, (from) => setSpares(from, kind, usual))
        }
      >
        Add rule
      </button>
    </div>
  );
}
