import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const styles = fileURLToPath(new URL('../../../src/views/styles', import.meta.url));

test('which window has no room for bar, plan and panel together is written once', () => {
  const sheets = readdirSync(styles).filter((name) => name.endsWith('.css'));
  expect(sheets).toContain('workspace.css');
  const written = sheets.flatMap((name) =>
    [...readFileSync(join(styles, name), 'utf8').matchAll(/max-height: 599px/g)].map(() => name),
  );
  expect(written).toEqual(['workspace.css']);
});
