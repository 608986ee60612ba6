import { useState } from 'react';
import type { Layout } from '../../../layout/layout.ts';
import { formOf, type VenueForm } from './venueForm.ts';

/** What was filled in, and what it was filled into. */
interface Draft {
  readonly layout: Layout['id'];
  /** The form as it opened, as text. */
  readonly opened: string;
  readonly form: VenueForm;
}

/** Kept while the page of the browser is open: leaving the form for the plan, or with Back, loses nothing. */
let draft: Draft | null = null;

export interface VenueDraft {
  readonly form: VenueForm;
  change(part: Partial<VenueForm>): void;
  /** The next venue was started: the form opens anew next time. */
  forget(): void;
}

/** The form for the next venue: as it was left, as long as it would open the same way from this layout; else as it opens. */
export function useVenueDraft(layout: Layout): VenueDraft {
  const [form, setForm] = useState(() => kept(layout) ?? formOf(layout));
  return {
    form,
    change(part) {
      const next = { ...form, ...part };
      draft = { layout: layout.id, opened: openingOf(layout), form: next };
      setForm(next);
    },
    forget() {
      draft = null;
    },
  };
}

function kept(layout: Layout): VenueForm | null {
  if (draft?.layout !== layout.id || draft.opened !== openingOf(layout)) return null;
  return draft.form;
}

const openingOf = (layout: Layout): string => JSON.stringify([layout.units, formOf(layout)]);
