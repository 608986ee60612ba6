import { describe, expect, test } from 'vitest';
import { MARK_RADIUS, markBoxes, markedPlaces } from '../../../src/editor/labels/markedPlaces.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { fivePieceOneRack } from '../../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { Finding } from '../../../src/report/report.ts';
import { viewOf } from '../support.ts';

const layout = fivePieceOneRack('kit');
const report = createAnalyst()(layout);
const kitView = viewOf(layout);
const place = { x: 120, y: 640, z: 0 };
const about = (code: Finding['code'], mic: string): Finding => ({
  key: `${code}:${mic}`,
  code,
  severity: 'warn',
  about: [mic],
  place,
  numbers: {},
});
const [first, second] = report.rig.mics;
if (!first || !second) throw new Error('expected two mics');

describe('places marked on the plan', () => {
  test('a wished spot is tied to its own mic, and no other finding is', () => {
    const [one, other, tight] = markedPlaces(
      [
        about('mic-move-wished', first.mic.id),
        about('mic-move-wished', second.mic.id),
        about('mic-tight', first.mic.id),
      ],
      report,
      kitView,
    );
    expect(one?.at).toEqual(kitToScreen(kitView, place));
    expect(one?.from).toEqual(kitToScreen(kitView, first.tip));
    expect(other?.from).toEqual(kitToScreen(kitView, second.tip));
    expect(tight).toBeDefined();
    expect(tight?.from).toBeUndefined();
  });

  test('a finding without a place is not marked, a wish of a mic that is gone is marked and not tied', () => {
    const nowhere = { ...about('more-mics-than-inputs', first.mic.id), place: undefined };
    const marked = markedPlaces([nowhere, about('mic-move-wished', 'gone')], report, kitView);
    expect(marked.map(({ key }) => key)).toEqual(['mic-move-wished:gone']);
    expect(marked[0]?.from).toBeUndefined();
  });

  test('labels keep out of the whole ring', () => {
    const marked = markedPlaces([about('mic-tight', first.mic.id)], report, kitView);
    const [box] = markBoxes(marked);
    const [{ at } = { at: { x: 0, y: 0 } }] = marked;
    expect(box).toEqual({
      left: at.x - MARK_RADIUS,
      top: at.y - MARK_RADIUS,
      width: 2 * MARK_RADIUS,
      height: 2 * MARK_RADIUS,
    });
  });
});
