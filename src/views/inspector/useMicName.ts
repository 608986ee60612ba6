import type { Mic } from '../../layout/mics/mic.ts';
import { micName } from '../../layout/mics/micName.ts';
import { useOpen } from '../parts/useOpen.ts';

/** What a mic is called in the name of a step, among the open layout's pieces. */
export const useMicName = (mic: Mic): string => micName(mic, useOpen().layout.pieces);
