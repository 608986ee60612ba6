import { expect, it } from 'vitest';
import type { FoundSpot } from '../../../src/report/boxSpots.ts';
import {
  spotGainWords,
  spotNeedWords,
  spotPlaceWords,
  spotTakenWords,
} from '../../../src/views/words/spotWords.ts';
import { sample } from './sampleLayout.ts';

const spot: FoundSpot = {
  edge: 'front',
  along: 820,
  box: sample.box,
  cable: 40_000,
  longest: 6000,
  blocked: 0,
};

it('a spot says where it is, from the player', () => {
  expect(spotPlaceWords(spot, sample)).toBe("Front edge, 0.8 m to the player's right");
  expect(spotPlaceWords({ ...spot, edge: 'left', along: -1500 }, sample)).toBe(
    "Player's left edge, 1.5 m toward the back",
  );
  expect(spotPlaceWords({ ...spot, edge: 'back', along: 20 }, sample)).toBe(
    'Back edge, in the middle',
  );
});

it('a spot says what its cables need, and which find no way', () => {
  expect(spotNeedWords(spot, sample)).toBe('single ways 40.0 m, longest 6.0 m');
  expect(spotNeedWords({ ...spot, blocked: 2 }, { units: 'in' })).toBe(
    'single ways 131.2 ft, longest 19.7 ft; 2 without a free way',
  );
});

it('a spot is compared with now by what it was chosen for', () => {
  const runs = [{ shortest: 36_000 }, { shortest: 5000 }].map((run) => ({ ...run }));
  const now = { runs } as unknown as Parameters<typeof spotGainWords>[1];
  expect(spotGainWords(spot, now, { by: 'cable', units: 'mm' })).toBe('1.0 m less than now');
  expect(spotGainWords({ ...spot, cable: 41_010 }, now, { by: 'cable', units: 'mm' })).toBe(
    'as now',
  );
  expect(spotGainWords({ ...spot, longest: 37_000 }, now, { by: 'longest', units: 'mm' })).toBe(
    '1.0 m more than now',
  );
});

it('a spot that is taken says its cable as the totals do', () => {
  const totals = { cable: 68_900, longest: 9000, extra: 2100, stock: [] };
  expect(spotTakenWords('A', { totals }, { units: 'mm' })).toBe(
    'The box stands at spot A. Cable laid: 68.9 m, 2.1 m of it by the loom',
  );
});
