/**
 * Audits the built app with Lighthouse, as on a mid-range phone with slow 4G (its defaults, simulated):
 * `npm run bench:lighthouse`, with `-- --runs 1`, `-- --page NAME` or `-- --reports FOLDER` to look closer.
 * The app is served with its security policy and, as static hosts do, in Brotli; every run starts in a fresh profile.
 * Performance is the median of three runs, with the timings of that run; of the others the worst run counts.
 * The exit status is 1 when a figure misses its target.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { serveBuilt } from '../helpers/serveBuilt';
import { serveCompressed } from '../helpers/serveCompressed';
import { auditPage, CATEGORIES, type Category, type PageAudit } from './auditPage';

const PAGES = {
  tray: '',
  journal: '?example#/journal',
  plan: '#/plan',
  help: '#/help',
};
const TARGETS: Readonly<Record<Category, number>> = {
  performance: 90,
  accessibility: 100,
  'best-practices': 100,
};
const COLUMNS = [
  'page',
  'perf.',
  'access.',
  'practices',
  'FCP s',
  'LCP s',
  'TBT ms',
  'SI s',
  'CLS',
  'script kB',
];

const { values: given } = parseArgs({
  options: {
    runs: { type: 'string', default: '3' },
    page: { type: 'string' },
    reports: { type: 'string' },
  },
});
const pages = Object.entries(PAGES).filter(([name]) => (given.page ?? name) === name);
if (pages.length === 0) throw new Error(`Pages are ${Object.keys(PAGES).join(', ')}.`);

const served = await serveCompressed(await serveBuilt('src'));
const audits = new Map<string, PageAudit[]>();
try {
  // The server compresses every file once, which is no part of a visit: a run that does not count.
  await auditPage(served.url);
  for (const [name, path] of pages) {
    const runs: PageAudit[] = [];
    for (let k = 0; k < Number(given.runs); k++) runs.push(await auditPage(served.url + path));
    runs.sort((a, b) => a.scores.performance - b.scores.performance);
    audits.set(name, runs);
    if (given.reports) await writeReports(given.reports, name, runs);
  }
} finally {
  await served.close();
}

const missed: string[] = [];
console.log(line(COLUMNS));
for (const [name, runs] of audits) {
  const middle = runs[(runs.length - 1) >> 1]!;
  const scores = { ...worstOf(runs), performance: middle.scores.performance };
  console.log(line([name, ...CATEGORIES.map((one) => String(scores[one])), ...timings(middle)]));
  for (const one of CATEGORIES) {
    if (!(scores[one] >= TARGETS[one]))
      missed.push(
        `${name}: ${one} ${scores[one]} of ${TARGETS[one]} (${[...new Set(runs.flatMap(({ failed }) => failed[one]))].join(', ')})`,
      );
  }
  console.log(`    runs: ${runs.map(({ scores: { performance } }) => performance).join(', ')}`);
}
const speeds = [...audits.values()].flat().map(({ hostSpeed }) => hostSpeed);
console.log(
  `speed of this computer meanwhile, by Lighthouse's test: ${Math.min(...speeds).toFixed(0)} to ${Math.max(...speeds).toFixed(0)}`,
);
for (const one of missed) console.log(`not met – ${one}`);
if (missed.length === 0) console.log('all targets met');
process.exitCode = missed.length === 0 ? 0 : 1;

function timings(audit: PageAudit): string[] {
  return [
    (audit.firstPaintMs / 1000).toFixed(1),
    (audit.largestPaintMs / 1000).toFixed(1),
    audit.blockedMs.toFixed(0),
    (audit.speedIndexMs / 1000).toFixed(1),
    audit.layoutShift.toFixed(3),
    audit.scriptKb.toFixed(0),
  ];
}

function worstOf(runs: readonly PageAudit[]): Record<Category, number> {
  return Object.fromEntries(
    CATEGORIES.map((one) => [one, Math.min(...runs.map(({ scores }) => scores[one]))]),
  ) as Record<Category, number>;
}

function line(cells: readonly string[]): string {
  return cells
    .map((cell, i) => (i === 0 ? cell.padEnd(8) : cell.padStart(Math.max(COLUMNS[i]!.length, 5) + 2)))
    .join('');
}

async function writeReports(folder: string, name: string, runs: readonly PageAudit[]): Promise<void> {
  await mkdir(folder, { recursive: true });
  for (const [k, { html }] of runs.entries()) await writeFile(join(folder, `${name}-${k + 1}.html`), html);
}
