import { writeFileSync } from 'node:fs';
import { layoutJsonSchema } from '../../src/layout/schema/jsonSchema.ts';

// Writes public/layout.schema.json from the one validator. Run from the project's folder.
const file = 'public/layout.schema.json';
writeFileSync(file, `${JSON.stringify(layoutJsonSchema(), null, 2)}\n`);
console.log(`Wrote ${file}.`);
