import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { Icon } from './Icon.tsx';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** A modal dialog: the browser keeps the focus inside and gives it back to where it was. Escape closes. */
export function Dialog({ title, onClose, children, wide = false }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  // In the layout phase, so that it is closed while it is still on the page: only then is the focus given back.
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
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
