import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { notices } from '../../src/texts/english/notices';
import { runGrade } from '../helpers/runGrade';

const TRAY = 'sample-images/coarse-tray.jpg';
const MOVED = 'sample-images/lamp-moved/coarse-tray.jpg';
interface Flaw {
  readonly kind: string;
  readonly row: number;
  readonly column: number;
  readonly diameterMm?: number;
  readonly confidence: number;
  readonly followsLamp?: boolean;
}
const flawsIn = (stdout: string): Flaw[] => {
  const [photo] = JSON.parse(stdout).photos;
  return photo.stones.flatMap(({ flaws }: { flaws: Flaw[] }) =>
    flaws.filter((flaw) => flaw.confidence >= 0.5),
  );
};

it('finds more true pits with a second photo, the lamp moved, and says which follow it', {
  timeout: 300_000,
}, async () => {
  const [one, two, truth] = await Promise.all([
    runGrade(TRAY, '--json', '-'),
    runGrade(TRAY, '--lamp-moved', MOVED, '--json', '-'),
    readFile('sample-images/coarse-tray.json', 'utf8').then((text) => JSON.parse(text)),
  ]);
  expect([one.code, two.code]).toEqual([0, 0]);
  const [photo] = JSON.parse(two.stdout).photos;
  // Nothing but the lamp was moved.
  expect(photo.lampMoved.inBoth).toBeGreaterThan(7);
  expect(Math.abs(photo.lampMoved.turnDeg)).toBeLessThan(0.5);
  const pits = truth.stones.flatMap(({ flaws }: { flaws: (Flaw & { visible: boolean })[] }) =>
    flaws.filter(({ kind, visible, diameterMm = 0 }) => kind === 'pit' && visible && diameterMm >= 0.6),
  ) as Flaw[];
  const found = (flaws: readonly Flaw[]) =>
    pits.filter(({ row, column, diameterMm = 0 }) =>
      flaws.some(
        (flaw) =>
          flaw.kind === 'pit' &&
          Math.hypot(flaw.row - row, flaw.column - column) * truth.mmPerPx <= Math.max(0.5, diameterMm / 2),
      ),
    ).length;
  expect(found(flawsIn(two.stdout))).toBeGreaterThan(found(flawsIn(one.stdout)));
  expect(flawsIn(two.stdout).some(({ followsLamp }) => followsLamp === true)).toBe(true);
  expect(flawsIn(one.stdout).every(({ followsLamp }) => followsLamp === undefined)).toBe(true);
});

it('warns of a second photo of another tray, and of one with the lamp where it was', {
  timeout: 300_000,
}, async () => {
  const [other, same] = await Promise.all(
    ['sample-images/polished-tray.jpg', TRAY].map((photo) =>
      runGrade(TRAY, '--lamp-moved', photo, '--json', '-'),
    ),
  );
  const messages = (stdout: string) =>
    JSON.parse(stdout).photos[0].warnings.map(({ message }: { message: string }) => message);
  expect(messages(other!.stdout)).toContain(notices.warnings['moved-other-tray']);
  expect(messages(same!.stdout)).toContain(notices.warnings['moved-same-lamp']);
});
