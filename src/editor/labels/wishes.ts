import { along, type Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { judgementOf, markOf } from '../../report/judgement.ts';
import type { ClearanceRow, Report, RunRow } from '../../report/report.ts';
import { boxCorners } from '../../rig/boxShape.ts';
import { kickFrame } from '../../rig/pieces/kickFrame.ts';
import { stairsMiddle, stairsOutward } from '../../rig/stairs.ts';
import type { Selection } from '../../session/selection.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { showLongLength } from '../../units/lengthText.ts';
import type { FocusPlace } from '../move/micFocus.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import { axesOf, type ScreenPoint, toScreen } from '../view/view.ts';
import { isStuck, noWay, stuckWords } from '../words.ts';
import { labelName } from './labelName.ts';
import { formOf, type LabelLook, type Lettering, type Measure } from './lettering.ts';
import { pointAlong } from './lines.ts';
import { onScreen } from './placeLabels.ts';
import { alongLine, besideBox, overBroad, roundAbout } from './spots.ts';

/** What is lettered on the plan, and how it is seen. */
export interface Lettered {
  readonly layout: Layout;
  readonly report: Report;
  readonly selection: Selection | null;
  readonly showRuns: boolean;
  readonly kitView: KitView;
  readonly measure: Measure;
}

/** Who chooses a place first. */
export const RANK = {
  selected: 0,
  struck: 1,
  tight: 2,
  side: 3,
  piece: 4,
  clear: 5,
  input: 6,
  deck: 7,
} as const;

/** px per mm from which every mic's name is written beside its clearance. */
const NAMES_FROM = 0.55;
/** px per mm from which small pieces are named. */
const SMALL_FROM = 0.35;

/** Every label of the plan, with the places it could take; `judged` are those of its mics. */
export const lettering = (
  lettered: Lettered,
  judged: readonly Lettering[] = micLabels(lettered),
): readonly Lettering[] => [
  ...judged,
  ...lettered.layout.pieces.flatMap((piece) => pieceLabel(lettered, piece)),
  ...(lettered.showRuns ? lettered.report.runs.flatMap((run) => runLabel(lettered, run)) : []),
  boxLabel(lettered),
  deckLabel(lettered),
  ...sideLabels(lettered),
  ...stairsLabels(lettered),
];

/** Where a mic's label may stand: the same for all, and for every frame of a drag. */
const ROUND_MIC = roundAbout(12);

/** The verdict of every mic. */
export const micLabels = (lettered: Lettered): readonly Lettering[] =>
  lettered.report.clearances.flatMap((row) => micLabel(lettered, row.mic));

function micLabel(lettered: Lettered, mic: string): readonly Lettering[] {
  const { report, selection, kitView, measure } = lettered;
  const row = report.clearances.find((one) => one.mic === mic);
  const placed = report.rig.mics.find((one) => one.mic.id === mic);
  if (!row || !placed) return [];
  const name = labelName(placed.mic.name);
  const chosen = selection?.kind === 'mic' && selection.id === mic;
  const judged = judgementOf(row, report);
  const verdict = markOf(judged);
  const look: LabelLook = { kind: 'verdict', verdict, strong: chosen };
  const forms = isStuck(judged)
    ? [`${name}  ${stuckWords[judged]}`, stuckWords[judged]]
    : micForms(lettered, row, name);
  const at = kitToScreen(kitView, placed.tip);
  return [
    {
      look,
      wish: {
        key: `mic ${mic}`,
        at,
        spots: ROUND_MIC,
        forms: forms.map((text) => formOf(text, look, measure)),
        rank: chosen ? RANK.selected : RANK[verdict],
        points: true,
        must: onScreen(at, kitView.view.size),
      },
    },
  ];
}

/**
 * What a mic's label says, the fullest first. The selected mic gives its name: its clearance stands at the place where it is
 * measured. From afar a clear mic gives the number only; the legend gives the unit.
 */
function micForms(
  { layout, selection, kitView }: Lettered,
  { mic, verdict, clearance, nearest }: ClearanceRow,
  name: string,
): readonly string[] {
  const text = showClearance(clearance, layout);
  if (selection?.kind === 'mic' && selection.id === mic) {
    return nearest ? [name] : [`${name}  ${text}`];
  }
  const number = text.replace(` ${layout.units}`, '');
  if (kitView.view.scale >= NAMES_FROM) return [`${name}  ${text}`, text, number];
  // Where even the number finds no room, the mark alone stands.
  return verdict === 'clear' ? [number, ''] : [text];
}

function pieceLabel(lettered: Lettered, piece: Piece): readonly Lettering[] {
  const { selection, kitView, measure } = lettered;
  const chosen = selection?.kind === 'piece' && selection.id === piece.id;
  const small = piece.kind === 'pedal' || piece.kind === 'percussion' || piece.kind === 'throne';
  if (small && !chosen && kitView.view.scale < SMALL_FROM) return [];
  const look: LabelLook = { kind: 'name', strong: chosen };
  const at = kitToScreen(kitView, namePlace(piece));
  const size = piece.kind === 'pedal' ? piece.width : piece.diameter;
  return [
    {
      look,
      wish: {
        key: `piece ${piece.id}`,
        at,
        spots: overBroad((size / 2) * kitView.view.scale, chosen),
        forms: nameForms(
          { name: piece.name, look, measure },
          chosen ? null : size * kitView.view.scale,
        ),
        rank: chosen ? RANK.selected : RANK.piece,
        must: chosen,
      },
    },
  ];
}

/** How far a name may stand out over the thing itself, as a share of the thing's width: farther it is read as a neighbour's. */
const OVERHANG = 1.35;

interface Named {
  readonly name: string;
  readonly look: LabelLook;
  readonly measure: Measure;
}

/** The ways to write a name on a thing so wide, px; no width is no limit. */
export function nameForms({ name, look, measure }: Named, width: number | null) {
  const forms = [name, shortName(name)].map((text) => formOf(labelName(text), look, measure));
  return width === null ? forms : forms.filter((form) => form.width <= width * OVERHANG);
}

/** A tom is known by the rest of its name: Rack 1, Floor 2. */
const shortName = (name: string): string => name.replace(/^(.+?) tom\b/i, '$1');

/** Where a name stands best: on the thing's middle; a kick's nearer to its front, which nothing hangs over. */
function namePlace(piece: Piece): Vec2 {
  if (piece.kind === 'throne') return { x: 0, y: 0 };
  if (piece.kind !== 'kick') return piece;
  const { frontHead, front } = kickFrame(piece);
  return along(frontHead, front, -piece.depth * 0.22);
}

/** Shares of a run's length where its number may stand. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];

function runLabel(lettered: Lettered, run: RunRow): readonly Lettering[] {
  const { selection, kitView, measure } = lettered;
  const chosen = selection?.kind === 'mic' && selection.id === run.mic;
  // While one mic is looked at, only its own cable is numbered.
  const quiet = selection?.kind === 'mic' && !chosen;
  const hasNoWay = run.through.length > 0;
  if (quiet || (run.input === null && !hasNoWay) || run.route.length < 2) return [];
  const number = run.input === null ? '' : String(run.input);
  const look: LabelLook = { kind: 'input', strong: chosen };
  const way = ownWay(lettered, run).map((spot) => toScreen(kitView.view, spot));
  const places = SHARES.map((share) => pointAlong(way, share));
  const at = places[0] ?? { x: 0, y: 0 };
  return [
    {
      look,
      wish: {
        key: `run ${run.mic}`,
        at,
        spots: alongLine(places.map(({ x, y }) => ({ x: x - at.x, y: y - at.y }))),
        forms: (hasNoWay ? [`${number} ${noWay}`.trim(), noWay] : [number]).map((text) =>
          formOf(text, look, measure),
        ),
        rank: chosen ? RANK.selected : hasNoWay ? RANK.side : RANK.input,
        must: false,
      },
    },
  ];
}

/** Where a cable lies by itself, nearest to its mic: in a bundle nobody could tell whose number it is. All of it where it never does. */
function ownWay({ report }: Lettered, run: RunRow): RunRow['route'] {
  const [own] = report.loom.stretches.filter(
    ({ mics }) => mics.length === 1 && mics[0] === run.mic,
  );
  return own?.points ?? run.route;
}

function boxLabel({ layout, selection, kitView, measure }: Lettered): Lettering {
  const chosen = selection?.kind === 'box';
  const at = toScreen(kitView.view, layout.box);
  const corners = boxCorners(layout.box).map((corner) => toScreen(kitView.view, corner));
  const look: LabelLook = { kind: 'name', strong: chosen };
  return {
    look,
    wish: {
      key: 'box',
      at,
      spots: besideBox(
        Math.max(...corners.map(({ x }) => Math.abs(x - at.x))),
        Math.max(...corners.map(({ y }) => Math.abs(y - at.y))),
      ),
      forms: [
        formOf(`Box, ${layout.box.inputs} inputs`, look, measure),
        formOf('Box', look, measure),
      ],
      rank: chosen ? RANK.selected : RANK.piece,
      must: chosen,
    },
  };
}

/** The deck's size, in a corner of it. */
function deckLabel({ layout, kitView, measure }: Lettered): Lettering {
  const { deck, units } = layout;
  const look: LabelLook = { kind: 'name', strong: false };
  const size = `${showLongLength(deck.width, units)} × ${showLongLength(deck.depth, units)}`;
  const front = kitView.view.seenFrom === 'house' ? 1 : -1;
  return {
    look,
    wish: {
      key: 'deck',
      at: toScreen(kitView.view, { x: (-front * deck.width) / 2, y: deck.depth / 2 }),
      spots: [{ x: -8, y: -6 * front, sideX: -1, sideY: -front }],
      forms: [formOf(`Deck ${size}`, look, measure)],
      rank: RANK.deck,
      must: false,
    },
  };
}

/** How far the words keep from the deck's edge, from the screen's edge and from the scale bar, px. */
const INSIDE = 6;
/** How far aside they stand where a mic lies under them, px. */
const ASIDE = [0, 100, -100, 200, -200];
const SAFE = { side: 70, top: 10, bottom: 70 } as const;

/** Which way the audience is stays on the screen wherever the plan is moved; the player's word goes with the player. */
function sideLabels({ layout, kitView, measure }: Lettered): readonly Lettering[] {
  const look: LabelLook = { kind: 'side' };
  const { view } = kitView;
  const down = view.seenFrom === 'house' ? 1 : -1;
  const front = toScreen(view, { x: 0, y: layout.deck.depth / 2 });
  const side = (text: string, at: ScreenPoint, must: boolean): Lettering => ({
    look,
    wish: {
      key: `side ${must}`,
      at,
      spots: (must ? ASIDE : [0]).map((x) => ({ x, y: -down * INSIDE, sideX: 0, sideY: -down })),
      forms: [formOf(text, look, measure)],
      rank: RANK.side,
      must,
    },
  });
  const kept = {
    x: Math.min(Math.max(front.x, SAFE.side), view.size.width - SAFE.side),
    y: Math.min(Math.max(front.y, SAFE.top), view.size.height - SAFE.bottom),
  };
  const behind = kitToScreen(kitView, { x: 0, y: BEHIND_PLAYER });
  return [side(down > 0 ? 'Audience ↓' : 'Audience ↑', kept, true), side('Player', behind, false)];
}

/** Where the player's word stands: behind the throne, mm. */
const BEHIND_PLAYER = -230;

/**
 * From the middle of its stairs to their word, px out over the steps and along the deck's edge: inside the deck, out of the choice of drawing too, which
 * may stand over the edge, and aside where the player sits; then over the steps.
 */
const ROUND_STAIRS = [
  ...[-8, -34].flatMap((out) => [0, 80, -80].map((aside) => ({ out, aside }))),
  { out: 40, aside: 0 },
];

/** Which way the stairs are: on a drawing of the kit their steps are off the screen or under its buttons. */
function stairsLabels({ layout: { deck }, kitView, measure }: Lettered): readonly Lettering[] {
  const look: LabelLook = { kind: 'name', strong: false };
  const axes = axesOf(kitView.view);
  return deck.stairs.map((stairs, index) => {
    const outward = stairsOutward[stairs.edge];
    const [x, y] = [outward.x * Math.sign(axes.x), outward.y * Math.sign(axes.y)];
    const arrow = y < 0 ? '↑' : y > 0 ? '↓' : x < 0 ? '←' : '→';
    return {
      look,
      wish: {
        key: `stairs ${index}`,
        at: toScreen(kitView.view, stairsMiddle(stairs, deck)),
        spots: ROUND_STAIRS.map(({ out, aside }) => {
          const side = Math.sign(out);
          return {
            x: x * out + y * aside,
            y: y * out + x * aside,
            sideX: x * side,
            sideY: y * side,
          };
        }),
        forms: [formOf(`Stairs ${arrow}`, look, measure)],
        rank: RANK.deck,
        must: false,
      },
    };
  });
}

/** The label of the place where the selected mic comes nearest to what moves. */
export function measureLabel(
  { kitView, measure }: Pick<Lettered, 'kitView' | 'measure'>,
  place: FocusPlace | null,
): readonly Lettering[] {
  if (!place) return [];
  const { ends, verdict, text } = place;
  const look: LabelLook = { kind: 'measure', verdict };
  const middle = { x: (ends[0].x + ends[1].x) / 2, y: (ends[0].y + ends[1].y) / 2 };
  return [
    {
      look,
      wish: {
        key: 'measure',
        at: kitToScreen(kitView, middle),
        spots: roundAbout(22),
        forms: [formOf(text, look, measure)],
        rank: RANK.selected,
        must: true,
      },
    },
  ];
}
