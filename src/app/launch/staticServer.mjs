import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pipeline } from 'node:stream';
import { securityHeaders } from './securityHeaders.mjs';

/** @type {Record<string, string>} */
const mediaTypes = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

const page = 'index.html';

/**
 * What a request path stands for.
 *
 * A path whose last part has no dot is a screen of the app, so the page answers it; a missing file stays missing.
 *
 * @param {string} folder Folder that is served.
 * @param {string} path Path of the address, still percent-encoded, without the query.
 * @returns {Promise<{ status: 200, file: string, size: number } | { status: 400 | 404 }>}
 */
export async function resolveRequest(folder, path) {
  let decoded;
  try {
    decoded = decodeURIComponent(path);
  } catch {
    return { status: 400 };
  }
  if (decoded.includes('\0')) return { status: 400 };
  const top = resolve(folder);
  const file = resolve(top, `.${decoded}`);
  if (file !== top && !file.startsWith(top + sep)) return { status: 400 };
  const size = await sizeOf(file);
  if (size !== undefined) return { status: 200, file, size };
  if (extname(decoded) !== '') return { status: 404 };
  const pageFile = join(top, page);
  const pageSize = await sizeOf(pageFile);
  return pageSize === undefined ? { status: 404 } : { status: 200, file: pageFile, size: pageSize };
}

/**
 * @param {string} file
 * @returns {Promise<number | undefined>} Length in bytes; undefined when it is not a file.
 */
async function sizeOf(file) {
  try {
    const found = await stat(file);
    return found.isFile() ? found.size : undefined;
  } catch {
    return undefined;
  }
}

/**
 * A server for one folder of built files; it only reads.
 *
 * Files under /assets/ carry the hash of their content in their name and never change; everything else is asked for again
 * each time.
 *
 * @param {string} folder Folder that is served.
 */
export function createStaticServer(folder) {
  return createServer((request, response) => {
    answer(folder, request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500, securityHeaders);
      response.end();
    });
  });
}

/**
 * @param {string} folder
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(folder, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { ...securityHeaders, allow: 'GET, HEAD' }).end();
    return;
  }
  const path = (request.url ?? '/').split(/[?#]/, 1)[0] ?? '/';
  const found = await resolveRequest(folder, path);
  if (found.status !== 200) {
    response.writeHead(found.status, { ...securityHeaders, 'cache-control': 'no-cache' }).end();
    return;
  }
  response.writeHead(200, {
    ...securityHeaders,
    'cache-control': path.startsWith('/assets/')
      ? 'public, max-age=31536000, immutable'
      : 'no-cache',
    'content-length': found.size,
    'content-type': mediaTypes[extname(found.file)] ?? 'application/octet-stream',
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  pipeline(createReadStream(found.file), response, () => response.destroy());
}
