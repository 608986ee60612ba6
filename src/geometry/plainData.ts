/** An object of plain data: its fields by name. */
export type Fields = Readonly<Record<string, unknown>>;

export const isPlain = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
