/** What a room's files may import. */
export interface Room {
  /** Other rooms; a room may always import its own files. */
  readonly rooms: readonly string[];
  /** Packages, by name; `node:` stands for what Node brings. */
  readonly packages: readonly string[];
  /** Runs in a page, a worker and on the command line alike: no DOM, clock, randomness or console. */
  readonly pure: boolean;
}

const pure = (rooms: readonly string[], ...packages: readonly string[]): Room => ({
  rooms,
  packages,
  pure: true,
});
const open = (rooms: readonly string[], ...packages: readonly string[]): Room => ({
  rooms,
  packages,
  pure: false,
});

const rig = ['units', 'geometry', 'layout'];
const engine = [...rig, 'rig'];

/** The rooms of `src/` and the direction of imports between them; the table in DEVELOPERS.md says why. */
export const roomTable: Readonly<Record<string, Room>> = {
  units: pure([]),
  geometry: pure(['units'], 'flatbush', 'robust-predicates'),
  layout: pure(['units', 'geometry'], '@noble/hashes', 'canonicalize', 'immer', 'zod'),
  rig: pure(rig),
  player: pure(engine),
  clearance: pure([...engine, 'player'], 'd3-contour', 'flatbush'),
  cabling: pure(engine, 'flatbush', 'robust-predicates'),
  acoustics: pure(engine),
  patch: pure(['units', 'layout', 'rig']),
  report: pure([...engine, 'player', 'clearance', 'cabling', 'acoustics', 'patch']),
  sheet: pure(
    ['units', 'geometry', 'layout', 'rig', 'report'],
    '@pdf-lib/standard-fonts',
    '@tarikjabiri/dxf',
    'pdf-lib',
  ),
  storage: open(['layout'], 'idb', 'zod', 'fflate', '@noble/hashes'),
  session: open(['units', 'geometry', 'layout', 'report'], 'zustand'),
  editor: open(
    ['units', 'geometry', 'layout', 'rig', 'report', 'session'],
    'konva',
    'react',
    'react-dom',
    'react-konva',
  ),
  // The patch room holds the edits of the input list, the splits and the ticks.
  views: open(
    ['units', 'layout', 'patch', 'report', 'sheet', 'session'],
    'd3-scale',
    'd3-shape',
    'minisearch',
    'react',
    'react-dom',
  ),
  app: open(
    [
      'units',
      'geometry',
      ...['layout', 'rig', 'player', 'clearance', 'cabling', 'acoustics'],
    ].concat(['patch', 'report', 'sheet', 'storage', 'session', 'editor', 'views']),
    'idb',
    'konva',
    'node:',
    'qr',
    'react',
    'react-dom',
    'react-konva',
    'vite',
    'zod',
    'zustand',
    '@vitejs/plugin-react',
  ),
};
