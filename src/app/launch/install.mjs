import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The packages of the lock file that are not installed as it says.
 *
 * npm keeps a record of what it put into node_modules; it writes that record last, so an install that
 * was cut short counts as missing. Optional packages are left out: most are for other machines.
 *
 * @param {string} root Folder of package.json.
 * @returns {string[]} Paths as in the lock file, empty when nothing is missing.
 */
export function missingPackages(root) {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const recordFile = join(root, 'node_modules', '.package-lock.json');
  const installed = existsSync(recordFile) ? packagesIn(recordFile) : {};
  return Object.entries(wanted)
    .filter(([path, entry]) => path !== '' && entry.optional !== true)
    .filter(([path, entry]) => {
      const found = installed[path];
      return found?.version !== entry.version || found?.integrity !== entry.integrity;
    })
    .map(([path]) => path);
}

/**
 * Runs `npm ci` unless everything in the lock file is installed.
 *
 * Development packages are asked for by name, because NODE_ENV=production leaves them out.
 *
 * @param {string} root Folder of package.json.
 * @throws {Error} When npm can't be run or fails.
 */
export function installMissingPackages(root) {
  const missing = missingPackages(root);
  if (missing.length === 0) return;
  process.stdout.write(
    `Installing packages (${missing.length} missing or of another version) ...\n`,
  );
  const { command, before, shell } = npmCommand();
  const result = spawnSync(command, [...before, 'ci', '--include=dev', '--no-fund', '--no-audit'], {
    cwd: root,
    stdio: 'inherit',
    shell,
  });
  if (result.error !== undefined)
    throw new Error(`npm could not be started: ${result.error.message}`);
  if (result.status !== 0) {
    throw new Error(
      `npm ci ended with code ${result.status}; its own message is above. The network or an npm cache is needed once.`,
    );
  }
}

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean }} LockEntry
 * @param {string} file
 * @returns {Record<string, LockEntry>}
 */
function packagesIn(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages;
}

/** The npm that started this script, or the one on the path. */
function npmCommand() {
  const started = process.env.npm_execpath;
  if (started?.endsWith('npm-cli.js') === true) {
    return { command: process.execPath, before: [started], shell: false };
  }
  return { command: 'npm', before: [], shell: process.platform === 'win32' };
}
