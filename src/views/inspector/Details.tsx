import type { Selection } from '../../session/selection.ts';
export function Details({ selection }: { readonly selection: Selection }) {
  return <p>{selection.kind}</p>;
}
