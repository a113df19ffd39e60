/**
 * Times the command on folders: `npm run bench:folder`. The same photos are graded by one process and by two at a time, in
 * turns, twice each; prints photos/s and the ratio, and that memory of a process does not grow with the folder. Exits with
 * 1 when two processes are not 1.8 times as fast as one. Without other work on this computer, or it says nothing.
 */
import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs, promisify } from 'node:util';
import sharp from 'sharp';

const TARGET = 1.8;
const { values } = parseArgs({ options: { photos: { type: 'string', default: '32' } } });
const count = Number(values.photos);
const run = promisify(execFile);

const folder = await mkdtemp(join(tmpdir(), 'glintgrade-folder-'));
for (let k = 0; k < count; k++)
  await sharp('sample-images/close-up.jpg')
    .resize(900 + 4 * k)
    .jpeg({ quality: 92 })
    .toFile(join(folder, `${k}.jpg`));

console.log('processes  photos   photos/s   MB each at most');
const rates = new Map<number, number[]>([
  [1, []],
  [2, []],
]);
for (let round = 0; round < 2; round++) {
  for (const [jobs, found] of rates) {
    const words = ['.config/run.mjs', 'src/cli/grade.ts', folder, '--jobs', String(jobs)];
    const { stdout } = await run(process.execPath, words, { maxBuffer: 64e6 });
    const [, rate, peak] = /, ([\d.]+) photos\/s, .* with (\d+) MB/.exec(stdout) ?? [];
    found.push(Number(rate));
    console.log(
      `${String(jobs).padStart(9)}${String(count).padStart(8)}${rate?.padStart(11)}${peak?.padStart(18)}`,
    );
  }
}
await rm(folder, { recursive: true });
const [one, two] = [...rates.values()].map((found) => Math.max(...found)) as [number, number];
console.log(`two over one: ${(two / one).toFixed(2)} (target ${TARGET})`);
process.exitCode = two / one >= TARGET ? 0 : 1;
