import { benchmarkDrags, dragTable } from './browser/dragBench.ts';

/** `npm run bench:browser`, with `-- --json` for one JSON object, with `-- --some` for fewer items. */
const result = await benchmarkDrags(process.argv.includes('--some'));
const text = process.argv.includes('--json') ? JSON.stringify(result, null, 2) : dragTable(result);
process.stdout.write(`${text}\n`);
