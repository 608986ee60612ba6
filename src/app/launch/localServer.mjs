import { readFileSync } from 'node:fs';
import { createStaticServer } from './staticServer.mjs';

const firstPort = 4173;
const portsTried = 50;

/**
 * Serves a folder on this machine alone, on both of its own addresses, so that `localhost` means this server whichever a
 * browser tries first.
 *
 * @param {string} folder Folder of built files.
 * @param {number} wantedPort The port to use, or 0 for any; the next ones are tried when it is taken.
 * @returns {Promise<{ address: string, close: () => void }>}
 * @throws {Error} When no port is free.
 */
export async function serveFolder(folder, wantedPort) {
  for (let port = wantedPort; port < Math.min(wantedPort + portsTried, 65536); port += 1) {
    const first = createStaticServer(folder);
    if (!(await listen(first, '127.0.0.1', port))) continue;
    const bound = first.address();
    const boundPort = typeof bound === 'object' && bound !== null ? bound.port : port;
    const second = createStaticServer(folder);
    if (await listen(second, '::1', boundPort)) {
      const close = () => {
        for (const server of [first, second]) {
          server.close();
          server.closeAllConnections();
        }
      };
      return { address: `http://localhost:${boundPort}/`, close };
    }
    first.close();
  }
  throw new Error(
    `No free port from ${wantedPort} on; name another, for instance PORT=8080 npm start`,
  );
}

/**
 * @param {import('node:http').Server} server
 * @param {string} host
 * @param {number} port
 * @returns {Promise<boolean>} False when the port is taken; true also where the machine has no such address at all.
 */
function listen(server, host, port) {
  return new Promise((done, fail) => {
    server.once('error', (error) => {
      const code = 'code' in error ? error.code : undefined;
      if (code === 'EADDRINUSE') done(false);
      else if (code === 'EADDRNOTAVAIL' || code === 'EAFNOSUPPORT') done(true);
      else fail(error);
    });
    server.listen(port, host, () => done(true));
  });
}

/**
 * @param {string | undefined} text The PORT of the environment.
 * @returns {number}
 * @throws {Error} When it is no port number.
 */
export function portFrom(text) {
  if (text === undefined || text === '') return firstPort;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Error(`PORT must be a whole number from 0 to 65535, not "${text}"`);
  }
  return port;
}

/**
 * Ends this process once the one that started it is gone, so that no server is left behind on the port.
 *
 * npm and Playwright start it through a shell (`sh -c`) that outlives them, so such a shell's own parent is watched too,
 * where the system shows it.
 */
export function endWithParent() {
  const parent = process.ppid;
  const starter = isShellCommand(parent) ? parentOf(parent) : undefined;
  setInterval(() => {
    const starterGone = starter !== undefined && parentOf(parent) !== starter;
    if (process.ppid !== parent || starterGone) process.exit(0);
  }, 500).unref();
}

/** @param {number} pid */
const isShellCommand = (pid) => processFile(pid, 'cmdline')?.split('\0')[1] === '-c';

/**
 * @param {number} pid
 * @returns {number | undefined} Undefined where there is no /proc.
 */
function parentOf(pid) {
  // "pid (name) state ppid ..."; the name may hold blanks and brackets of its own.
  const fields = processFile(pid, 'stat')?.split(')').at(-1)?.trim().split(' ');
  return fields === undefined ? undefined : Number(fields[1]);
}

/**
 * @param {number} pid
 * @param {string} name
 */
function processFile(pid, name) {
  try {
    return readFileSync(`/proc/${pid}/${name}`, 'utf8');
  } catch {
    return undefined;
  }
}
