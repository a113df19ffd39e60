/**
 * Scores fresh scratches on rendered polished trays: `npm run bench:scratches -- FOLDER… [--verbose]`. Beside each photo,
 * FOLDER/unscratched holds the same tray without its scratches: what a scratch truly shows is the difference of both, and
 * whatever is found in the second is invented. tests/bench/scratch-trays/build-all.sh renders them.
 */
import { basename, dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { FlawReport, PhotoReport } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { contamination } from '../../src/grading/contamination';
import { scratchOrigin } from '../../src/grading/scratchOrigin';
import { openEngines } from '../../src/vision/openEngines';
import { matchLines } from './flawMatch';
import { matchStones } from './matchStones';
import { quantile } from './quantile';
import { shownMm } from './shownScratch';
import { type TrueFlaw, truthsIn } from './truth';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { verbose: { type: 'boolean' } },
});
if (positionals.length === 0) {
  console.error('Name a folder of rendered trays: npm run bench:scratches -- FOLDER');
  process.exit(2);
}

/** A true scratch is asked for when it shows on so much of its length, mm. */
const ASKED_MM = 2;
const SURE = 0.5;

const engines = await openEngines();
const total = { asked: 0, found: 0, right: 0, invented: 0, stones: 0, inventedBare: 0, bareStones: 0 };
const stonesOver = { over: 0, told: 0, bare: 0, toldBare: 0 };
const ratios: number[] = [];
const grits: boolean[] = [];
const trays: string[] = [];

const sureScratches = (flaws: readonly FlawReport[]) =>
  flaws.filter(({ kind, confidence }) => kind === 'scratch' && confidence >= SURE);

for (const { path, truth } of positionals.flatMap(truthsIn)) {
  const barePath = join(dirname(path), 'unscratched', basename(path));
  const [photo, bare] = [await decodeFile(path), await decodeFile(barePath)];
  const options = { ballMm: truth.ball.diameterMm, ballAt: null, rig: null };
  const read = (one: typeof photo): Promise<PhotoReport> => analyzePhoto(one, options, engines, () => {});
  const [report, bareReport] = [await read(photo), await read(bare)];
  const { mmPerPx } = report;
  for (const { stone, truth: one } of matchStones(
    report.stones,
    truth.stones,
    photo.widthPx,
    photo.heightPx,
  )) {
    const all = one.flaws.filter(({ kind }) => kind === 'scratch');
    const shown = all.filter((flaw) => shownMm(flaw, photo, bare, mmPerPx) >= ASKED_MM);
    const claims = sureScratches(stone.flaws);
    const asked = shown.map((flaw): TrueFlaw => ({ ...flaw, visible: true }));
    const match = matchLines(claims, asked, mmPerPx);
    const invented = matchLines(claims, all, mmPerPx).invented;
    total.asked += asked.length;
    total.found += match.hits.length;
    total.right += claims.length - invented.length;
    total.invented += invented.length;
    total.stones++;
    if (asked.length > 1) {
      stonesOver.over++;
      if (claims.length > 1) stonesOver.told++;
    }
    for (const { truth: flaw, claim } of match.hits) {
      if (claim.widthMm === undefined || flaw.widthMm === undefined) continue;
      ratios.push(claim.widthMm / flaw.widthMm);
      grits.push(scratchOrigin(claim.widthMm) === flaw.grit);
    }
    if (values.verbose && (all.length > 0 || claims.length > 0))
      console.log(
        `${truth.photo} ${one.id} ${one.material}: ${all.length} scratches, ${asked.length} shown, ${match.hits.length} found, ${invented.length} invented`,
      );
  }
  for (const stone of bareReport.stones) {
    const claims = sureScratches(stone.flaws);
    total.inventedBare += claims.length;
    total.bareStones++;
    stonesOver.bare++;
    if (claims.length > 1) stonesOver.toldBare++;
  }
  const told = (one: PhotoReport) => {
    const found = contamination(one.stones, 'polish', null);
    return found === null ? 'no scratches' : `${found.isBatch ? 'batch' : 'single'} ${found.origin ?? '?'}`;
  };
  trays.push(`${truth.photo}: ${told(report)}; unscratched: ${told(bareReport)}`);
}

const three = (value: number) => value.toFixed(3);
console.log(
  `scratches that show on 2 mm and more: ${total.found} of ${total.asked} found, recall ${three(total.found / Math.max(1, total.asked))}`,
);
console.log(
  `claims right: ${three(total.right / Math.max(1, total.right + total.invented))}; invented ${three(total.invented / Math.max(1, total.stones))} a stone`,
);
console.log(
  `invented on the same stones without scratches: ${total.inventedBare} on ${total.bareStones} stones, ${three(total.inventedBare / Math.max(1, total.bareStones))} a stone`,
);
console.log(
  `stones with two scratches shown and more told so: ${stonesOver.told} of ${stonesOver.over}; stones without any told so: ${stonesOver.toldBare} of ${stonesOver.bare}`,
);
if (ratios.length > 0) {
  const at = (share: number) => quantile(ratios, share).toFixed(2);
  console.log(
    `width over true: median ${at(0.5)}, nine of ten between ${at(0.05)} and ${at(0.95)}; grit named rightly ${grits.filter(Boolean).length} of ${grits.length}`,
  );
}
for (const line of trays) console.log(line);
