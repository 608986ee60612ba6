import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fourPieceJazz } from '../../src/layout/catalogue/kits/fourPieceJazz.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';
import { playingOf } from '../../src/player/moves.ts';
import { playerFacts } from '../../src/report/playerFacts.ts';
import { randomKit } from '../support/randomKit.ts';

describe('which hand plays what', () => {
  it('is that of the moves, and names every piece that hands can strike', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const { playedBy } = playerFacts(layout);
        expect(playedBy.map(({ piece }) => piece)).toEqual(
          layout.pieces.filter(isStruck).map(({ id }) => id),
        );
        const { moves } = playingOf(layout.player, layout.pieces);
        for (const { piece, hands } of playedBy) {
          const played = new Set(moves.filter(({ on }) => on === piece).map(({ side }) => side));
          expect(new Set(hands)).toEqual(played);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('changes with the lead hand alone, while every piece stays where it is', () => {
    const { player, pieces } = fourPieceJazz('jazz');
    const ride = (leadHand: 'right' | 'left') =>
      playerFacts({ player: { ...player, leadHand }, pieces }).playedBy.find(
        ({ piece }) => pieces.find(({ id }) => id === piece)?.kind === 'ride',
      )?.hands;
    expect(ride('right')).toEqual(['right']);
    expect(ride('left')).toEqual(['left']);
  });
});

describe('body lengths', () => {
  it('are the measured ones where given, and those from stature stay beside them', () => {
    const { player, pieces } = fourPieceJazz('jazz');
    const { body, bodyFromStature } = playerFacts({
      player: { ...player, body: { acromionRadiale: 401 } },
      pieces,
    });
    expect(body.acromionRadiale).toBe(401);
    expect(bodyFromStature).toEqual(playerFacts({ player, pieces }).body);
    expect({ ...body, acromionRadiale: bodyFromStature.acromionRadiale }).toEqual(bodyFromStature);
  });
});
