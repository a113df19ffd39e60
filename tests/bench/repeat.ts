/**
 * Tells how much of a flaw level's noise a stone keeps from check to check and how much is new at each:
 * `npm run bench:repeat -- FOLDER… [--verbose]`. tests/bench/repeat-trays/build-all.sh renders trays whose stones stay as
 * they are, the same face up, turned and tipped anew. What is found of a stone is compared with all it has on that face.
 */
import { parseArgs } from 'node:util';
import { locateTray } from '../../src/analysis/locateTray';
import type { StoneReport } from '../../src/analysis/report';
import { stoneFlaws } from '../../src/analysis/stoneFlaws';
import { decodeFile } from '../../src/cli/decodeFile';
import { LEVEL_NOISE } from '../../src/grading/forecast';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { openEngines } from '../../src/vision/openEngines';
import { type FoundAmount, levelNoise, splitNoise } from './levelNoise';
import { matchStones } from './matchStones';
import { fitNoise } from './noiseFit';
import { type TrueStone, type Truth, truthsIn } from './truth';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { verbose: { type: 'boolean' } },
});
if (positionals.length === 0) {
  console.error('Name a folder of rendered trays: npm run bench:repeat -- FOLDER');
  process.exit(2);
}

type RepeatTruth = Omit<Truth, 'stones'> & {
  readonly batch: number;
  readonly stones: readonly (TrueStone & { readonly stone: number })[];
};

interface Amounts {
  readonly batch: number;
  readonly fracture: FoundAmount[];
  readonly pit: FoundAmount[];
}

const engines = await openEngines();
const stones = new Map<string, Amounts>();
for (const { path, truth } of positionals.flatMap(truthsIn)) {
  await readTray(path, truth as unknown as RepeatTruth);
}

async function readTray(path: string, truth: RepeatTruth): Promise<void> {
  const photo = await decodeFile(path);
  const options = { ballMm: truth.ball.diameterMm, ballAt: null, rig: null };
  const tray = await locateTray(photo, options, engines.cv, () => {});
  const { mmPerPx, light } = tray.expected;
  const lampXy = [light.direction[0], light.direction[1]] as const;
  const found = tray.stones.map(({ shape }, i) => ({ ...shape, id: i + 1 }) as unknown as StoneReport);
  for (const { stone, truth: one } of matchStones(found, truth.stones, photo.widthPx, photo.heightPx)) {
    const read = await stoneFlaws(engines, { photo, outline: stone.outline, mmPerPx, lampXy });
    const { stone: number } = truth.stones.find(({ id }) => id === one.id)!;
    const key = `${truth.batch}/${number}`;
    const amounts = stones.get(key) ?? { batch: truth.batch, fracture: [], pit: [] };
    stones.set(key, amounts);
    const sure = read.flaws.filter(({ confidence }) => confidence >= 0.5);
    amounts.fracture.push({
      found: lengthOf(sure),
      true: lengthOf(one.flaws),
      limit: DEFAULT_LIMITS.coarse.maxFractureMm,
    });
    amounts.pit.push({
      found: sure.filter(({ kind }) => kind === 'pit').length,
      true: one.flaws.filter(({ kind }) => kind === 'pit').length,
      limit: DEFAULT_LIMITS.coarse.maxPitsPerCm2 * read.inspectedCm2,
    });
  }
}

function lengthOf(flaws: readonly { kind: string; lengthMm?: number }[]): number {
  return flaws.reduce((sum, { kind, lengthMm = 0 }) => sum + (kind === 'fracture' ? lengthMm : 0), 0);
}

/** Two faces of one stone, photographed apart and added up: each stone's face with that of the next stone of its tray. */
function bothFaces(faces: readonly { batch: number; checks: readonly FoundAmount[] }[]): FoundAmount[][] {
  return faces.slice(1).flatMap(({ batch, checks }, i) => {
    const other = faces[i]!;
    if (other.batch !== batch) return [];
    const together = Math.min(checks.length, other.checks.length);
    return [
      checks.slice(0, together).map((one, k) => ({
        found: one.found + other.checks[k]!.found,
        true: one.true + other.checks[k]!.true,
        limit: one.limit,
      })),
    ];
  });
}

/** Standard deviation of the root of a level when now one face, now the other is up, from true levels alone. */
function betweenFaces(faces: readonly { batch: number; checks: readonly FoundAmount[] }[]): number {
  const squares = faces.slice(1).flatMap(({ batch, checks: [own] }, i) => {
    const other = faces[i]!;
    if (other.batch !== batch) return [];
    const root = (one: FoundAmount) => Math.sqrt(one.true / one.limit);
    return [(root(own!) - root(other.checks[0]!)) ** 2 / 2];
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

for (const kind of ['fracture', 'pit'] as const) {
  const faces = [...stones.values()].map((one) => ({ batch: one.batch, checks: one[kind] }));
  if (values.verbose) {
    for (const [key, one] of stones) {
      const { true: all, limit } = one[kind][0]!;
      const found = one[kind].map((check) => check.found.toFixed(1)).join(' ');
      console.log(`${kind} ${key}: true ${all.toFixed(1)}, limit ${limit.toFixed(1)}, found ${found}`);
    }
  }
  const same = faces.map(({ checks }) => checks);
  console.log(`${kind}: one photo of each stone, middle two thirds ${levelNoise(same.flat()).toFixed(3)}`);
  console.log(`- the same face again: ${told(same)}`);
  console.log(`- both faces added up: ${told(bothFaces(faces))}`);
  console.log(
    `- now one face, now the other: ${betweenFaces(faces).toFixed(2)} more, from the faces themselves`,
  );
}
console.log(`the forecast takes ${JSON.stringify(LEVEL_NOISE)}`);

function told(lists: readonly (readonly FoundAmount[])[]): string {
  const { kept, fresh, keptMiddle, freshMiddle, stones: number, readings } = splitNoise(lists);
  const likeliest = fitNoise(lists);
  const three = (value: number) => value.toFixed(3);
  return [
    `${number} stones, ${readings} readings`,
    `  standard deviation kept ${three(kept)}, new at each check ${three(fresh)} (of the middle two thirds ${three(keptMiddle)}, ${three(freshMiddle)})`,
    `  most likely, new ones with heavy tails: kept ${three(likeliest.kept)}, scale of the new ${three(likeliest.fresh)}; ln likelihood over that of normal ones ${likeliest.lnOverNormal.toFixed(1)}`,
  ].join('\n');
}
