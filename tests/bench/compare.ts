/**
 * Times the comparison of 600 and of 6,000 invented stones: `npm run bench:compare`. Each way of putting them together
 * and each figure is grouped, summed up and its best group set against the others; the slowest of them counts. The
 * exit status says whether the target is met.
 */
import { COMPARE_BY, COMPARE_WHAT } from '../../src/compare/compareBy';
import { compareGroups } from '../../src/compare/compareGroups';
import { groupSentence } from '../../src/compare/groupWords';
import { standings } from '../../src/compare/standings';
import { inventedJournal } from '../compare/inventedJournal';

const TARGET_MS = 50;
const ROUNDS = 15;

/** Milliseconds, the median of several rounds after two to warm up. */
function timed(work: () => unknown): number {
  const times = Array.from({ length: ROUNDS + 2 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).slice(2);
  return times.sort((a, b) => a - b)[ROUNDS >> 1] ?? Number.NaN;
}

let slowest = 0;
for (const count of [600, 6000]) {
  const { stones, batchNames } = inventedJournal(count);
  console.log(`${count} stones                 gloss  coarse    size  finished   (ms)`);
  for (const by of COMPARE_BY) {
    const cells = COMPARE_WHAT.map((what) => {
      const ms = timed(() => {
        const { groups } = compareGroups(stones, by, what, batchNames);
        const best = groups[0];
        return best && [standings(best, groups, what), groupSentence(best, by, what)];
      });
      slowest = Math.max(slowest, ms);
      return ms.toFixed(1).padStart(8);
    });
    const groups = compareGroups(stones, by, 'finished', batchNames).groups.length;
    console.log(`  by ${by.padEnd(9)} ${String(groups).padStart(4)} groups ${cells.join('')}`);
  }
}
console.log(
  `slowest ${slowest.toFixed(1)} ms, target ${TARGET_MS} ms: ${slowest < TARGET_MS ? 'met' : 'not met'}`,
);
process.exitCode = slowest < TARGET_MS ? 0 : 1;
