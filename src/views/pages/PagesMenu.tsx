import { useState } from 'react';
import { showPage } from '../../session/session.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';
import { pagesInOrder } from './pages.ts';

/** The button that lists the pages of the open layout. */
export function PagesMenu() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="pages-button"
        aria-label="Pages"
        onClick={() => setOpen(true)}
      >
        <Icon name="more" />
        <span className="sign-text">Pages</span>
      </button>
      {isOpen && (
        <Dialog title="Pages of this layout" onClose={() => setOpen(false)}>
          <ul className="pages-list">
            {pagesInOrder.map(({ name, title, about }) => (
              <li key={name}>
                <button type="button" className="page-choice" onClick={() => showPage(name)}>
                  <span className="page-choice-title">{title}</span>
                  <span className="page-choice-about">{about}</span>
                </button>
              </li>
            ))}
          </ul>
        </Dialog>
      )}
    </>
  );
}
