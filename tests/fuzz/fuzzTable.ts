import { REFUSALS } from '../../src/image/notice';
import type { Decoder } from './openDecoder';
import type { Graded } from './openGrader';

interface Row {
  files: number;
  readonly ends: Map<string, number>;
  failed: number;
  slowestMs: number;
  slowestByClockMs: number;
}

/** Longest that the page may work on any file, ms of the processor's time. */
const MOST_PROCESSOR_MS = 10_000;

const CODES: readonly string[] = REFUSALS;

/** What became of all files, by their kinds. */
export class FuzzTable {
  faults = 0;
  readonly #rows = new Map<string, Row>();

  /**
   * Counts one file.
   *
   * @returns What is wrong with its ends: neither graded nor refused by a code in the page, or not in time, or neither
   *   decoded nor refused by one in Node.
   */
  add(name: string, page: Graded, node: Awaited<ReturnType<Decoder['decode']>>): string[] {
    const row = this.#rows.get(name) ?? {
      files: 0,
      ends: new Map(),
      failed: 0,
      slowestMs: 0,
      slowestByClockMs: 0,
    };
    this.#rows.set(name, row);
    const wrong: string[] = [];
    if (!(page.kind === 'graded' || (page.kind === 'refused' && CODES.includes(page.said))))
      wrong.push(`${page.kind} in the page: ${page.said}`);
    if (!(node.kind === 'decoded' || (node.kind === 'refused' && CODES.includes(node.said))))
      wrong.push(`${node.kind} in Node: ${node.said}`);
    if (page.processorMs > MOST_PROCESSOR_MS)
      wrong.push(`${page.processorMs.toFixed(0)} ms of processor time`);
    const end = page.kind === 'refused' ? page.said : page.kind;
    row.files++;
    row.ends.set(end, (row.ends.get(end) ?? 0) + 1);
    if (wrong.length > 0) row.failed++;
    row.slowestMs = Math.max(row.slowestMs, page.processorMs);
    row.slowestByClockMs = Math.max(row.slowestByClockMs, page.ms);
    return wrong;
  }

  print(): void {
    console.log('\nkind      files  failed  slowest ms  by the clock  ends');
    for (const [name, { files, failed, slowestMs, slowestByClockMs, ends }] of this.#rows) {
      const counts = [...ends].sort(([, a], [, b]) => b - a).map(([end, count]) => `${end} ${count}`);
      const slowest = [slowestMs.toFixed(0).padStart(12), slowestByClockMs.toFixed(0).padStart(14)];
      const numbers = [String(files).padStart(7), String(failed).padStart(8), ...slowest];
      console.log(`${name.padEnd(8)}${numbers.join('')}  ${counts.join(', ')}`);
    }
    console.log(`${this.faults} faults`);
  }
}
