import type { MarkSign } from '../../session/patchView.ts';
import { type Palette, verdictInk } from '../palette.ts';
import type { ScreenPen } from '../shapes/pen.ts';
import { paintVerdictMark } from '../shapes/verdictMark.ts';
import { fontOf, isQuiet, type LabelLook, MARK, PAD } from './lettering.ts';
import { nearestIn } from './lines.ts';
import type { PlacedLabel } from './placeLabels.ts';
import { stampsOn } from './stamps.ts';

/** A label in its place, with its look. */
export interface LaidLabel {
  readonly label: PlacedLabel;
  readonly look: LabelLook;
}

/**
 * Draws labels in their places, with lines to what they name where they need one (rule L8); screen px. The last to choose lies lowest: what
 * matters most is drawn over the rest.
 */
export function paintLabels(ink: ScreenPen, labels: readonly LaidLabel[]): void {
  const { colours } = ink;
  const drawStamp = stampsOn(ink.canvas, colours);
  for (const { label, look } of labels.toReversed()) {
    const leader = leaderOf(look, colours);
    if (leader !== null && label.led) paintLeader(ink, label, leader);
    const stamp = { key: `${keyOf(look)} ${label.form.text}`, box: label.box };
    drawStamp(stamp, (canvas) => paintBody({ canvas, colours }, label, look));
  }
}

/** What two labels with the same text look the same by. */
function keyOf(look: LabelLook): string {
  switch (look.kind) {
    case 'verdict':
      return `${look.kind} ${look.verdict} ${look.strong}`;
    case 'measure':
      return `${look.kind} ${look.verdict}`;
    case 'mark':
      return `${look.kind} ${look.sign}`;
    case 'input':
    case 'name':
      return `${look.kind} ${look.strong}`;
    case 'contour':
    case 'side':
      return look.kind;
  }
}

/** The colour of the line to what a label names; null where such labels have none. */
function leaderOf(look: LabelLook, colours: Palette): string | null {
  switch (look.kind) {
    case 'verdict':
    case 'measure':
      return verdictInk(look.verdict, colours);
    case 'mark':
      return edgeOf(look.sign, colours);
    case 'input':
    case 'name':
    case 'contour':
    case 'side':
      return null;
  }
}

function paintBody(ink: ScreenPen, label: PlacedLabel, look: LabelLook): void {
  const { canvas } = ink;
  canvas.font = fontOf(look);
  canvas.textBaseline = 'middle';
  canvas.textAlign = 'left';
  canvas.lineJoin = 'round';
  switch (look.kind) {
    case 'verdict':
    case 'measure':
      paintBadge(ink, label, look);
      return;
    case 'mark':
      paintMark(ink, label, look.sign);
      return;
    case 'input':
      paintInput(ink, label, look.strong);
      return;
    case 'name':
      paintName(ink, label, look.strong ? ink.colours.ink : ink.colours.inkSoft);
      return;
    case 'contour':
      paintName(ink, label, ink.colours.contour);
      return;
    case 'side':
      paintSide(ink, label);
      return;
  }
}

type BadgeLook = Extract<LabelLook, { kind: 'verdict' | 'measure' }>;

function paintBadge(ink: ScreenPen, { box, form }: PlacedLabel, look: BadgeLook): void {
  const { canvas, colours } = ink;
  const edge = verdictInk(look.verdict, colours);
  const middle = box.top + box.height / 2;
  canvas.beginPath();
  canvas.roundRect(box.left, box.top, box.width, box.height, 7);
  canvas.fillStyle = colours.plate;
  canvas.fill();
  if (!isQuiet(look)) {
    canvas.strokeStyle = edge;
    canvas.lineWidth = look.kind === 'verdict' && look.strong ? 2.5 : 1.25;
    canvas.stroke();
  }
  if (look.verdict !== null) {
    const before = form.text === '' ? PAD / 2 : PAD;
    const mark = { x: box.left + before + MARK / 2, y: middle, size: MARK };
    paintVerdictMark(canvas, look.verdict, mark, colours);
  }
  const left = look.verdict === null ? PAD : 1.75 * PAD + MARK;
  canvas.fillStyle = colours.ink;
  canvas.fillText(form.text, box.left + left, middle + 0.5);
}

/** A mark's edge by its sign; the sign itself is written on it. */
function paintMark(ink: ScreenPen, { box, form }: PlacedLabel, sign: MarkSign): void {
  const { canvas, colours } = ink;
  const edge = edgeOf(sign, colours);
  canvas.beginPath();
  canvas.roundRect(box.left, box.top, box.width, box.height, 7);
  canvas.fillStyle = colours.plate;
  canvas.fill();
  canvas.strokeStyle = edge;
  canvas.lineWidth = sign === 'open' || sign === 'skip' ? 1.25 : 2.5;
  canvas.stroke();
  canvas.fillStyle = colours.ink;
  canvas.fillText(form.text, box.left + PAD, box.top + box.height / 2 + 0.5);
}

function edgeOf(sign: MarkSign, { verdict, inkSoft, selected }: Palette): string {
  switch (sign) {
    case 'pass':
      return verdict.clear;
    case 'fail':
      return verdict.struck;
    case 'undo':
      return selected;
    case 'skip':
    case 'open':
      return inkSoft;
  }
}

/** A line from a label to what it names, from the nearest point of its box. */
function paintLeader(
  { canvas, colours }: ScreenPen,
  { box, at }: Pick<PlacedLabel, 'box' | 'at'>,
  colour: string,
): void {
  const { x, y } = nearestIn(box, at);
  for (const [stroke, width] of [
    [colours.halo, 4],
    [colour, 1.5],
  ] as const) {
    canvas.beginPath();
    canvas.moveTo(at.x, at.y);
    canvas.lineTo(x, y);
    canvas.strokeStyle = stroke;
    canvas.lineWidth = width;
    canvas.stroke();
  }
  canvas.beginPath();
  canvas.arc(at.x, at.y, 2.5, 0, 2 * Math.PI);
  canvas.fillStyle = colour;
  canvas.fill();
}

function paintInput(
  { canvas, colours }: ScreenPen,
  { box, form }: PlacedLabel,
  strong: boolean,
): void {
  const middle = box.top + box.height / 2;
  canvas.beginPath();
  canvas.roundRect(box.left, box.top, box.width, box.height, box.height / 2);
  canvas.fillStyle = strong ? colours.cable : colours.plate;
  canvas.fill();
  canvas.strokeStyle = colours.cable;
  canvas.lineWidth = 1.5;
  canvas.stroke();
  canvas.textAlign = 'center';
  canvas.fillStyle = strong ? colours.plate : colours.ink;
  canvas.fillText(form.text, box.left + box.width / 2, middle + 0.5);
}

/** On a plate, like the legend: drawn large, the kit lies under it. */
function paintSide(ink: ScreenPen, label: PlacedLabel): void {
  const { canvas, colours } = ink;
  const { left, top, width, height } = label.box;
  canvas.beginPath();
  canvas.roundRect(left, top, width, height, 7);
  canvas.fillStyle = colours.plate;
  canvas.globalAlpha = 0.85;
  canvas.fill();
  canvas.globalAlpha = 1;
  paintName(ink, label, colours.ink);
}

function paintName(
  { canvas, colours }: ScreenPen,
  { box, form }: PlacedLabel,
  colour: string,
): void {
  const x = box.left + (box.width - canvas.measureText(form.text).width) / 2;
  const y = box.top + box.height / 2;
  canvas.strokeStyle = colours.halo;
  canvas.lineWidth = 4;
  canvas.strokeText(form.text, x, y);
  canvas.fillStyle = colour;
  canvas.fillText(form.text, x, y);
}
