/** A segment as two places in a table of coordinates. */
export interface SegmentRow {
  readonly rows: Float64Array;
  readonly from: number;
  readonly to: number;
}

/**
 * Distance between two segments by cases: the common perpendicular of their lines where both its feet lie on the segments, else the
 * least of the four distances from an end to the other segment. The first segment's ends are the six numbers at p[i].
 */
export function segmentsApart(p: Float64Array, i: number, q: SegmentRow): number {
  const first = { rows: p, from: i, to: i + 3 };
  const ends = Math.min(
    endApart(p, i, q),
    endApart(p, i + 3, q),
    endApart(q.rows, q.from, first),
    endApart(q.rows, q.to, first),
  );
  return Math.min(ends, acrossApart(first, q));
}

const at = (rows: Float64Array, k: number): number => rows[k] as number;

function endApart(p: Float64Array, i: number, { rows, from, to }: SegmentRow): number {
  const wx = at(rows, to) - at(rows, from);
  const wy = at(rows, to + 1) - at(rows, from + 1);
  const wz = at(rows, to + 2) - at(rows, from + 2);
  const x = at(p, i) - at(rows, from);
  const y = at(p, i + 1) - at(rows, from + 1);
  const z = at(p, i + 2) - at(rows, from + 2);
  const size = wx * wx + wy * wy + wz * wz;
  const along = size > 0 ? (x * wx + y * wy + z * wz) / size : 0;
  const k = along < 0 ? 0 : along > 1 ? 1 : along;
  const dx = x - k * wx;
  const dy = y - k * wy;
  const dz = z - k * wz;
  return Math.sqrt(dx * dx + dy * dy + dz * dz);
}

/** Along the common perpendicular; infinite where a foot of it is off its segment or the lines are parallel. */
function acrossApart(first: SegmentRow, second: SegmentRow): number {
  const p = first.rows;
  const q = second.rows;
  const ux = at(p, first.to) - at(p, first.from);
  const uy = at(p, first.to + 1) - at(p, first.from + 1);
  const uz = at(p, first.to + 2) - at(p, first.from + 2);
  const vx = at(q, second.to) - at(q, second.from);
  const vy = at(q, second.to + 1) - at(q, second.from + 1);
  const vz = at(q, second.to + 2) - at(q, second.from + 2);
  const nx = uy * vz - uz * vy;
  const ny = uz * vx - ux * vz;
  const nz = ux * vy - uy * vx;
  const size = nx * nx + ny * ny + nz * nz;
  if (size <= 1e-18 * (ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz)) {
    return Number.POSITIVE_INFINITY;
  }
  const wx = at(q, second.from) - at(p, first.from);
  const wy = at(q, second.from + 1) - at(p, first.from + 1);
  const wz = at(q, second.from + 2) - at(p, first.from + 2);
  // With w from the first segment's start to the second's: s = (w x v) . n / n.n and t = (w x u) . n / n.n.
  const s = ((wy * vz - wz * vy) * nx + (wz * vx - wx * vz) * ny + (wx * vy - wy * vx) * nz) / size;
  const t = ((wy * uz - wz * uy) * nx + (wz * ux - wx * uz) * ny + (wx * uy - wy * ux) * nz) / size;
  if (s < 0 || s > 1 || t < 0 || t > 1) return Number.POSITIVE_INFINITY;
  return Math.abs(wx * nx + wy * ny + wz * nz) / Math.sqrt(size);
}
