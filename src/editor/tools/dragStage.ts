import type { Box } from '../../layout/cabling.ts';
import type { Deck } from '../../layout/deck.ts';
import { moveBox, moveKit } from '../../layout/edit/stage.ts';
import { restOnCentre, restOnStep } from './detent.ts';
import { carriedOnDeck, type Drag, type Hold, turnedAbout } from './drag.ts';

/** Moves the box over the deck and beside it. */
export function dragBox(box: Box, hold: Hold): Drag {
  return {
    label: 'Move the box',
    to(place) {
      const spot = carriedOnDeck(box, hold, place);
      return (layout) => moveBox(layout, spot);
    },
  };
}

/** Turns the box, so that its inputs face another way. */
export function dragBoxTurn(box: Box, hold: Hold): Drag {
  return {
    label: 'Turn the box',
    to(place) {
      const by = turnedAbout(box, hold.from.deck, place.deck);
      const turn = restOnStep(box.turn, by);
      return (layout) => moveBox(layout, { x: box.x, y: box.y, turn });
    },
  };
}

/** Moves the whole kit on its deck; rests on the deck's centre line. */
export function dragKit({ kit }: Deck, hold: Hold): Drag {
  return {
    label: 'Move the kit on the deck',
    to(place) {
      const by = carriedOnDeck({ x: 0, y: 0 }, hold, place);
      const x = restOnCentre(kit.x, by.x, hold.near);
      return (layout) => moveKit(layout, { x, y: kit.y + by.y });
    },
  };
}

/** Turns the whole kit about its throne. */
export function dragKitTurn({ kit }: Deck, hold: Hold): Drag {
  return {
    label: 'Turn the kit on the deck',
    to(place) {
      const by = turnedAbout(kit, hold.from.deck, place.deck);
      return (layout) => moveKit(layout, { turn: restOnStep(kit.turn, by) });
    },
  };
}
