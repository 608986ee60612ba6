import { useMemo } from 'react';
import { Stamps } from '../labels/stamps.ts';
import type { Palette } from '../palette.ts';

/** Pictures of what is drawn in these colours. */
export const useStamps = (colours: Palette): Stamps => useMemo(() => new Stamps(), [colours]);
