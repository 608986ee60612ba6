import { findMicClass } from '../../layout/catalogue/micClasses.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { isClearance, whyNot } from '../../report/judgement.ts';
import { useOpen } from '../parts/useOpen.ts';
import { AboutFindings } from './AboutFindings.tsx';
import { ClipFields } from './ClipFields.tsx';
import { DetailsHead } from './DetailsHead.tsx';
import { HoldingFields } from './HoldingFields.tsx';
import { MicActions } from './MicActions.tsx';
import { MicVerdict } from './MicVerdict.tsx';
import { PatchFields } from './PatchFields.tsx';
import { PlateInKickFields } from './PlateInKickFields.tsx';
import { PlateOnDeckFields } from './PlateOnDeckFields.tsx';
import { StandFields } from './StandFields.tsx';

/** All numbers of one mic, its clearance first. */
export function MicDetails({ mic }: { readonly mic: Mic }) {
  const { layout, report } = useOpen();
  const why = whyNot(mic.id, report);
  const micClass = findMicClass(layout, mic.micClass);
  return (
    <>
      <DetailsHead kind={micClass ? `Mic · ${micClass.name}` : 'Mic'} title={mic.name} />
      <MicVerdict mic={mic.id} />
      <AboutFindings
        of={(finding) =>
          finding.about.includes(mic.id) && !isClearance(finding) && !why.includes(finding)
        }
      />
      <HoldingFields mic={mic} />
      <MountFields mic={mic} />
      <PatchFields mic={mic} />
      <MicActions mic={mic} />
    </>
  );
}

function MountFields({ mic }: { readonly mic: Mic }) {
  const { mount } = mic;
  switch (mount.kind) {
    case 'clip':
      return <ClipFields mic={mic} clip={mount} />;
    case 'stand':
      return <StandFields mic={mic} stand={mount} />;
    case 'plateInKick':
      return <PlateInKickFields mic={mic} plate={mount} />;
    case 'plateOnDeck':
      return <PlateOnDeckFields mic={mic} plate={mount} />;
  }
}
