import type { JournalFile } from '../../../src/storage/journal/journal.ts';
import { joined } from '../../../src/storage/records/record.ts';

/** A file in memory; `atMost` bytes fit into it, and `crash` leaves only what was flushed and a part of what came after. */
export function memoryFile(atMost = Number.POSITIVE_INFINITY) {
  let bytes: Uint8Array = new Uint8Array();
  let flushed = 0;
  const file: JournalFile = {
    size: () => bytes.length,
    read(into, at) {
      const piece = bytes.subarray(at, at + into.length);
      into.set(piece);
      return piece.length;
    },
    write(piece, at) {
      const fits = piece.subarray(0, Math.max(0, atMost - at));
      bytes = joined([bytes.subarray(0, at), fits]);
      return fits.length;
    },
    flush: () => {
      flushed = bytes.length;
    },
    truncate: (size) => {
      bytes = bytes.slice(0, size);
    },
  };
  return {
    file,
    bytes: () => bytes,
    set: (other: Uint8Array) => {
      bytes = other.slice();
    },
    crash(share: number) {
      bytes = bytes.slice(0, flushed + Math.floor((bytes.length - flushed) * share));
    },
  };
}
