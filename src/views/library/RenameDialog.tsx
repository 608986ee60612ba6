import { NameDialog } from '../parts/NameDialog.tsx';

interface RenameDialogProps {
  readonly name: string;
  readonly onRename: (name: string) => void;
  readonly onClose: () => void;
}

/** Asks for a new name of a layout. */
export const RenameDialog = ({ name, onRename, onClose }: RenameDialogProps) => (
  <NameDialog
    title="Rename the layout"
    name={name}
    take="Rename"
    onName={onRename}
    onClose={onClose}
  />
);
