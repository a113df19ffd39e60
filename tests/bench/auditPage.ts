import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import lighthouse from 'lighthouse';
import { CHROMIUM_SWITCHES, findOrInstallChromium } from '../../.config/chromium.mjs';

export const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const;
export type Category = (typeof CATEGORIES)[number];

export interface PageAudit {
  /** 0 to 100. */
  readonly scores: Readonly<Record<Category, number>>;
  readonly firstPaintMs: number;
  readonly largestPaintMs: number;
  readonly blockedMs: number;
  readonly speedIndexMs: number;
  readonly layoutShift: number;
  /** Script received, as it was sent, in thousands of bytes. */
  readonly scriptKb: number;
  /** How fast this computer ran Lighthouse's own test just then; a laptop of 2020 makes about 1500 (its docs). */
  readonly hostSpeed: number;
  /** Names of the audits that count, by category, below a full score. */
  readonly failed: Readonly<Record<Category, readonly string[]>>;
  /** The whole report as a page. */
  readonly html: string;
}

/** Audits an address in a fresh profile, with Lighthouse's defaults: a mid-range phone on slow 4G, simulated. */
export async function auditPage(url: string): Promise<PageAudit> {
  try {
    return await auditOnce(url);
  } catch (error) {
    // On a busy computer Chromium now and then loses the trace; a page that cannot be audited fails again.
    console.log(`  once more: ${error instanceof Error ? error.message : error}`);
    return auditOnce(url);
  }
}

async function auditOnce(url: string): Promise<PageAudit> {
  const profile = await mkdtemp(join(tmpdir(), 'glintgrade-profile-'));
  const browser = spawn(
    findOrInstallChromium(),
    [...CHROMIUM_SWITCHES, `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'],
    { stdio: 'ignore' },
  );
  const ended = new Promise((resolve) => browser.on('exit', resolve));
  try {
    const port = await portOf(profile);
    const result = await lighthouse(url, { port, output: 'html', onlyCategories: [...CATEGORIES] });
    if (!result) throw new Error('Lighthouse gave no result.');
    const { runtimeError } = result.lhr;
    if (runtimeError) throw new Error(runtimeError.message);
    for (const warning of result.lhr.runWarnings) console.log(`  warning: ${warning}`);
    return summary(result.lhr, String(result.report));
  } finally {
    browser.kill();
    await ended;
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** The port that Chromium took, which it writes into its profile. */
async function portOf(profile: string): Promise<number> {
  for (let tries = 0; tries < 200; tries++) {
    const text = await readFile(join(profile, 'DevToolsActivePort'), 'utf8').catch(() => '');
    const port = Number(text.split('\n')[0]);
    if (port > 0) return port;
    await wait(100);
  }
  throw new Error('Chromium did not start.');
}

type Result = NonNullable<Awaited<ReturnType<typeof lighthouse>>>['lhr'];

function summary(lhr: Result, html: string): PageAudit {
  const value = (id: string) => lhr.audits[id]?.numericValue ?? Number.NaN;
  const each = <T>(of: (category: Category) => T) =>
    Object.fromEntries(CATEGORIES.map((one) => [one, of(one)])) as Record<Category, T>;
  return {
    scores: each((one) => Math.round(100 * (lhr.categories[one]?.score ?? Number.NaN))),
    firstPaintMs: value('first-contentful-paint'),
    largestPaintMs: value('largest-contentful-paint'),
    blockedMs: value('total-blocking-time'),
    speedIndexMs: value('speed-index'),
    layoutShift: value('cumulative-layout-shift'),
    scriptKb: scriptBytes(lhr) / 1000,
    hostSpeed: lhr.environment.benchmarkIndex,
    failed: each((one) =>
      (lhr.categories[one]?.auditRefs ?? [])
        .filter(({ id, weight }) => weight > 0 && (lhr.audits[id]?.score ?? 1) < 1)
        .map(({ id }) => id),
    ),
    html,
  };
}

function scriptBytes(lhr: Result): number {
  const details = lhr.audits['resource-summary']?.details;
  const rows = details?.type === 'table' ? details.items : [];
  return Number(rows.find(({ resourceType }) => resourceType === 'script')?.transferSize ?? Number.NaN);
}
