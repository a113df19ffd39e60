/** Writes the published schema anew after the records have changed: `node .config/run.mjs tests/bundle/writeSchema.ts`. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { publishedSchema } from '../../src/bundle/publishedSchema';

const file = fileURLToPath(new URL('../../src/bundle/journal.schema.json', import.meta.url));
writeFileSync(file, `${JSON.stringify(publishedSchema(), null, 2)}\n`);
