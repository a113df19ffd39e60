/**
 * Hands thousands of broken photo files to the built page's analysis in Chromium and to the command's decoder in Node:
 * `npm run fuzz:images`, or `-- --count N --seed S --only KIND --from N --keep FOLDER`. Each must be graded or refused by
 * a code within ten seconds of processor time; nothing may fail, hang or crash, a good photo must measure the same all along, and memory
 * must return to its level. The list of extremes (`extremes.ts`) goes first. Prints one row for each kind, and exits
 * with 1 when a promise is broken; the files it was broken by go to the folder of `--keep`.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { makeBases } from './bases';
import { type Case, caseOf } from './cases';
import { makeExtremes } from './extremes';
import { FuzzTable } from './fuzzTable';
import { openDecoder } from './openDecoder';
import { openGrader } from './openGrader';

/** What takes longer hangs, ms by the clock; a busy machine is given its time. */
const MOST_MS = 120_000;
/** The good photo is measured again after so many files. */
const CONTROL_EVERY = 250;
/**
 * What the page's workers and Chromium's processes may hold more at the end than at the beginning, MiB: WebAssembly keeps
 * what its largest picture took. A photo of 300 × 246 pixels left behind by each file that is decoded would be 300.
 */
const MOST_GROWTH = { page: 128, processes: 256 };
const MIB = 2 ** 20;

const { values } = parseArgs({
  options: Object.fromEntries(
    ['count', 'seed', 'only', 'from', 'keep'].map((name) => [name, { type: 'string' } as const]),
  ),
});
const [count, seed, from] = [values.count ?? 3000, values.seed ?? 20260316, values.from ?? 0].map(Number) as [
  number,
  number,
  number,
];
const kinds = typeof values.only === 'string' ? [values.only] : undefined;
const bases = await makeBases();
const control = bases.find(({ kind, isTray }) => kind === 'png' && isTray)!;
const [grader, decoder] = await Promise.all([openGrader(), openDecoder()]);
const table = new FuzzTable();

/** Hands one file to both. */
async function tryFile(row: string, name: string, bytes: Uint8Array, expected?: string): Promise<void> {
  const [page, node] = await Promise.all([grader.grade(bytes, MOST_MS), decoder.decode(bytes, MOST_MS)]);
  const wrong = table.add(row, page, node);
  if (expected !== undefined && page.said !== expected && !wrong.length)
    wrong.push(`${page.kind} (${page.said.slice(0, 60)}) instead of ${expected.slice(0, 60)}`);
  for (const fault of wrong) await tell(`${row} ${name}: ${fault}`, `${row}-${name}`, bytes);
}

async function tell(fault: string, name: string, bytes: Uint8Array): Promise<void> {
  table.faults++;
  console.log(fault);
  if (typeof values.keep !== 'string') return;
  await mkdir(values.keep, { recursive: true });
  await writeFile(join(values.keep, name.replaceAll(/[^\w.-]+/g, '-')), bytes);
}

/** What a file measures; asked once for each. */
async function reportOf(bytes: Uint8Array): Promise<string> {
  const known = reports.get(bytes) ?? (await grader.grade(bytes, MOST_MS)).said;
  reports.set(bytes, known);
  return known;
}

/** The good photo must be graded as at the beginning. */
async function checkControl(report: string): Promise<void> {
  const { said } = await grader.grade(control.bytes, MOST_MS);
  if (said !== report)
    await tell(`the good photo measures otherwise: ${said.slice(0, 200)}`, 'good.png', control.bytes);
}

const reports = new Map<Uint8Array, string>();
const report = (await grader.grade(control.bytes, MOST_MS)).said;
reports.set(control.bytes, report);
for (const base of bases) await grader.grade(base.bytes, MOST_MS);
const before = await grader.memory();
for (const { name, bytes, refused, twin } of await makeExtremes(control.bytes))
  await tryFile(
    'extremes',
    name,
    bytes,
    refused ?? (twin?.levels === 0 ? await reportOf(twin.bytes) : undefined),
  );
for (let number = from; number < from + count; number++) {
  const one: Case = caseOf(number, seed, bases, kinds);
  await tryFile(one.base.kind, `${number} ${one.base.name} (${one.how})`, one.bytes);
  if ((number + 1) % CONTROL_EVERY === 0) {
    await checkControl(report);
    const held = await grader.memory();
    console.log(`${number + 1 - from} of ${count}, memory of the page ${Math.round(held.page / MIB)} MiB`);
  }
}
await checkControl(report);
const after = await grader.memory();
for (const part of ['page', 'processes'] as const) {
  const [least, most] = [before[part], after[part]];
  console.log(
    `memory of the ${part}: ${Math.round(least / MIB)} MiB before, ${Math.round(most / MIB)} MiB after`,
  );
  if (most - least > MOST_GROWTH[part] * MIB) {
    table.faults++;
    console.log(`memory of the ${part} does not return`);
  }
}
for (const error of grader.errors) {
  table.faults++;
  console.log(`error in the page: ${error}`);
}
table.print();
await Promise.all([grader.close(), decoder.close()]);
process.exitCode = table.faults > 0 ? 1 : 0;
