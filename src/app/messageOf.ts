/** What an error says; its kind where it says nothing. */
export const messageOf = (error: unknown): string =>
  error instanceof Error && error.message !== '' ? error.message : String(error);
