import { expect, it } from 'vitest';
import { ballChecks } from '../../src/analysis/ballChecks';
import { rigOf } from '../../src/analysis/locateTray';
import { photoChecks } from '../../src/analysis/photoChecks';
import { readBall } from '../../src/analysis/readBall';
import type { StoneReport } from '../../src/analysis/report';
import type { Photo } from '../../src/image/photo';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import { drawLights, drawLitTray, litTrayPixel } from '../helpers/drawLitTray';
import { lampAt } from '../helpers/drawnLamp';
import { type DrawnBody, type DrawnCamera, plain, takePhoto } from '../helpers/drawScene';
import { TRAY_BALL, TRAY_BALL_MM, TRAY_LAMP, TRAY_STONES } from '../helpers/drawTray';
import { inventedReport } from '../helpers/inventedReport';

/** The stone as the analysis would find it: its silhouette from above. */
function found({ center: [x, y], halfAxes: [a, b], turnDeg }: DrawnBody, index: number): StoneReport {
  const turn = (turnDeg * Math.PI) / 180;
  const outline = Array.from({ length: 60 }, (_, k) => {
    const [u, v] = [a * Math.cos((k * Math.PI) / 30), b * Math.sin((k * Math.PI) / 30)];
    return litTrayPixel(
      x + u * Math.cos(turn) - v * Math.sin(turn),
      y + u * Math.sin(turn) + v * Math.cos(turn),
    );
  });
  return { ...inventedReport(1).stones[0]!, id: index + 1, outline, center: litTrayPixel(x, y) };
}

const STONES = TRAY_STONES.map(found);

function check(photo: Photo, stones: readonly StoneReport[] = STONES, pxPerMm: number | null = null) {
  const small = shrinkPhoto(photo, 900);
  const reading = readBall(photo, small, null)!;
  const own = rigOf(reading, TRAY_BALL_MM);
  const rig = pxPerMm === null ? own : { ...own, mmPerPx: 1 / pxPerMm };
  return photoChecks({ photo, small, reading, light: ballChecks(photo, reading), rig, stones });
}

const good = drawLights([TRAY_LAMP], [TRAY_BALL, ...TRAY_STONES]);
const taken = (camera: Partial<DrawnCamera> = {}) => takePhoto(good, { blurPx: 0.9, grain: 0.01, ...camera });
const codesOf = (photo: Photo) => check(photo).map(({ code }) => code);

it('has nothing to say of a good photo, nor of the same with less light', () => {
  for (const exposure of [1, 0.85, 0.7]) expect(codesOf(taken({ exposure }))).toEqual([]);
});

it('sees a second lamp on the ball and marks its image there', () => {
  const photo = drawLitTray({}, [TRAY_LAMP, lampAt(30, -60, 8, 8)]);
  const warnings = check(photo);
  expect(warnings.map(({ code }) => code)).toEqual(['second-light']);
  // The ball's normal halfway between camera and lamp: 15° off the axis.
  const [x, y] = TRAY_BALL.center;
  const off = 8 * Math.sin((15 * Math.PI) / 180);
  const turn = (-60 * Math.PI) / 180;
  const [row, column] = litTrayPixel(x + off * Math.cos(turn), y + off * Math.sin(turn));
  const mark = warnings[0]!.marks![0]!;
  expect(Math.hypot(mark.row - row, mark.column - column)).toBeLessThan(1);
});

it('sees when the camera was at its limit: on the ball, and on the stones and the tray', () => {
  expect(codesOf(taken({ exposure: 2 }))).toEqual(['ball-clipped']);
  const white = { ...TRAY_STONES[1]!, colorAt: plain(0.9) };
  const codes = codesOf(drawLitTray({ exposure: 4 }, [TRAY_LAMP], [white]));
  expect(codes).toEqual(['clipped', 'ball-clipped']);
});

it('sees a photo too dark for its 8 bits', () => {
  expect(codesOf(taken({ exposure: 0.06 }))).toEqual(['too-dark']);
});

it('sees slight blur and marks the ball it was read from', () => {
  const [warning] = check(taken({ blurPx: 1.6 }));
  expect(warning!.code).toBe('blurred');
  const [row, column] = litTrayPixel(TRAY_BALL.center[0], TRAY_BALL.center[1]);
  expect(Math.hypot(warning!.marks![0]!.row - row, warning!.marks![0]!.column - column)).toBeLessThan(1);
});

it('names the stones that the edge cuts off', () => {
  const stones = STONES.map((stone) => ({ ...stone, cutOff: stone.id === 2 }));
  expect(check(taken(), stones)).toMatchObject([{ code: 'stone-cut-off', stones: [2] }]);
});

it('sees when a millimeter has too few pixels', () => {
  expect(check(taken(), [], 3.5).map(({ code }) => code)).toContain('low-resolution');
});

it('sees water on stones whatever their color, and does not take a polish for it', () => {
  const wet = TRAY_STONES.map((stone) => ({ ...stone, n: 1.333, alpha: 0 }));
  expect(check(drawLitTray({}, [TRAY_LAMP], wet))).toMatchObject([{ code: 'wet-stones', stones: [1, 2, 3] }]);
  const polished = TRAY_STONES.map((stone, k) => ({ ...stone, alpha: [0.005, 0.015, 0.03][k]! }));
  expect(codesOf(drawLitTray({}, [TRAY_LAMP], polished))).toEqual([]);
});

it('sees drops of water on the tray between dry stones', () => {
  const drops = [
    [0, -3],
    [-4, -24],
    [32, 2],
  ].map(([x, y]): DrawnBody => {
    const color = () => [0.5, 0.5, 0.5] as const;
    return { center: [x!, y!, 0], halfAxes: [2.4, 2, 0.8], turnDeg: 0, n: 1.333, alpha: 0, colorAt: color };
  });
  const warnings = check(drawLitTray({}, [TRAY_LAMP], [...TRAY_STONES, ...drops]));
  expect(warnings.map(({ code }) => code)).toEqual(['wet-stones']);
  expect(warnings[0]!.marks).toHaveLength(3);
  expect(warnings[0]!.stones).toEqual([]);
});

it('warns of strong compression, and not of a camera’s usual', () => {
  expect(check({ ...taken(), jpegQuality: 70 })).toMatchObject([{ code: 'compressed' }]);
  expect(check({ ...taken(), jpegQuality: 92 })).toEqual([]);
  expect(check({ ...taken(), jpegQuality: null })).toEqual([]);
});
