import { expect, it } from 'vitest';
import type { PhotoReport, RigCheck } from '../../src/analysis/report';
import { rigLines } from '../../src/cli/rigLines';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';

const good: PhotoReport = { ...inventedReport(1), rig: inventedRig() };
const bright: PhotoReport = { ...good, rig: { ...inventedRig(), lampRadiance: 40 } };
const rigCheck: RigCheck = {
  byBall: true,
  changes: [],
  lampOffDeg: 0,
  lampSizeRatio: 1,
  shadowTurnDeg: 0,
  trayTilt: null,
  scaleRatio: 1,
  blurPx: null,
  exposureRatio: 1,
};

it('says all about lamp and camera when they are saved', () => {
  const lines = rigLines(good, true).split('\n');
  expect(lines).toHaveLength(4);
  for (const line of lines) expect(line).toMatch(/^ {2}rig: .*\.$/);
});

it('says only what to better when they are compared', () => {
  expect(rigLines({ ...good, rigCheck }, false)).toBe(
    '  rig: Lamp and camera stand as remembered (by its ball).',
  );
  expect(rigLines({ ...bright, rigCheck }, false)).toContain('1½ stops darker');
});

it('gives no advice about a photo without a ball: it shows the remembered lamp and camera only', () => {
  expect(rigLines({ ...bright, ball: null }, false)).toBe('');
});
