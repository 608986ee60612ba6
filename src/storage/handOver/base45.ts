/**
 * Base45 by RFC 9285: bytes in the letters of a QR code's alphanumeric mode, two bytes in three letters. Written here because
 * the package for it is bound to Node's buffers.
 */
const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const values: ReadonlyMap<string, number> = new Map([...letters].map((letter, i) => [letter, i]));

export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const [first = 0, second] = bytes.subarray(i, i + 2);
    text += second === undefined ? digits(first, 2) : digits(first * 256 + second, 3);
  }
  return text;
}

/** Least significant letter first. */
function digits(value: number, count: number): string {
  let text = '';
  let left = value;
  for (let i = 0; i < count; i++) {
    text += letters.charAt(left % 45);
    left = Math.floor(left / 45);
  }
  return text;
}

/** Null for what is no Base45: a foreign letter, a length that can't be, a group above what its bytes can hold. */
export function fromBase45(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const group = [...text.slice(i, i + 3)];
    let value = 0;
    for (const letter of group.toReversed())
      value = value * 45 + (values.get(letter) ?? Number.NaN);
    const isPair = group.length === 3;
    if (!(value <= (isPair ? 0xffff : 0xff))) return null;
    if (isPair) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}
