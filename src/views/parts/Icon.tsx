/** Our own line icons on a 24 px square. They never carry meaning alone: a word or a label stands beside them. */
const paths = {
  back: 'M15 5l-7 7 7 7',
  forward: 'M9 5l7 7-7 7',
  down: 'M5 9l7 7 7-7',
  undo: 'M8 5L4 9l4 4M4 9h9a6 6 0 0 1 0 12h-3',
  redo: 'M16 5l4 4-4 4M20 9h-9a6 6 0 0 0 0 12h3',
  plus: 'M12 5v14M5 12h14',
  minus: 'M5 12h14',
  close: 'M6 6l12 12M18 6L6 18',
  copy: 'M9 9h11v11H9zM15 9V4H4v11h5',
  mirror: 'M12 3v18M9 7L3 17h6zM15 7l6 10h-6z',
  bin: 'M4 7h16M9 7V4h6v3M6 7l1 13h10l1-13M10 11v5M14 11v5',
  ask: 'M4 4h16v12H11l-5 5v-5H4zM8 8.5h8M8 12h5',
  pen: 'M4 20l1-5L16 4l4 4L9 19zM13 7l4 4',
  save: 'M12 4v11M7 11l5 5 5-5M4 20h16',
  load: 'M12 16V5M7 9l5-5 5 5M4 20h16',
  light:
    'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM12 2v3M12 19v3M2 12h3M19 12h3M5 5l2 2M17 17l2 2M19 5l-2 2M7 17l-2 2',
  dark: 'M20 14.5A8.5 8.5 0 1 1 9.5 4a7 7 0 0 0 10.5 10.5z',
  grip: 'M4 8h16M4 12h16M4 16h16',
  more: 'M5 12h.01M12 12h.01M19 12h.01',
  check: 'M5 12.5l4.5 4.5L19 7',
  alert: 'M12 4L2.5 20h19zM12 10v5M12 17.5v.01',
  star: 'M12 3.5l2.6 5.6 6.1.7-4.5 4.2 1.2 6-5.4-3-5.4 3 1.2-6L3.3 9.8l6.1-.7z',
  box: 'M4 4h16v4H4zM5.5 8v12h13V8M10 12h4',
  tag: 'M3 12V4h8l9 9-8 8zM7.5 8.5v.01',
  target: 'M12 5a7 7 0 1 0 0 14 7 7 0 0 0 0-14zM12 2v6M12 16v6M2 12h6M16 12h6',
} as const;

export type IconName = keyof typeof paths;

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={paths[name]} />
    </svg>
  );
}
