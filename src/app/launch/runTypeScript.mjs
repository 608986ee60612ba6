// Runs a TypeScript entry without a browser: node src/app/launch/runTypeScript.mjs ENTRY [ARGUMENTS]
// Node 20 can't read TypeScript, so the entry is bundled with Vite into a cache, again only when a source has changed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, extname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installMissingPackages } from './install.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const cache = join(root, 'node_modules', '.cache', 'strokespace');

/** @param {string} entry Absolute path of the entry. */
function sourceHash(entry) {
  const hash = createHash('sha256')
    .update(entry)
    .update(readFileSync(entry))
    .update(readFileSync(join(root, 'package-lock.json')));
  for (const folder of ['src', join('tests', 'bench')]) {
    for (const file of filesUnder(join(root, folder))) hash.update(file).update(readFileSync(file));
  }
  return hash.digest('hex').slice(0, 16);
}

/**
 * @param {string} folder
 * @returns {string[]} Files in a fixed order; none when there is no such folder.
 */
function filesUnder(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile())
    .map((found) => join(found.parentPath, found.name))
    .sort();
}

/**
 * @param {string} entry Absolute path of the entry.
 * @returns {Promise<string>} Absolute path of the bundle.
 */
async function bundle(entry) {
  const name = basename(entry, extname(entry));
  const folder = join(cache, name, sourceHash(entry));
  const file = join(folder, `${name}.mjs`);
  if (existsSync(file)) return file;
  rmSync(join(cache, name), { recursive: true, force: true });
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      ssr: entry,
      outDir: folder,
      minify: false,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  });
  return file;
}

/** npm runs scripts at the top of the project; a file is named from where the user stands. */
function folderOfCaller() {
  const { INIT_CWD: asked, npm_lifecycle_script: script } = process.env;
  const byNpm = script?.includes('runTypeScript.mjs') === true;
  return byNpm && asked !== undefined ? asked : process.cwd();
}

try {
  const [given, ...rest] = process.argv.slice(2);
  if (given === undefined) throw new Error('Name the TypeScript file to run.');
  const entry = resolve(root, given);
  if (!existsSync(entry)) throw new Error(`There is no ${given}.`);
  installMissingPackages(root);
  const file = await bundle(entry);
  const result = spawnSync(process.execPath, [file, ...rest], {
    stdio: 'inherit',
    cwd: folderOfCaller(),
  });
  if (result.error !== undefined) throw result.error;
  process.exitCode = result.status ?? 2;
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
}
