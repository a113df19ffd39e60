import type { CheckRecord, JournalRecord } from '../../src/journal/records';
import { inventedBatch, recordsOf } from './inventedBatch';

const stones = [{ pits: 2, alpha: 0.1 }, { fractureMm: 4 }];
const steps = ['coarse', 'coarse', 'polish'] as const;
/** A batch with three checks, whose ids are such as a bundle's must be. */
function wholeBatch(letter: string): JournalRecord[] {
  const checks = steps.map((step, i) => ({ step, day: 7 * i, stones }));
  const isId = (value: unknown, key: string) => /^01[A-Z]\d{5}$/.test(String(value)) && key !== 'name';
  const text = JSON.stringify(recordsOf(inventedBatch(checks, { letter })), (key, value) =>
    isId(value, key) ? String(value).padEnd(26, '0') : value,
  );
  return JSON.parse(text) as JournalRecord[];
}

export const WHOLE = wholeBatch('B');
/** Another one, as a journal has it already. */
export const KEPT = wholeBatch('C');
export const CHECKS = WHOLE.filter((record): record is CheckRecord => record.kind === 'check');
export const [OWN, FIRST, SECOND, THIRD] = [WHOLE[0]!.id, ...CHECKS.map(({ id }) => id)] as [
  string,
  string,
  string,
  string,
];
