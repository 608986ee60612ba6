/** Styles of music for which starting points differ. */
export type MusicStyle = 'rock' | 'pop' | 'jazz' | 'bigBand' | 'worship' | 'metal';

/** Soft playing keeps what loud playing filters, gates and pads away (common practice, no source). */
export const isSoft = (style: MusicStyle): boolean => style === 'jazz' || style === 'bigBand';
