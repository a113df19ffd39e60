/** Writes the table of all refusals and warnings in DEVELOPERS.md anew: `npm run docs:notices`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withNotices } from './noticesSection';

const file = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url));
writeFileSync(file, withNotices(readFileSync(file, 'utf8')));
