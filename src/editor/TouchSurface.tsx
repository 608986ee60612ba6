import { useRef } from 'react';
import { ZoomButtons } from './PlanButtons.tsx';
import type { KeyChange } from './tools/keyEdit.ts';
import type { ChangeCommand } from './tools/keys.ts';
import { useKeys } from './useKeys.ts';
import { type Ground, usePointers } from './usePointers.ts';

interface Props {
  /** The drawing's own name. */
  readonly name: string;
  /** Id of the text that says how it is used. */
  readonly described: string;
  readonly ground: Ground;
  /** What a key that moves something means here. */
  readonly framed: (command: ChangeCommand) => KeyChange;
}

/** One surface for every finger and key on a drawing: what they mean is found from the drawing's geometry. */
export function TouchSurface({ name, described, ground, framed }: Props) {
  const touch = useRef<HTMLDivElement>(null);
  const { controls } = ground;
  const { takeBack, ...pointers } = usePointers(touch, ground);
  const keys = useKeys({ controls, takeBack, framed });
  return (
    <>
      <div
        ref={touch}
        className="plan-touch"
        role="application"
        aria-label={name}
        aria-describedby={described}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application is interactive; its keys are described to those who hear it.
        tabIndex={0}
        {...pointers}
        {...keys}
      />
      <ZoomButtons controls={controls} />
    </>
  );
}
