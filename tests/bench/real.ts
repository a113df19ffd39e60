/**
 * Runs the measurements on real photographs: `npm run bench:real -- DATA_FOLDER`. The folder is described by its
 * own README.md and is no part of this project. The exit status says whether every target is met.
 */
import { openEngines } from '../../src/vision/openEngines';
import { flawVerdicts } from './realFlaws';
import { pebbleVerdicts } from './realPebbles';
import { photometricVerdicts } from './realPhotometric';
import { slantedEdgeRows } from './realSlantedEdge';
import type { Verdict } from './realVerdict';

const [dataFolder] = process.argv.slice(2);
if (!dataFolder) {
  console.error('Name the folder of real photographs: npm run bench:real -- FOLDER');
  process.exit(2);
}
const engines = await openEngines();
const edge = slantedEdgeRows(dataFolder).map(
  ({ what, measured, expected, tolerance, met }): Verdict => ({
    what,
    measured: measured.toFixed(4),
    target: `${expected} ± ${tolerance.toFixed(4)}`,
    met,
  }),
);
show('Slanted edge', edge);
const photometric = await photometricVerdicts(dataFolder);
show('Seven objects under six lights', photometric);
const pebbles = await pebbleVerdicts(dataFolder, engines);
show('Pebbles', pebbles);
const flaws = await flawVerdicts(dataFolder, engines);
show('Flaws on ground tiles and cracked plates', flaws);
const verdicts = [...edge, ...photometric, ...pebbles, ...flaws];
const unmet = verdicts.filter(({ met }) => !met).length;
console.log(`\n${verdicts.length - unmet} of ${verdicts.length} targets met`);
process.exitCode = unmet > 0 ? 1 : 0;

function show(title: string, rows: readonly Verdict[]): void {
  console.log(`\n${title}`);
  for (const { what, measured, target, met } of rows) {
    console.log(`  ${met ? 'met    ' : 'NOT MET'} ${what}: ${measured} (target ${target})`);
  }
}
