import { type Stairs, stairsSchema } from '../../layout/deck.ts';
import { addStairs, changeStairs, removeStairs } from '../../layout/edit/stage.ts';
import { edit } from '../../session/session.ts';
import { LENGTH } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';

const edges: Readonly<Record<Stairs['edge'], string>> = {
  front: 'Front, toward the audience',
  back: 'Back',
  left: "Player's left",
  right: "Player's right",
};

/** Which way a place along an edge counts from its middle. */
const alongEdge = (edge: Stairs['edge']): string =>
  edge === 'front' || edge === 'back' ? 'right of the middle' : 'in front of the middle';

/** Where people step onto the deck. The way from the throne to the stairs is kept free. */
export function StairsFields() {
  const { stairs } = useOpen().layout.deck;
  return (
    <section className="group">
      <h3>Stairs</h3>
      {stairs.length === 0 && <p className="field-hint">None. Then no way is kept free.</p>}
      {stairs.length > 0 && <p className="field-hint">Right is the player’s right.</p>}
      {stairs.map((each, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: stairs have no name but their place in the list
        <OneStairs key={index} stairs={each} index={index} />
      ))}
      <button
        type="button"
        disabled={stairs.length >= 8}
        onClick={() =>
          edit('Add stairs', (layout) => addStairs(layout, { edge: 'back', offset: 0, width: 800 }))
        }
      >
        <Icon name="plus" /> Add stairs
      </button>
    </section>
  );
}

function OneStairs({ stairs, index }: { readonly stairs: Stairs; readonly index: number }) {
  const number = index + 1;
  return (
    <div className="field-grid boxed">
      <div className="wide">
        <SelectField
          label={`Stairs ${number} at`}
          value={stairs.edge}
          options={stairsSchema.shape.edge.options.map((edge) => ({
            value: edge,
            text: edges[edge],
          }))}
          onChoose={(value) => {
            const edge = stairsSchema.shape.edge.options.find((option) => option === value);
            if (edge) edit('Move stairs', (layout) => changeStairs(layout, index, { edge }));
          }}
        />
      </div>
      <NumberField
        label={`Stairs ${number} ${alongEdge(stairs.edge)}`}
        step="Move stairs"
        value={stairs.offset}
        measure={LENGTH}
        limits={limitsOf(stairsSchema.shape.offset)}
        apply={(layout, offset) => changeStairs(layout, index, { offset })}
      />
      <NumberField
        label={`Stairs ${number} width`}
        step="Width of stairs"
        value={stairs.width}
        measure={LENGTH}
        limits={limitsOf(stairsSchema.shape.width)}
        apply={(layout, width) => changeStairs(layout, index, { width })}
      />
      <button
        type="button"
        className="danger"
        onClick={() => edit('Remove stairs', (layout) => removeStairs(layout, index))}
      >
        <Icon name="bin" /> Remove<span className="spoken"> stairs {number}</span>
      </button>
    </div>
  );
}
