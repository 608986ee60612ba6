import { type Verdict, verdictWord } from '../words/verdictWords.ts';

/** The verdict's own shape: a ring with a tick, a triangle, an eight-sided stop with a cross. */
const marks: Readonly<Record<Verdict, { readonly edge: string; readonly sign: string }>> = {
  clear: {
    edge: 'M10 1.5a8.5 8.5 0 1 0 0 17 8.5 8.5 0 0 0 0-17z',
    sign: 'M6 10.3l2.8 2.8L14 7.6',
  },
  tight: { edge: 'M10 1.6L19 18H1z', sign: 'M10 7.4v4.6M10 15v.01' },
  struck: {
    edge: 'M6.5 1.5h7l5 5v7l-5 5h-7l-5-5v-7z',
    sign: 'M7 7l6 6M13 7l-6 6',
  },
};

export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  const mark = marks[verdict];
  return (
    <svg
      className={`verdict-mark ${verdict}`}
      viewBox="0 0 20 20"
      aria-hidden="true"
      focusable="false"
    >
      <path className="verdict-edge" d={mark.edge} />
      <path className="verdict-sign" d={mark.sign} />
    </svg>
  );
}

interface BadgeProps {
  readonly verdict: Verdict;
  /** What is said in place of the verdict's own word. */
  readonly word?: string;
}

/** The verdict as shape and word, in its colour. */
export function VerdictBadge({ verdict, word = verdictWord(verdict) }: BadgeProps) {
  return (
    <span className={`verdict-badge ${verdict}`}>
      <VerdictMark verdict={verdict} />
      {word}
    </span>
  );
}
