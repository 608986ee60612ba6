// Serves what is built, without building: node src/app/launch/serve.mjs [FOLDER]; the port from PORT.
import { fileURLToPath } from 'node:url';
import { endWithParent, portFrom, serveFolder } from './localServer.mjs';

endWithParent();
const folder = process.argv[2] ?? fileURLToPath(new URL('../../../dist', import.meta.url));
const { address } = await serveFolder(folder, portFrom(process.env.PORT));
process.stdout.write(`${address}\n`);
