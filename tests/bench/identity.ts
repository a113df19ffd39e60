/**
 * Scores how well stones are known again from check to check: `npm run bench:identity -- FOLDER… [--verbose]`.
 * tests/bench/identity-trays/build-all.sh renders the batches. The exit status says whether every target is met.
 */
import { parseArgs } from 'node:util';
import { locateTray } from '../../src/analysis/locateTray';
import { lookOfStone } from '../../src/analysis/lookOfStone';
import type { StoneReport } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { TAKEN_FROM as ACCEPTED, swapStones } from '../../src/history/proposeStones';
import { lookDistance } from '../../src/identity/lookDistance';
import { type LookMatch, matchLooks } from '../../src/identity/matchLooks';
import type { StoneLook } from '../../src/measure/stoneLook';
import { openEngines } from '../../src/vision/openEngines';
import { matchStones } from './matchStones';
import { quantile } from './quantile';
import { type TrueStone, type Truth, truthsIn } from './truth';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { verbose: { type: 'boolean' } },
});
if (positionals.length === 0) {
  console.error('Name a folder of rendered batches: npm run bench:identity -- FOLDER');
  process.exit(2);
}

interface Seen {
  readonly stone: number;
  readonly material: string;
  readonly look: StoneLook;
}

type BatchTruth = Omit<Truth, 'stones'> & {
  readonly batch: number;
  readonly check: number;
  readonly stones: readonly (TrueStone & { readonly stone: number })[];
};

const { cv } = await openEngines();

async function seenIn(path: string, truth: BatchTruth): Promise<Seen[]> {
  const photo = await decodeFile(path);
  const options = { ballMm: truth.ball.diameterMm, ballAt: null, rig: null };
  const tray = await locateTray(photo, options, cv, () => {});
  const found = tray.stones.map(({ shape }, i) => ({ ...shape, id: i + 1 }) as unknown as StoneReport);
  return matchStones(found, truth.stones, photo.widthPx, photo.heightPx).map(({ stone, truth: one }) => {
    const { stone: number } = truth.stones.find(({ id }) => id === one.id)!;
    const { shape } = tray.stones[stone.id - 1]!;
    const look = lookOfStone(cv, photo, shape, tray.expected);
    return { stone: number, material: one.material, look };
  });
}

const batches = new Map<number, { check: number; seen: Seen[]; all: number }[]>();
for (const { path, truth } of positionals.flatMap(truthsIn)) {
  const one = truth as unknown as BatchTruth;
  const checks = batches.get(one.batch) ?? [];
  checks.push({ check: one.check, seen: await seenIn(path, one), all: one.stones.length });
  batches.set(one.batch, checks);
}

const distances: number[] = [];
const total = { asked: 0, right: 0, rightAnswered: 0, accepted: 0, acceptedRight: 0, stones: 0 };
for (const [batch, checks] of batches) {
  checks.sort((a, b) => a.check - b.check);
  const known = new Map<number, { looks: StoneLook[]; last: number }>();
  for (const { check, seen, all } of checks) {
    total.stones += all;
    const ids = [...known.keys()];
    if (ids.length > 0) {
      const stones = ids.map((id) => {
        const { looks, last } = known.get(id)!;
        return { looks, checksAgo: check - last };
      });
      const matches = matchLooks(
        seen.map(({ look }) => look),
        stones,
      );
      total.rightAnswered += rightAnswered(seen, matches, ids);
      matches.forEach(({ known: index, confidence }, i) => {
        const own = seen[i]!.stone;
        // A stone that no earlier photo showed is rightly taken for none of the known.
        const right = index === null ? !known.has(own) : ids[index] === own;
        if (known.has(own)) distances.push(ownDistance(seen[i]!, known, check));
        total.asked++;
        if (right) total.right++;
        if (confidence >= ACCEPTED) {
          total.accepted++;
          if (right) total.acceptedRight++;
        }
        if (values.verbose && (!right || confidence < ACCEPTED)) {
          const { stone, material } = seen[i]!;
          console.log(
            `batch ${batch}, check ${check}: stone ${stone} (${material}) taken for ${index === null ? 'none' : ids[index]}, ${confidence.toFixed(3)}; own at ${ownDistance(seen[i]!, known, check).toFixed(1)}`,
          );
        }
      });
    }
    // The owner has answered every question by the next check.
    for (const { stone, look } of seen) {
      const before = known.get(stone)?.looks ?? [];
      known.set(stone, { looks: [...before, look], last: check });
    }
  }
}

/** Stones that are right once the owner has answered every question of a check truly; each tap swaps two. */
function rightAnswered(seen: readonly Seen[], matches: readonly LookMatch[], ids: readonly number[]): number {
  const truth = seen.map(({ stone }) => (ids.includes(stone) ? String(stone) : null));
  const taken = matches.map(({ known }, i) => [i, known === null ? null : String(ids[known])] as const);
  const answered = matches.reduce<ReadonlyMap<number, string | null>>(
    (stones, { confidence }, i) => (confidence < ACCEPTED ? swapStones(stones, i, truth[i]!) : stones),
    new Map(taken),
  );
  return truth.filter((stone, i) => answered.get(i) === stone).length;
}

/** Distance to what it truly is. */
function ownDistance(
  { stone, look }: Seen,
  known: ReadonlyMap<number, { looks: StoneLook[]; last: number }>,
  check: number,
): number {
  const own = known.get(stone);
  if (!own) return Number.NaN;
  return Math.min(
    ...own.looks.map((face) =>
      lookDistance(look, { ...face, size: own.looks.at(-1)!.size }, check - own.last),
    ),
  );
}

console.log(
  `distance to what it is: median ${quantile(distances, 0.5).toFixed(1)}, 99th percentile ${quantile(distances, 0.99).toFixed(1)}`,
);
const share = (part: number, whole: number) => part / Math.max(1, whole);
const rows = [
  { what: 'right among accepted', value: share(total.acceptedRight, total.accepted), target: 0.99 },
  { what: 'accepted without asking', value: share(total.accepted, total.asked), target: 0.85 },
  { what: 'right after one question screen', value: share(total.rightAnswered, total.asked), target: 1 },
];
console.log(
  `${batches.size} batches, ${total.asked} stones to know again; right by the best match ${share(total.right, total.asked).toFixed(3)}`,
);
for (const { what, value, target } of rows) {
  console.log(`${value >= target ? 'met    ' : 'NOT MET'} ${what}: ${value.toFixed(3)} (target ≥ ${target})`);
}
process.exitCode = rows.every(({ value, target }) => value >= target) ? 0 : 1;
