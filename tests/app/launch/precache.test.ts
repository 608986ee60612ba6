import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { stampFolder, workerCodeOf } from '../../../src/app/launch/precache.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'strokespace-precache-'));
  mkdirSync(join(folder, 'icons'));
  write('index.html', '<head><meta name="version" content=""></head>');
  write('icons/a mark.svg', '<svg/>');
});
afterEach(() => rmSync(folder, { recursive: true }));

const write = (path: string, text: string) => writeFileSync(join(folder, path), text);
const read = (path: string) => readFileSync(join(folder, path), 'utf8');
const integrity = (path: string) =>
  `sha256-${createHash('sha256').update(read(path)).digest('base64')}`;

test('every file is listed with the hash of its bytes, the page as the top of the site', () => {
  const { version, files } = stampFolder(folder, 'work();');
  expect(read('index.html')).toContain(`content="${version}"`);
  expect(files).toEqual([
    { address: '/icons/a%20mark.svg', integrity: integrity('icons/a mark.svg') },
    { address: '/', integrity: integrity('index.html') },
  ]);
  expect(read('serviceWorker.js')).toBe(
    `self.PRECACHE = ${JSON.stringify({ version, files })};\nwork();`,
  );
  expect(workerCodeOf(folder)).toBe('work();');
});

test('the same files give the same version, however often the folder is stamped', () => {
  const first = stampFolder(folder, 'work();');
  expect(stampFolder(folder, 'work();')).toEqual(first);
});

test('any change gives another version: a file, its name, the page, the worker', () => {
  const versions = new Set([stampFolder(folder, 'work();').version]);
  versions.add(stampFolder(folder, 'workOtherwise();').version);
  write('icons/a mark.svg', '<svg></svg>');
  versions.add(stampFolder(folder, 'work();').version);
  rmSync(join(folder, 'icons', 'a mark.svg'));
  write('icons/b.svg', '<svg></svg>');
  versions.add(stampFolder(folder, 'work();').version);
  write('index.html', '<head><meta name="version" content=""><title>x</title></head>');
  versions.add(stampFolder(folder, 'work();').version);
  expect(versions.size).toBe(5);
});

test('a page without a place for the version is refused', () => {
  write('index.html', '<head></head>');
  expect(() => stampFolder(folder, 'work();')).toThrow('index.html must hold <meta name="version"');
});
