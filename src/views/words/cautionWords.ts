/** Where this work can hurt someone. Short on purpose: the people on the spot decide. */
export const CAUTIONS: readonly { readonly what: string; readonly text: string }[] = [
  {
    what: 'Hearing',
    text: 'A kit at close range can harm hearing within minutes. Wear protection.',
  },
  { what: 'Tripping', text: 'Cables across a way that people walk are covered or moved.' },
  {
    what: 'Mains',
    text: 'Keep signal and mains apart; only qualified people work on mains power.',
  },
  { what: 'Tipping', text: 'A long boom can pull its stand over. Counterweight or sandbag it.' },
];

export const CAUTION_CLOSE =
  'Results are computed from a model of the player and can be wrong. Local rules and qualified people decide.';
