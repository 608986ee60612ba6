import type { Id } from '../../layout/fields.ts';
import type { Channel } from '../../layout/patch.ts';

/** A channel with nothing set by hand. */
export const plainChannel = (id: Id, mic: Id): Channel => ({
  id,
  mic,
  number: null,
  phantom: null,
  polarity: null,
  highPass: null,
  pad: null,
  insert: null,
  notes: '',
});
