import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { ForbiddenZone } from '../report/zone.ts';

/** What the page asks of the zone worker. */
export interface ZoneQuestion {
  readonly token: number;
  readonly layout: Layout;
  readonly mic: Id;
}

export interface ZoneAnswer {
  /** Of the question that it answers. */
  readonly token: number;
  readonly zone: ForbiddenZone | null;
}
