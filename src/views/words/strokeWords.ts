/**
 * Named heights to which the contact point rises, mm: a tap of about 3 in, a half stroke of 6 in, a full stroke of 12 in. Common
 * teaching, from memory; no standard fixes them.
 */
export const STROKES: readonly { readonly name: string; readonly height: number }[] = [
  { name: 'Tap', height: 75 },
  { name: 'Half', height: 150 },
  { name: 'Full', height: 305 },
];
