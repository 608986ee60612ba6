/** A time of day as on a 24-hour clock: `14:32`. */
export function clockWords(at: number): string {
  const time = new Date(at);
  return `${two(time.getHours())}:${two(time.getMinutes())}`;
}

const two = (value: number): string => String(value).padStart(2, '0');

const dayNumber = (at: number): number => {
  const time = new Date(at);
  return Date.UTC(time.getFullYear(), time.getMonth(), time.getDate()) / 86_400_000;
};

/** When something was changed, seen from `now` (both ms since 1970): `today 14:32`, `yesterday 9:05`, `2026-03-01`. */
export function changedWords(at: number, now: number): string {
  const daysAgo = dayNumber(now) - dayNumber(at);
  if (daysAgo === 0) return `today ${clockWords(at)}`;
  if (daysAgo === 1) return `yesterday ${clockWords(at)}`;
  return dayWords(at);
}

/** A day as `2026-03-01`. */
export function dayWords(at: number): string {
  const time = new Date(at);
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
}
