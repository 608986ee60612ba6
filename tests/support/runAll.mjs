// `npm test`: installs what is missing, checks everything and closes with one line, `N passed, N failed`.
// With names of steps behind it, only those: node tests/support/runAll.mjs unit
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildApp } from '../../src/app/launch/build.mjs';
import { installMissingPackages } from '../../src/app/launch/install.mjs';
import { findOrInstallChromium } from './chromium.mjs';
import { addUp, closingLine, countPlaywright, countVitest } from './closingLine.mjs';

/** @typedef {import('./closingLine.mjs').Outcome} Outcome */

const root = fileURLToPath(new URL('../..', import.meta.url));
const reports = join(root, 'test-results');
const packageFile = (/** @type {string[]} */ ...parts) => join(root, 'node_modules', ...parts);
const biome = packageFile('@biomejs', 'biome', 'bin', 'biome');
const minute = 60_000;

/** @type {Record<string, () => Outcome | Promise<Outcome>>} */
const steps = {
  format: () => check(biome, ['format', '.']),
  lint: () => check(biome, ['lint', '--error-on-warnings', '.']),
  types: () => {
    const projects = [
      'tsconfig.json',
      'src/tsconfig.pure.json',
      'src/app/tsconfig.serviceWorker.json',
    ];
    const tsc = packageFile('typescript', 'bin', 'tsc');
    const outcomes = projects.map((project) => check(tsc, ['-p', project]));
    return { broke: outcomes.some(({ broke }) => broke), tests: false };
  },
  unit: runUnitTests,
  build: () => ({ broke: !buildApp(root), tests: false }),
  browser: runBrowserTests,
};

/**
 * @param {string} script
 * @param {string[]} words
 * @param {Record<string, string>} env
 * @returns {boolean} Whether it ended well.
 */
function node(script, words, env = {}) {
  const result = spawnSync(process.execPath, [script, ...words], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    timeout: 66 * minute,
  });
  if (result.error !== undefined) process.stdout.write(`${result.error.message}\n`);
  return result.status === 0;
}

/**
 * @param {string} script
 * @param {string[]} words
 * @returns {Outcome}
 */
const check = (script, words) => ({ broke: !node(script, words), tests: false });

/** @returns {Outcome} */
function runUnitTests() {
  const file = join(reports, 'unit.json');
  rmSync(file, { force: true });
  const words = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const well = node(packageFile('vitest', 'vitest.mjs'), words, { NODE_ENV: 'test' });
  return { broke: !well, tests: true, counts: readCounts(file, countVitest) };
}

/** @returns {Promise<Outcome>} */
async function runBrowserTests() {
  const file = join(reports, 'browser.json');
  rmSync(file, { force: true });
  const env = {
    CHROMIUM_PATH: await findOrInstallChromium(root),
    E2E_PORT: String(await freePort()),
    PLAYWRIGHT_JSON_OUTPUT_FILE: file,
  };
  const words = ['test', '-c', join('e2e', 'playwright.config.ts'), '--reporter=list,json'];
  const well = node(packageFile('@playwright', 'test', 'cli.js'), words, env);
  return { broke: !well, tests: true, counts: readCounts(file, countPlaywright) };
}

/**
 * @template Report
 * @param {string} file
 * @param {(report: Report) => import('./closingLine.mjs').Counts} count
 */
function readCounts(file, count) {
  try {
    return count(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return undefined;
  }
}

/** @returns {Promise<number>} A port that nothing on this machine listens on. */
function freePort() {
  return new Promise((done, fail) => {
    const probe = createServer();
    probe.once('error', fail);
    probe.listen(0, '127.0.0.1', () => {
      const bound = probe.address();
      const port = typeof bound === 'object' && bound !== null ? bound.port : 0;
      probe.close(() => done(port));
    });
  });
}

/**
 * @param {string[]} names
 * @returns {Promise<Outcome[]>}
 */
async function runSteps(names) {
  installMissingPackages(root);
  /** @type {Outcome[]} */
  const outcomes = [];
  let built = true;
  for (const name of names) {
    process.stdout.write(`\n== ${name} ==\n`);
    if (name === 'browser' && !built) {
      process.stdout.write('Not run, because the build failed.\n');
      continue;
    }
    const started = performance.now();
    const outcome = await runStep(name);
    if (name === 'build') built = !outcome.broke;
    outcomes.push(outcome);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    process.stdout.write(`${name}: ${outcome.broke ? 'FAILED' : 'passed'} in ${seconds} s\n`);
  }
  return outcomes;
}

/** @param {string} name */
async function runStep(name) {
  const step = steps[name];
  if (step === undefined)
    throw new Error(`There is no step ${name}; expected ${Object.keys(steps).join(', ')}`);
  try {
    return await step();
  } catch (error) {
    process.stdout.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return { broke: true, tests: false };
  }
}

/** @type {Outcome[]} */
let outcomes;
try {
  const named = process.argv.slice(2);
  outcomes = await runSteps(named.length === 0 ? Object.keys(steps) : named);
} catch (error) {
  process.stdout.write(`${error instanceof Error ? error.message : String(error)}\n`);
  outcomes = [{ broke: true, tests: false }];
}
const total = addUp(outcomes);
process.stdout.write(`\n${closingLine(total)}\n`);
process.exitCode = total.failed === 0 ? 0 : 1;
