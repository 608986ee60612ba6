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

const handsOn = (kind: 'hiHat' | 'snare', hands: Hands, player: Partial<Player>): Side[] =>
  sides.filter((side) => playsPiece(side, { kind, hands }, { ...average, ...player }));

describe('rule H2: the player’s way with the hi-hat', () => {
  it.each([
    ['either', 'right', ['right', 'left']],
    ['either', 'left', ['right', 'left']],
    ['crossed', 'right', ['right']],
    ['crossed', 'left', ['left']],
    ['open', 'right', ['left']],
    ['open', 'left', ['right']],
  ] as const)('%s, the %s hand leading: %j', (hiHat, leadHand, played) => {
    expect(handsOn('hiHat', 'both', { hiHat, leadHand })).toEqual(played);
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
