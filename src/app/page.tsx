import { createRoot } from 'react-dom/client';
import { watchForUpdate } from './updates.ts';

const place = document.getElementById('page');
if (place === null) throw new Error('index.html must hold an element with the id "page"');
createRoot(place).render(<h1>Strokespace</h1>);
void watchForUpdate(() => {});
