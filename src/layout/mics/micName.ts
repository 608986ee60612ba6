interface Named {
  readonly name: string;
}

/** What a mic is called where a piece could be meant too: its own name, or `Snare mic` where a piece has the same. */
export const micName = ({ name }: Named, pieces: readonly Named[]): string =>
  pieces.some((piece) => piece.name === name) ? `${name} mic` : name;
