import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { tooLong } from '../fields/TextField.tsx';
import { Dialog } from './Dialog.tsx';
import { FormFoot } from './FormFoot.tsx';

/** As long as a name may be, of a layout as of a point of its history. */
const MOST = 80;

interface NameDialogProps {
  readonly title: string;
  readonly name: string;
  /** Of the field; `Name` without. */
  readonly label?: string;
  /** The most characters; as many as a name may have without. */
  readonly most?: number;
  /** Of the button that takes the name over. */
  readonly take: string;
  /** Is no name an answer too? */
  readonly mayBeEmpty?: boolean;
  readonly placeholder?: string;
  /** What stands below the field. */
  readonly children?: ReactNode;
  readonly onName: (name: string) => void;
  readonly onClose: () => void;
}

/** Asks for a name; nothing of one that is too long is cut off. */
export function NameDialog({ title, name, take, onName, onClose, ...props }: NameDialogProps) {
  const { mayBeEmpty = false, label = 'Name', most = MOST, placeholder, children } = props;
  const id = useId();
  const [text, setText] = useState(name);
  const [problem, setProblem] = useState('');
  const field = useRef<HTMLInputElement>(null);
  // After the dialog is shown: the browser puts the focus on its first button.
  useEffect(() => {
    field.current?.focus();
    field.current?.select();
  }, []);
  const wanted = text.trim();
  const problemOf = (name: string): string =>
    name.length > most
      ? tooLong(name, most)
      : name === '' && !mayBeEmpty
        ? `A name is needed: 1 to ${most} characters.`
        : '';
  return (
    <Dialog title={title} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const found = problemOf(wanted);
          setProblem(found);
          if (found === '') onName(wanted);
        }}
      >
        <div className="field">
          <label className="field-label" htmlFor={id}>
            {label}
          </label>
          <input
            ref={field}
            id={id}
            className="text-input"
            value={text}
            placeholder={placeholder}
            onFocus={(event) => event.target.select()}
            onChange={(event) => {
              setText(event.target.value);
              const name = event.target.value.trim();
              setProblem(name.length > most ? problemOf(name) : '');
            }}
            aria-invalid={problem !== '' || undefined}
            aria-describedby={problem ? `${id}-problem` : undefined}
          />
          <FieldProblem id={`${id}-problem`} text={problem} />
          {children}
        </div>
        <FormFoot take={take} onClose={onClose} />
      </form>
    </Dialog>
  );
}
