import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/**
 * A Chromium on this machine: the one CHROMIUM_PATH names, one in a usual place, or Playwright's own.
 *
 * @returns {Promise<string | undefined>} Path of the program.
 * @throws {Error} When CHROMIUM_PATH names no file.
 */
export async function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (!existsSync(named))
      throw new Error(`CHROMIUM_PATH must name a Chromium; there is no ${named}`);
    return named;
  }
  const { chromium } = await import('@playwright/test');
  return [...usualPlaces, chromium.executablePath()].find((path) => existsSync(path));
}

/**
 * Finds a Chromium, or installs one: from the system's packages where there is apt-get, else Playwright's download.
 *
 * @param {string} root Folder of package.json.
 * @returns {Promise<string>} Path of the program.
 * @throws {Error} When none could be installed.
 */
export async function findOrInstallChromium(root) {
  const found = await findChromium();
  if (found !== undefined) return found;
  process.stdout.write('Installing Chromium for the browser tests ...\n');
  if (existsSync('/usr/bin/apt-get')) {
    // The first try spares machines with fresh package lists the update.
    if (!aptGet('install', '--no-install-recommends', 'chromium')) {
      aptGet('update');
      aptGet('install', '--no-install-recommends', 'chromium');
    }
  } else {
    const playwright = join(root, 'node_modules', '@playwright', 'test', 'cli.js');
    spawnSync(process.execPath, [playwright, 'install', 'chromium'], { stdio: 'inherit' });
  }
  const installed = await findChromium();
  if (installed === undefined) {
    throw new Error(
      'No Chromium was found and none could be installed. Install one, or name it: CHROMIUM_PATH=/path/to/chromium npm test',
    );
  }
  return installed;
}

/** @param {string[]} rest */
function aptGet(...rest) {
  const words = ['apt-get', '-o', 'DPkg::Lock::Timeout=300', '-y', ...rest];
  const asRoot = process.getuid?.() === 0 ? words : ['sudo', '-n', ...words];
  const [command = 'apt-get', ...before] = asRoot;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, before, { stdio: ['ignore', 'ignore', 'inherit'], env }).status === 0;
}
