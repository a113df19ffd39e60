/**
 * Writes what is measured on the three sample trays to tests/golden/figures.json:
 * `node .config/run.mjs tests/golden/figures.ts`. Only to be run when a measurement is meant to change, with the change
 * in the commit: tests/analysis/sameFigures.test.ts holds every faster way against it. The first one was written by the
 * program as it was before it was made faster.
 */
import { writeFileSync } from 'node:fs';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import { decodeFile } from '../../src/cli/decodeFile';
import { openEngines } from '../../src/vision/openEngines';
import { reportFigures } from '../helpers/reportFigures';

const engines = await openEngines();
const all: Record<string, unknown> = {};
for (const name of ['coarse-tray', 'mid-tray', 'polished-tray']) {
  const photo = await decodeFile(`sample-images/${name}.jpg`);
  const options = { ballMm: 16, ballAt: null, rig: null };
  all[name] = reportFigures(await analyzePhoto(photo, options, engines, () => {}));
}
const path = new URL('./figures.json', import.meta.url);
writeFileSync(path, `${JSON.stringify(all, null, 1)}\n`);
console.log(`Wrote ${path.pathname}.`);
