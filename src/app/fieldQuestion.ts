import type { Change } from '../geometry/changedParts.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { FloorReport } from '../report/floor.ts';
import type { RingOfMic } from '../report/ring.ts';
import type { ForbiddenZone } from '../report/zone.ts';

/** What is computed beside the page, by kind; the session shows each under the same name. */
export interface Fields {
  readonly zone: ForbiddenZone;
  readonly ring: RingOfMic;
  readonly floor: FloorReport;
}
export type FieldKind = keyof Fields;

/** What a field is about: a mic of a layout, the mic that a drum has not got yet, or the whole layout. */
export interface Wanted {
  readonly layout: Layout;
  readonly mic: Id | null;
  /** The drum that a mic is planned for. */
  readonly drum?: Id;
}

/** What the page asks of a field worker. */
export interface FieldQuestion extends Wanted {
  readonly kind: FieldKind;
  readonly token: number;
}

/** A question as it goes to a worker: its layout as a change of the one asked before; null before the first. */
export interface FieldMessage extends Omit<FieldQuestion, 'layout'> {
  readonly layout: Change;
}

export interface FieldAnswer<Kind extends FieldKind = FieldKind> {
  /** Of the question that it answers. */
  readonly token: number;
  readonly field: Fields[Kind] | null;
  /** What went wrong, when something did. */
  readonly fault: string | null;
}
