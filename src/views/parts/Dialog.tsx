import { type ReactNode, useContext, useEffect, useId, useLayoutEffect, useRef } from 'react';
import { BackStepsContext } from './backSteps.ts';
import { Icon } from './Icon.tsx';
import { useStable } from './useStable.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** A modal dialog: the browser keeps the focus inside and gives it back to where it was. Escape and Back close it. */
export function Dialog({ title, onClose, children, wide = false }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  // In the layout phase, so that it is closed while it is still on the page: only then is the focus given back.
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  const steps = useContext(BackStepsContext);
  const close = useStable(onClose);
  useEffect(() => steps?.over(() => close()), [steps, close]);
  return (
    <dialog
      ref={dialog}
      className={wide ? 'dialog wide' : 'dialog'}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <header className="dialog-head">
        <h2 id={heading}>{title}</h2>
        <button type="button" className="quiet square" onClick={onClose} aria-label="Close">
          <Icon name="close" />
        </button>
      </header>
      {children}
    </dialog>
  );
}
