import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Builds the app into `dist`. The old `dist` goes first, so that a build that fails can't leave a stale app to be served.
 *
 * @param {string} root Folder of package.json.
 * @returns {boolean} Whether the build succeeded.
 */
export function buildApp(root) {
  rmSync(join(root, 'dist'), { recursive: true, force: true });
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const result = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, NODE_ENV: 'production' },
  });
  return result.status === 0;
}
