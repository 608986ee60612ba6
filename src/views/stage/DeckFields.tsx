import { deckSchema } from '../../layout/deck.ts';
import { moveKit, setDeck } from '../../layout/edit/stage.ts';
import { azimuthField } from '../../layout/fields.ts';
import { COARSE_LENGTH, DIRECTION } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SpotFields } from '../inspector/SpotFields.tsx';
import { Group } from '../parts/Group.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { StairsFields } from './StairsFields.tsx';

/** The deck's size, where the kit stands on it, and its stairs. */
export function DeckFields() {
  const { deck } = useOpen().layout;
  const size = (key: 'width' | 'depth' | 'height', label: string) => (
    <NumberField
      label={label}
      step={`Deck ${key}`}
      value={deck[key]}
      measure={COARSE_LENGTH}
      limits={limitsOf(deckSchema.shape[key])}
      apply={(layout, value) => setDeck(layout, { [key]: value })}
    />
  );
  return (
    <>
      <Group title="Deck" hint="Height 0 is a marked area of the stage floor.">
        {size('width', 'Width, side to side')}
        {size('depth', 'Depth, back to front')}
        {size('height', 'Height')}
      </Group>
      <Group
        title="Kit on the deck"
        hint="The throne’s place, from the middle of the deck. Right is the player’s right."
      >
        <SpotFields
          of="the kit"
          spot={deck.kit}
          labels={{ x: 'Right of the middle', y: 'In front of the middle' }}
          apply={(layout, to) => moveKit(layout, to)}
        />
        <NumberField
          label="Kit turned by"
          step="Turn the kit"
          value={deck.kit.turn}
          measure={DIRECTION}
          limits={limitsOf(azimuthField)}
          round
          apply={(layout, turn) => moveKit(layout, { turn })}
        />
      </Group>
      <StairsFields />
    </>
  );
}
