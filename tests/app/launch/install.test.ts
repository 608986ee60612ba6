import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { missingPackages } from '../../../src/app/launch/install.mjs';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'strokespace-install-'));
  mkdirSync(join(root, 'node_modules'));
});
afterEach(() => rmSync(root, { recursive: true }));

const write = (path: string, packages: Readonly<Record<string, object>>) =>
  writeFileSync(join(root, path), JSON.stringify({ packages }));

const lock = (packages: Readonly<Record<string, object>>) =>
  write('package-lock.json', { '': { name: 'project' }, ...packages });
const installed = (packages: Readonly<Record<string, object>>) =>
  write('node_modules/.package-lock.json', packages);

const one = { version: '1.0.0', integrity: 'sha512-one' };
const two = { version: '2.0.0', integrity: 'sha512-two', dev: true };

test('nothing is missing when npm has recorded every package of the lock file', () => {
  lock({ 'node_modules/one': one, 'node_modules/two': two });
  installed({ 'node_modules/one': one, 'node_modules/two': two });
  expect(missingPackages(root)).toEqual([]);
});

test('all are missing in a fresh clone, and after an install that was cut short', () => {
  lock({ 'node_modules/one': one, 'node_modules/two': two });
  expect(missingPackages(root)).toEqual(['node_modules/one', 'node_modules/two']);
});

test('packages of development are missed, and so are other versions and other contents', () => {
  lock({ 'node_modules/one': one, 'node_modules/two': two });
  installed({ 'node_modules/one': one });
  expect(missingPackages(root)).toEqual(['node_modules/two']);
  installed({ 'node_modules/one': { ...one, version: '1.0.1' }, 'node_modules/two': two });
  expect(missingPackages(root)).toEqual(['node_modules/one']);
  installed({ 'node_modules/one': { ...one, integrity: 'sha512-other' }, 'node_modules/two': two });
  expect(missingPackages(root)).toEqual(['node_modules/one']);
});

test('an optional package, for another machine, is not missed', () => {
  lock({ 'node_modules/one': one, 'node_modules/other': { ...two, optional: true } });
  installed({ 'node_modules/one': one });
  expect(missingPackages(root)).toEqual([]);
});
