import { expect, it } from 'vitest';
import { gradeStone } from '../../src/grading/gradeStone';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { checkRecord } from '../../src/journal/checkRecord';
import { dayToday } from '../../src/state/dayToday';
import { inventedReport } from '../helpers/inventedReport';

it('keeps what was measured and said of each stone, and leaves out long lines', () => {
  const report = inventedReport();
  const grades = report.stones.map((stone) =>
    gradeStone(stone, { step: 'fine', material: null, limits: null }),
  );
  const setting = {
    ...({ id: '01C', batch: '01B', faceOf: null, step: 'fine', material: 'agate' } as const),
    ...{ limits: DEFAULT_LIMITS.fine, day: '2026-03-09', photo: 'ab' },
  } as const;
  const record = checkRecord(setting, report, grades);
  expect(record).toMatchObject({ kind: 'check', ...setting, mmPerPx: report.mmPerPx, longestPx: 1800 });
  expect(record.stones.map(({ place }) => place)).toEqual(report.stones.map(({ id }) => id));
  record.stones.forEach((stone, i) => {
    expect(stone.action).toBe(grades[i]!.verdict.action);
    expect(stone.gloss?.gu60 ?? null).toBe(grades[i]!.gloss?.gu60 ?? null);
    expect(stone.look).toEqual(report.stones[i]!.look);
    expect(stone.highlight?.byIndex).toEqual(report.stones[i]!.highlight?.byIndex);
    expect(stone.flaws.every((flaw) => !('path' in flaw))).toBe(true);
  });
  expect(structuredClone(record)).toEqual(record);
});

it('takes the day from the calendar where the bench stands', () => {
  expect(dayToday(new Date(2026, 2, 9, 23, 59))).toBe('2026-03-09');
  expect(dayToday(new Date(2026, 10, 27, 0, 1))).toBe('2026-11-27');
});
