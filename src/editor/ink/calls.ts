/** How many numbers follow the code of each call in a recording. Texts are told by their numbers in a table. */
const COUNTS = {
  save: 0,
  restore: 0,
  translate: 2,
  scale: 2,
  transform: 6,
  beginPath: 0,
  closePath: 0,
  moveTo: 2,
  lineTo: 2,
  arc: 6,
  ellipse: 7,
  roundRect: 5,
  fill: 0,
  stroke: 0,
  clip: 1,
  fillRect: 4,
  strokeRect: 4,
  clearRect: 4,
  fillText: 3,
  strokeText: 3,
  setLineDash: 1,
  fillStyle: 1,
  strokeStyle: 1,
  lineWidth: 1,
  lineCap: 1,
  lineJoin: 1,
  globalAlpha: 1,
  globalCompositeOperation: 1,
  font: 1,
  textAlign: 1,
  textBaseline: 1,
  /** Key, left, top, width and height, and how many numbers after these draw it where no picture of it is known. */
  stamp: 6,
} as const;

export type Call = keyof typeof COUNTS;

export const CALLS = Object.keys(COUNTS) as readonly Call[];

/** How many numbers follow a code, by code. */
export const COUNT_OF: readonly number[] = Object.values(COUNTS);

/** The code of each call. */
export const CODE = Object.fromEntries(CALLS.map((call, code) => [call, code])) as Readonly<
  Record<Call, number>
>;
