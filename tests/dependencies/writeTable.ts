/** Writes the table of dependencies in DEVELOPERS.md anew: `npm run dependencies`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withTable } from './dependencyTable';

const file = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url));
writeFileSync(file, withTable(readFileSync(file, 'utf8')));
