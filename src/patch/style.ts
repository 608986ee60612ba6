import type { MusicStyle } from '../layout/patch.ts';
/** Soft playing keeps what loud playing filters, gates and pads away (common practice, no source). */
export const isSoft = (style: MusicStyle): boolean => style === 'jazz' || style === 'bigBand';
