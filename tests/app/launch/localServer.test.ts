import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { portFrom, serveFolder } from '../../../src/app/launch/localServer.mjs';

const top = mkdtempSync(join(tmpdir(), 'strokespace-server-'));
const folder = join(top, 'site');
let server: Awaited<ReturnType<typeof serveFolder>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(top, 'secret.txt'), 'not served');
  writeFileSync(join(folder, 'index.html'), 'the page');
  writeFileSync(join(folder, 'manifest.webmanifest'), '{}');
  writeFileSync(join(folder, 'assets', 'a b.js'), 'code');
  server = await serveFolder(folder, 0);
});
afterAll(() => {
  server.close();
  rmSync(top, { recursive: true });
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

/** Asks with the path exactly as written; `fetch` would tidy it first. */
function ask(path: string, method = 'GET'): Promise<Answer> {
  const { port } = new URL(server.address);
  return new Promise((done, fail) => {
    request({ host: 'localhost', port, path, method }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        text += part;
      });
      response.on('end', () =>
        done({ status: response.statusCode, headers: response.headers, text }),
      );
    })
      .on('error', fail)
      .end();
  });
}

describe('what a path stands for', () => {
  test.each(['/', '/index.html', '/layouts/some-id', '/layouts/some-id/?view=side', '/assets'])(
    '%s is a screen and gets the page',
    async (path) => {
      const { status, text, headers } = await ask(path);
      expect([status, text]).toEqual([200, 'the page']);
      expect(headers['content-type']).toBe('text/html; charset=utf-8');
      expect(headers['cache-control']).toBe('no-cache');
    },
  );

  test('a file is found by its encoded name, and one that carries its hash may be kept for good', async () => {
    const { status, text, headers } = await ask('/assets/a%20b.js');
    expect([status, text]).toEqual([200, 'code']);
    expect(headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect(headers['cache-control']).toBe('public, max-age=31536000, immutable');
  });

  test('the manifest has its own type', async () => {
    const { headers } = await ask('/manifest.webmanifest');
    expect(headers['content-type']).toBe('application/manifest+json; charset=utf-8');
  });

  test('a missing file is missing, not the page', async () => {
    expect((await ask('/assets/old-chunk.js')).status).toBe(404);
  });

  test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/%E0%A4%A', '/a%00b'])(
    '%s is refused',
    async (path) => {
      const { status, text } = await ask(path);
      expect([status, text]).toEqual([400, '']);
    },
  );

  test('nothing but reading is allowed, and HEAD has no body', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    const { status, text, headers } = await ask('/', 'HEAD');
    expect([status, text, headers['content-length']]).toEqual([200, '', '8']);
  });

  test.each(['/', '/manifest.webmanifest', '/none.js', '/%2e%2e/secret.txt'])(
    '%s is answered with the content policy',
    async (path) => {
      const { headers } = await ask(path);
      expect(headers['content-security-policy']).toContain("default-src 'self'");
      expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
    },
  );
});

test('a taken port is left alone and the next free one is used', async () => {
  const taken = Number(new URL(server.address).port);
  const second = await serveFolder(folder, taken);
  expect(Number(new URL(second.address).port)).toBeGreaterThan(taken);
  second.close();
});

test('the port comes from PORT, 4173 without it', () => {
  expect([portFrom(undefined), portFrom(''), portFrom('8080'), portFrom('0')]).toEqual([
    4173, 4173, 8080, 0,
  ]);
  for (const wrong of ['http', '-1', '65536', '80.5']) {
    expect(() => portFrom(wrong)).toThrow(`not "${wrong}"`);
  }
});
