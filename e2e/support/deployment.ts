import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serveFolder } from '../../src/app/launch/localServer.mjs';
import { stampFolder, workerCodeOf } from '../../src/app/launch/precache.ts';

const built = fileURLToPath(new URL('../../dist', import.meta.url));

/** A copy of the built app on a server of its own, which can be changed to a newer version, broken and switched off. */
export interface Deployment {
  /** Stays the same while the server is off and on. */
  readonly address: string;
  /** Puts a copy of the built app in place, with some files changed, and stamps it as a version of its own. */
  deploy(changes?: Readonly<Record<string, string>>): string;
  /** Path of one deployed file, to break it after the stamp. */
  file(path: string): string;
  switchOff(): void;
  switchOn(): Promise<void>;
}

/**
 * @param folder Where the copy goes, for instance `testInfo.outputPath('site')`.
 * @param changes Text of files to add or replace, by path in the built folder.
 */
export async function startDeployment(
  folder: string,
  changes: Readonly<Record<string, string>> = {},
): Promise<Deployment> {
  const file = (path: string) => join(folder, path);
  const deploy = (next: Readonly<Record<string, string>> = {}) => {
    rmSync(folder, { recursive: true, force: true });
    cpSync(built, folder, { recursive: true });
    for (const [path, text] of Object.entries(next)) {
      mkdirSync(dirname(file(path)), { recursive: true });
      writeFileSync(file(path), text);
    }
    return stampFolder(folder, workerCodeOf(folder)).version;
  };
  deploy(changes);
  let server = await serveFolder(folder, 0);
  const { address } = server;
  const port = Number(new URL(address).port);
  return {
    address,
    deploy,
    file,
    switchOff: () => server.close(),
    switchOn: async () => {
      server = await serveFolder(folder, port);
      if (server.address !== address) throw new Error(`port ${port} was taken meanwhile`);
    },
  };
}

/** The page of the built app with another script and no styles, for tests that need a page of their own. */
export const pageWithScript = (address: string): string =>
  readFileSync(join(built, 'index.html'), 'utf8')
    .replace(/<link rel="(stylesheet|modulepreload)"[^>]*>/g, '')
    .replace(
      /<script type="module"[^>]*><\/script>/,
      `<script type="module" src="${address}"></script>`,
    );
