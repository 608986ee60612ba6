/** How many findings must be solved and should be looked at: `3 to solve, 5 to look at`; empty where there are none of either. */
export const needWords = ({
  solve,
  look,
}: {
  readonly solve: number;
  readonly look: number;
}): string =>
  [...(solve > 0 ? [`${solve} to solve`] : []), ...(look > 0 ? [`${look} to look at`] : [])].join(
    ', ',
  );
