/** Integrates the curves of `glossUnits` anew: `node .config/run.mjs tests/optics/writeGlossCurves.ts`. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { integratedCurves } from './integratedCurves';

const file = fileURLToPath(new URL('../../src/optics/glossCurves.json', import.meta.url));
writeFileSync(file, `${JSON.stringify(integratedCurves(), null, 2)}\n`);
