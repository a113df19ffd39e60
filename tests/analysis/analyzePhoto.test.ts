import { expect, it } from 'vitest';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { AnalysisOptions, FoundStones } from '../../src/analysis/options';
import { dot } from '../../src/optics/vector';
import { openEngines } from '../../src/vision/openEngines';
import {
  drawTray,
  TRAY_BALL,
  TRAY_BALL_MM,
  TRAY_LAMP,
  TRAY_PX_PER_MM,
  TRAY_STONES,
} from '../helpers/drawTray';

const engines = await openEngines();
const withBall: AnalysisOptions = { ballMm: TRAY_BALL_MM, ballAt: null, rig: null };
const quietly = () => {};

const photo = drawTray([TRAY_BALL, ...TRAY_STONES]);
const seen: string[] = [];
const foundAt: (readonly [stages: number, found: FoundStones])[] = [];
const report = await analyzePhoto(photo, withBall, engines, (stage, _, found) => {
  if (found) foundAt.push([new Set(seen).size, found]);
  seen.push(stage);
});

it('finds the ball and every stone, in reading order', () => {
  expect(report.ball).not.toBeNull();
  expect(report.stones.map(({ id }) => id)).toEqual([1, 2, 3]);
  report.stones.forEach(({ center: [row, column] }, i) => {
    const [x, y] = TRAY_STONES[i]!.center;
    expect(Math.abs(row - (photo.heightPx / 2 - 0.5 - y * TRAY_PX_PER_MM))).toBeLessThan(5);
    expect(Math.abs(column - (photo.widthPx / 2 - 0.5 + x * TRAY_PX_PER_MM))).toBeLessThan(5);
  });
});

it('knows the scale within 1 % and the sizes of the stones within 4 %', () => {
  expect(Math.abs(report.mmPerPx * TRAY_PX_PER_MM - 1)).toBeLessThan(0.01);
  report.stones.forEach(({ lengthMm, widthMm, areaMm2 }, i) => {
    const [a, b] = TRAY_STONES[i]!.halfAxes;
    expect(Math.abs(lengthMm / (2 * a) - 1)).toBeLessThan(0.04);
    expect(Math.abs(widthMm / (2 * b) - 1)).toBeLessThan(0.04);
    expect(Math.abs(areaMm2 / (Math.PI * a * b) - 1)).toBeLessThan(0.05);
  });
});

it('knows the lamp within 2° and 5 % of its size', () => {
  const { direction, angularDiameterDeg } = report.light!;
  expect((Math.acos(Math.min(1, dot(direction, TRAY_LAMP.direction))) * 180) / Math.PI).toBeLessThan(2);
  expect(Math.abs(angularDiameterDeg / TRAY_LAMP.angularDiameterDeg - 1)).toBeLessThan(0.05);
});

it('reads each roughness within a fifth and holds it in its interval', () => {
  report.stones.forEach(({ highlight }, i) => {
    const { alpha } = TRAY_STONES[i]!;
    const read = highlight!.byIndex.find(({ n }) => n === 1.54)!;
    expect(Math.abs(read.alpha / alpha - 1)).toBeLessThan(0.2);
    expect(read.alphaLow).toBeLessThan(alpha);
    expect(read.alphaHigh).toBeGreaterThan(alpha);
  });
});

it('knows how light each stone is, the light of the room taken off', () => {
  // Drawn room: a white sheet of radiance 0.12, beside 0.134 from the lamp (16 · 0.0344 sr · cos 40° / π).
  expect(Math.abs(report.rig.scene!.roomShare! - 0.12 / 0.254)).toBeLessThan(0.12);
  report.stones.forEach(({ highlight }, i) => {
    const [red, green, blue] = TRAY_STONES[i]!.colorAt([0, 0, 1]);
    const drawn = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    expect(Math.abs(Math.log(highlight!.bodyReflectance! / drawn))).toBeLessThan(0.2);
  });
});

it('warns only of outlines as round as no stone’s, and inspects the surface of each', () => {
  // They are drawn as ellipsoids.
  expect(report.warnings.map(({ code }) => code)).toEqual(['unlike-stones']);
  expect(report.stones.map(({ unlike }) => unlike)).toEqual(['round', 'round', 'round']);
  report.stones.forEach(({ inspectedCm2, areaMm2, cutOff }) => {
    expect(cutOff).toBe(false);
    expect(inspectedCm2).toBeGreaterThan(0.005 * areaMm2);
    expect(inspectedCm2).toBeLessThan(0.02 * areaMm2);
  });
});

it('tells its watcher once where the stones lie, before it measures them', () => {
  const { widthPx, heightPx, stones } = report;
  const outlines = stones.map(({ outline }) => outline);
  // After two steps: the ball and the stones.
  expect(foundAt).toEqual([[2, { widthPx, heightPx, outlines }]]);
});

it('tells its watcher the steps in order', () => {
  expect([...new Set(seen)]).toEqual(['ball', 'stones', 'highlights', 'flaws']);
});

const withoutBall = drawTray(TRAY_STONES);

it('refuses a tray without a ball when there is no rig', async () => {
  await expect(analyzePhoto(withoutBall, withBall, engines, quietly)).rejects.toMatchObject({
    code: 'no-ball',
  });
  const neither = { ...withBall, ballMm: null };
  await expect(analyzePhoto(withoutBall, neither, engines, quietly)).rejects.toMatchObject({
    code: 'no-ball',
  });
});

it('measures with a rig what it measured with the ball, and passes on what it doubts about the lamp', async () => {
  const wide = { ...report.rig, light: { ...report.rig.light, angularDiameterDeg: 30 } };
  const again = await analyzePhoto(withoutBall, { ballMm: null, ballAt: null, rig: wide }, engines, quietly);
  expect(again.ball).toBeNull();
  expect(again.warnings.map(({ code }) => code)).toEqual(['lamp-too-large', 'unlike-stones']);
  again.stones.forEach(({ highlight, areaMm2 }, i) => {
    const before = report.stones[i]!;
    expect(Math.abs(areaMm2 / before.areaMm2 - 1)).toBeLessThan(0.03);
    expect(Math.abs(highlight!.byIndex[1]!.alpha / before.highlight!.byIndex[1]!.alpha - 1)).toBeLessThan(
      0.1,
    );
  });
  expect(again.stones.length).toBe(3);
});

it('refuses an empty tray', async () => {
  const empty = drawTray([]);
  const rigged = { ballMm: null, ballAt: null, rig: report.rig };
  await expect(analyzePhoto(empty, rigged, engines, quietly)).rejects.toMatchObject({ code: 'no-stone' });
});

it('refuses a photo that is far out of focus', async () => {
  const soft = drawTray([TRAY_BALL, ...TRAY_STONES], { blurPx: 6 });
  await expect(analyzePhoto(soft, withBall, engines, quietly)).rejects.toMatchObject({
    code: 'out-of-focus',
  });
});

it('stops when its watcher throws', async () => {
  const stopped: string[] = [];
  const watch = (stage: string) => {
    stopped.push(stage);
    if (stage === 'stones') throw new DOMException('Stopped by the person.', 'AbortError');
  };
  const rigged = { ballMm: null, ballAt: null, rig: report.rig };
  await expect(analyzePhoto(photo, rigged, engines, watch)).rejects.toThrow('Stopped by the person.');
  expect(stopped).toEqual(['ball', 'stones']);
});
