// `npm start`: installs what is missing, builds, serves the app on this machine and prints its address.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildApp } from './build.mjs';
import { installMissingPackages } from './install.mjs';
import { endWithParent, portFrom, serveFolder } from './localServer.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));

try {
  endWithParent();
  const port = portFrom(process.env.PORT);
  installMissingPackages(root);
  process.stdout.write('Building ...\n');
  if (!buildApp(root)) throw new Error('The build failed; the reason is above.');
  const { address } = await serveFolder(join(root, 'dist'), port);
  process.stdout.write(`Strokespace is at ${address}\nPress Ctrl+C to stop it.\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
