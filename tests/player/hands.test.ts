import { describe, expect, it } from 'vitest';
import { fourPieceJazz } from '../../src/layout/catalogue/kits/fourPieceJazz.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Hands } from '../../src/layout/pieces/struck.ts';
import type { Player } from '../../src/layout/player.ts';
import { playsPiece, type Side } from '../../src/player/hands.ts';
import { playingOf } from '../../src/player/moves.ts';
import { outOfReach } from '../../src/player/outOfReach.ts';
import { average } from './arms.ts';

const sides: readonly Side[] = ['right', 'left'];

const handsOn = (
  kind: 'hiHat' | 'snare',
  hands: Hands,
  player: Partial<Player>,
  x = -400,
): Side[] =>
  sides.filter((side) => playsPiece(side, { kind, hands, x }, { ...average, ...player }));

describe('rule H2: the player’s way with the hi-hat', () => {
  it.each([
    ['either', 'right', -400, ['right', 'left']],
    ['either', 'left', 400, ['right', 'left']],
    ['crossed', 'right', -400, ['right']],
    ['crossed', 'left', 400, ['left']],
    ['open', 'right', -400, ['left']],
    ['open', 'left', 400, ['right']],
    // A left-handed player behind a right-handed kit, and a second hi-hat on the side of the lead hand.
    ['crossed', 'left', -400, ['left']],
    ['open', 'left', -400, ['left']],
    ['crossed', 'right', 600, ['right']],
    ['open', 'right', 600, ['right']],
    ['open', 'right', 0, ['left']],
    ['open', 'left', 0, ['right']],
  ] as const)('%s, the %s hand leading, %d mm to the right: %j', (hiHat, leadHand, x, played) => {
    expect(handsOn('hiHat', 'both', { hiHat, leadHand }, x)).toEqual(played);
  });

  it('open never has an arm reach over to the other side', () => {
    for (const leadHand of sides) {
      for (const x of [-900, -50, 50, 900]) {
        expect(handsOn('hiHat', 'both', { hiHat: 'open', leadHand }, x)).toEqual([
          x < 0 ? 'left' : 'right',
        ]);
      }
    }
  });

  it('a hi-hat that is given to one hand, or to none, keeps it', () => {
    for (const hiHat of ['either', 'crossed', 'open'] as const) {
      expect(handsOn('hiHat', 'lead', { hiHat })).toEqual(['right']);
      expect(handsOn('hiHat', 'right', { hiHat })).toEqual(['right']);
      expect(handsOn('hiHat', 'left', { hiHat })).toEqual(['left']);
      expect(handsOn('hiHat', 'none', { hiHat })).toEqual([]);
    }
  });

  it('other pieces are played by the hands they are given (rule H1)', () => {
    for (const hiHat of ['either', 'crossed', 'open'] as const) {
      expect(handsOn('snare', 'both', { hiHat })).toEqual(['right', 'left']);
    }
  });

  const kit = fourPieceJazz('jazz');
  const hat = kit.pieces.find(({ kind }) => kind === 'hiHat')?.id ?? '';
  const handsAtHat = (player: Player, pieces = kit.pieces) =>
    new Set(playingOf(player, pieces).moves.flatMap(({ on, side }) => (on === hat ? [side] : [])));

  it('decides which strokes and travels there are', () => {
    expect(handsAtHat({ ...kit.player, hiHat: 'either' })).toEqual(new Set(['right', 'left']));
    expect(handsAtHat({ ...kit.player, hiHat: 'crossed' })).toEqual(new Set(['right']));
    expect(handsAtHat({ ...kit.player, hiHat: 'open' })).toEqual(new Set(['left']));
  });

  it('is the mirror image for the mirrored kit', () => {
    for (const hiHat of ['crossed', 'open'] as const) {
      const left = mirrorKit({ ...kit, player: { ...kit.player, hiHat } });
      const here = [...handsAtHat({ ...kit.player, hiHat })];
      const there = [...handsAtHat(left.player, left.pieces)];
      expect(there).toEqual(here.map((side) => (side === 'right' ? 'left' : 'right')));
    }
  });

  it('is asked for what is out of reach', () => {
    const far = kit.pieces.map((piece) => (piece.id === hat ? { ...piece, y: 3000 } : piece));
    const beyond = (hiHat: Player['hiHat']) =>
      outOfReach({ ...kit.player, hiHat }, far).map(({ piece, side }) => `${piece} ${side}`);
    expect(beyond('either')).toEqual([`${hat} right`, `${hat} left`]);
    expect(beyond('crossed')).toEqual([`${hat} right`]);
    expect(beyond('open')).toEqual([`${hat} left`]);
  });
});
