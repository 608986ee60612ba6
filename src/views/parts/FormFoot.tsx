interface FormFootProps {
  /** Of the button that takes what was typed over. */
  readonly take: string;
  readonly onClose: () => void;
}

/** The foot of a dialog with a form: away without a change, or take it over. */
export const FormFoot = ({ take, onClose }: FormFootProps) => (
  <div className="dialog-foot">
    <button type="button" onClick={onClose}>
      Cancel
    </button>
    <button type="submit" className="primary">
      {take}
    </button>
  </div>
);
