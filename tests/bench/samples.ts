/**
 * Scores the analysis on photos with a truth file: `npm run bench:samples -- [FOLDER…] [--pictures FOLDER]`.
 * Without a folder it takes the sample photos. The exit status says whether the targets are met.
 */
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { PhotoReport, StoneReport } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { openEngines } from '../../src/vision/openEngines';
import { drawFindings } from './drawFindings';
import { matchStones, type StoneMatch } from './matchStones';
import { rankCorrelation } from './rankCorrelation';
import { roughnessAt } from './roughnessAt';
import { type FlawScore, NO_FLAWS, scoreFlaws } from './scoreFlaws';
import { type Truth, truthsIn } from './truth';

const TARGET = { scale: 0.01, lampSize: 0.1, directionDeg: 3, ranks: 0.95 };
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { pictures: { type: 'string' }, verbose: { type: 'boolean' } },
});
const folders =
  positionals.length > 0 ? positionals : [fileURLToPath(new URL('../../sample-images', import.meta.url))];

const engines = await openEngines();
const pairs: { estimated: number; low: number; high: number; truth: number }[] = [];
const flaws: FlawScore = { ...NO_FLAWS };
let unmet = 0;
for (const { path, truth } of folders.flatMap(truthsIn)) {
  const photo = await decodeFile(path);
  const started = performance.now();
  const options = { ballMm: truth.ball.diameterMm, ballAt: null, rig: null };
  const report = await analyzePhoto(photo, options, engines, () => {}).catch((error: Error) => error.message);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`\n${path} (${seconds} s)`);
  if (typeof report === 'string') {
    console.log(`  REFUSED: ${report}`);
    unmet++;
    continue;
  }
  if (values.pictures) await drawFindings(photo, report, truth, values.pictures);
  unmet += scoreRig(report, truth);
  const matches = matchStones(report.stones, truth.stones, photo.widthPx, photo.heightPx);
  unmet += scoreStones(report, truth, matches);
  for (const match of matches) scoreStone(match, report.mmPerPx);
}
summarize();
process.exitCode = unmet > 0 ? 1 : 0;

function line(name: string, value: string, met: boolean): number {
  console.log(`  ${met ? 'met    ' : 'NOT MET'} ${name}: ${value}`);
  return met ? 0 : 1;
}

function scoreRig(report: PhotoReport, truth: Truth): number {
  const scale = report.mmPerPx / truth.mmPerPx - 1;
  const size = report.rig.light.angularDiameterDeg / truth.lamp.angularDiameterDeg - 1;
  const [x, y, z] = report.rig.light.direction;
  const [tx, ty, tz] = truth.lamp.direction;
  const apartDeg = (Math.acos(Math.min(1, x * tx + y * ty + z * tz)) * 180) / Math.PI;
  const percent = (share: number) => `${(100 * share).toFixed(2)} %`;
  return (
    line('scale', percent(scale), Math.abs(scale) <= TARGET.scale) +
    line('lamp size', percent(size), Math.abs(size) <= TARGET.lampSize) +
    line('lamp direction', `${apartDeg.toFixed(2)}°`, apartDeg <= TARGET.directionDeg)
  );
}

function scoreStones(report: PhotoReport, truth: Truth, matches: readonly StoneMatch[]): number {
  const extra = report.stones.length - new Set(matches.map((match) => match.stone.id)).size;
  const least = Math.min(...matches.map((match) => match.overlap));
  const text = `${matches.length} of ${truth.stones.length}, ${extra} extra, least overlap ${least.toFixed(2)}`;
  return line('stones', text, matches.length === truth.stones.length && extra === 0);
}

function scoreStone({ stone, truth, overlap }: StoneMatch, mmPerPx: number): void {
  const score = scoreFlaws(stone.flaws, truth.flaws, mmPerPx);
  for (const key of Object.keys(flaws) as (keyof FlawScore)[]) flaws[key] += score[key];
  const best = roughness(stone, truth.n);
  if (best) pairs.push({ ...best, truth: truth.alpha });
  const gloss = best
    ? `α ${best.estimated.toFixed(4)} [${best.low.toFixed(4)}, ${best.high.toFixed(4)}]  ratio ${(best.estimated / truth.alpha).toFixed(2)}`
    : 'no highlight';
  const holes = `pits ${score.foundPits}/${score.truePits} +${score.falsePits}, fractures ${score.foundFractures}/${score.trueFractures} +${score.falseFractures}`;
  console.log(
    `    ${String(stone.id).padStart(2)} ${truth.material.padEnd(18)} overlap ${overlap.toFixed(2)}  true α ${truth.alpha.toFixed(4)}  ${gloss}  ${holes}`,
  );
}

/** Roughness at the true index, as the grading interpolates it. */
function roughness({ highlight }: StoneReport, n: number) {
  if (!highlight) return null;
  const { alpha, alphaLow, alphaHigh } = roughnessAt(highlight.byIndex, n);
  return { estimated: alpha, low: alphaLow, high: alphaHigh };
}

function summarize(): void {
  const errors = pairs.map((pair) => Math.abs(Math.log(pair.estimated / pair.truth))).sort((a, b) => a - b);
  const held = pairs.filter((pair) => pair.low <= pair.truth && pair.truth <= pair.high).length;
  const ranks = rankCorrelation(
    pairs.map((pair) => pair.estimated),
    pairs.map((pair) => pair.truth),
  );
  console.log(`\nAll photos: ${pairs.length} stones with a highlight`);
  unmet += line('Spearman of roughness', ranks.toFixed(3), ranks >= TARGET.ranks);
  console.log(
    `  median error of ln α ${errors[errors.length >> 1]?.toFixed(3)}; within 20 %: ${errors.filter((e) => e < 0.2).length}`,
  );
  console.log(`  90 % interval holds the truth for ${held} of ${pairs.length}`);
  const precision = flaws.foundPits / Math.max(1, flaws.foundPits + flaws.falsePits);
  const recall = flaws.foundPits / Math.max(1, flaws.truePits);
  const f1 = (2 * precision * recall) / Math.max(1e-9, precision + recall);
  console.log(
    `  pits and chips: F1 ${f1.toFixed(2)} (recall ${recall.toFixed(2)}, precision ${precision.toFixed(2)}); fractures: recall ${(flaws.foundFractures / Math.max(1, flaws.trueFractures)).toFixed(2)} of ${flaws.trueFractures}, ${flaws.falseFractures} false`,
  );
}
