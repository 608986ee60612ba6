import { z } from 'zod';
import { mostEntries } from '../schema/listLimit.ts';

type Schema = z.core.$ZodType;

/**
 * Fits what an edit made to the limits of its schema, so that no edit leaves a layout that its own check refuses:
 * numbers are brought inside their limits, texts and lists cut to their lengths, and what cannot be fitted (not a number,
 * a word that is no choice, an unknown field) stays as it was. Parts that come out equal keep their identity, up to the
 * whole value, so that an edit without effect gives the same object.
 */
export function settled<T>(schema: z.ZodType<T>, before: T, after: T): T {
  const value = fitted(schema, before, after);
  if (Object.is(value, before)) return before;
  return schema.safeParse(value).success ? (value as T) : before;
}

/** A number brought inside the limits of its field; not a number stays what it was before. */
export function clampTo(field: z.ZodNumber, value: number, before: number): number {
  if (Number.isNaN(value)) return before;
  const low = field.minValue ?? -Infinity;
  const high = field.maxValue ?? Infinity;
  const inside = Math.min(high, Math.max(low, value));
  return (field.format === 'safeint' ? Math.round(inside) : inside) + 0;
}

function fitted(schema: Schema, before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (schema instanceof z.ZodNumber) return fitNumber(schema, before, after);
  if (schema instanceof z.ZodString) return fitText(schema, before, after);
  if (schema instanceof z.ZodArray) return fitList(schema, before, after);
  if (schema instanceof z.ZodObject) return fitObject(schema, before, after);
  if (schema instanceof z.ZodDiscriminatedUnion) return fitChoice(schema, before, after);
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) {
    return after === null || after === undefined
      ? after
      : fitted(schema.def.innerType, before, after);
  }
  return z.safeParse(schema, after).success ? after : before;
}

const fitNumber = (field: z.ZodNumber, before: unknown, after: unknown): unknown =>
  typeof after === 'number'
    ? clampTo(field, after, typeof before === 'number' ? before : Number.NaN)
    : before;

const fitText = (field: z.ZodString, before: unknown, after: unknown): unknown =>
  typeof after === 'string' && z.safeParse(field, cutText(field, after)).success
    ? cutText(field, after)
    : before;

const cutText = (field: z.ZodString, text: string): string =>
  text.slice(0, field.maxLength ?? undefined);

function fitList(schema: z.ZodArray, before: unknown, after: unknown): unknown {
  if (!Array.isArray(after)) return before;
  const old: readonly unknown[] = Array.isArray(before) ? before : [];
  const entries = after
    .slice(0, mostEntries(schema))
    .map((entry, index) => fitted(schema.element, old[index], entry));
  const same = Array.isArray(before) && entries.length === old.length;
  return same && entries.every((entry, index) => Object.is(entry, old[index])) ? before : entries;
}

function fitObject(schema: z.ZodObject, before: unknown, after: unknown): unknown {
  if (!isRecord(after)) return before;
  const old = isRecord(before) ? before : {};
  const entries = Object.entries(schema.shape).flatMap(([key, field]) => {
    const value = fitted(field, old[key], after[key]);
    return value === undefined ? [] : [[key, value] as const];
  });
  const isSame = (other: Readonly<Record<string, unknown>>): boolean =>
    entries.length === Object.keys(other).length &&
    entries.every(([key, value]) => Object.is(value, other[key]));
  if (isRecord(before) && isSame(before)) return before;
  return isSame(after) ? after : Object.fromEntries(entries);
}

function fitChoice(schema: z.ZodDiscriminatedUnion, before: unknown, after: unknown): unknown {
  const tag = schema.def.discriminator;
  if (!isRecord(after)) return before;
  const choice = schema.options.find(
    (option) => option instanceof z.ZodObject && z.safeParse(option.shape[tag], after[tag]).success,
  );
  return choice === undefined ? before : fitted(choice, before, after);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
