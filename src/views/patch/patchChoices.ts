import type { Insert } from '../../layout/patch.ts';

export const INSERT_OPTIONS: readonly { readonly value: Insert; readonly text: string }[] = [
  { value: 'none', text: 'None' },
  { value: 'gate', text: 'Gate' },
  { value: 'compressor', text: 'Compressor' },
  { value: 'gateAndCompressor', text: 'Gate and compressor' },
];

/** The entry of a list of options with a value that came from a field; undefined for none of them. */
export const chosenOf = <Value extends string>(
  options: readonly { readonly value: Value }[],
  value: string,
): Value | undefined => options.find((option) => option.value === value)?.value;
