import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stoneGloss } from '../../src/analysis/stoneGloss';
import { finishOf } from '../../src/grading/finish';
import { glossOf } from '../../src/grading/gloss';
import { luminance } from '../../src/image/luminance';
import type { Photo } from '../../src/image/photo';
import type { Mask, Raster } from '../../src/image/raster';
import { ballLamp } from '../../src/measure/ballLamp';
import type { Circle } from '../../src/measure/circleFit';
import type { HighlightLight } from '../../src/measure/highlightScene';
import { combine, dot, normalize, type Vector } from '../../src/optics/vector';
import { brighterThan, realPicture } from './realPicture';
import type { Verdict } from './realVerdict';

const LIGHTS = 6;
const SHINY = ['chrome', 'owl'] as const;
const MATTE = ['gray', 'buddha', 'rock', 'horse'] as const;
/** Printed for the record; no target. */
const OTHERS = ['cat'] as const;
/** The objects stand far from the camera, which looks along z. */
const VIEW: Vector = [0, 0, 1];
/** Diffuse albedo assumed of the gray ball. */
const GRAY_ALBEDO = 0.5;

interface Reading {
  /** Roughness at n = 1.54; infinite when no highlight is claimed. */
  readonly alpha: number;
  readonly text: string;
}

/**
 * Measures seven objects under six lights as if each were a stone, with the functions the page uses.
 *
 * Lamp direction comes from `lights.csv`, lamp size and blur from the chrome ball. Chrome is clipped, so the
 * lamp's radiance is read off the gray ball: its brightest part sends albedo · E / π, E = radiance · solid
 * angle · cosine, with an assumed albedo of 0.5.
 *
 * @param dataFolder - Folder that holds `photometric/`.
 * @returns For each light the order of gloss, and for each matte object whether a highlight was claimed.
 */
export async function photometricVerdicts(dataFolder: string): Promise<Verdict[]> {
  const folder = join(dataFolder, 'photometric');
  const directions = readDirections(join(folder, 'lights.csv'));
  const verdicts: Verdict[] = [];
  for (let k = 0; k < LIGHTS; k++) {
    const light = await lightOf(folder, k, directions[k]!);
    const { lampRadiance, sourceSlope, blurPx } = light;
    const diameterDeg = (4 * Math.atan(sourceSlope) * 180) / Math.PI;
    console.log(
      `    light ${k}: lamp ${diameterDeg.toFixed(1)}° across, radiance ${lampRadiance.toFixed(1)}, blur ${blurPx.toFixed(2)} px`,
    );
    const readings = new Map<string, Reading>();
    for (const name of [...SHINY, ...MATTE, ...OTHERS]) {
      const reading = readingOf(await objectOf(folder, name, k), light);
      readings.set(name, reading);
      console.log(`      ${name.padEnd(7)} ${reading.text}`);
    }
    verdicts.push(...verdictsOf(k, readings));
  }
  return verdicts;
}

function verdictsOf(k: number, readings: ReadonlyMap<string, Reading>): Verdict[] {
  const alpha = (name: string) => readings.get(name)!.alpha;
  const claimed = MATTE.filter((name) => Number.isFinite(alpha(name)));
  const shown = (name: string) => (Number.isFinite(alpha(name)) ? `α ${alpha(name).toFixed(3)}` : 'none');
  return [
    {
      what: `light ${k}: gloss of chrome > owl > gray`,
      measured: ['chrome', 'owl', 'gray'].map((name) => `${name} ${shown(name)}`).join(', '),
      target: 'in this order',
      met: alpha('chrome') < alpha('owl') && alpha('owl') < alpha('gray'),
    },
    {
      what: `light ${k}: highlights claimed on ${MATTE.join(', ')}`,
      measured: claimed.length === 0 ? 'none' : claimed.map((name) => `${name} ${shown(name)}`).join(', '),
      target: 'none',
      met: claimed.length === 0,
    },
  ];
}

function readDirections(path: string): Vector[] {
  const [, ...lines] = readFileSync(path, 'utf8').trim().split('\n');
  return lines.map((line) => {
    const [x, y, z] = line.split(',').slice(-3).map(Number);
    return normalize([x!, y!, z!]);
  });
}

interface Shown {
  readonly picture: Raster;
  readonly mask: Mask;
}

async function objectOf(folder: string, name: string, light: number): Promise<Shown> {
  const photo = await realPicture(join(folder, `${name}.${light}.png`));
  const mask = brighterThan(await realPicture(join(folder, `${name}.mask.png`)), 127);
  return { picture: asLinear(photo), mask };
}

/**
 * These pictures hold linear light, no tone curve: on the gray ball, known to be matte, the values grow with the
 * cosine to the lamp to the power 0.99 under light 0 and 0.73 to 0.89 under the others, which look past fill
 * light; encoded by sRGB they would grow with the cosine to the power 0.45.
 */
function asLinear({ widthPx, heightPx, rgba }: Photo): Raster {
  const data = new Float32Array(3 * widthPx * heightPx);
  for (let i = 0, to = 0; i < rgba.length; i++) if (i % 4 !== 3) data[to++] = rgba[i]! / 255;
  return { width: widthPx, height: heightPx, channels: 3, data };
}

async function lightOf(folder: string, k: number, direction: Vector): Promise<HighlightLight> {
  const chrome = await objectOf(folder, 'chrome', k);
  const lamp = ballLamp(chrome.picture, circleOf(chrome.mask), VIEW);
  if (!lamp) throw new Error(`The chrome ball shows no lamp under light ${k}.`);
  const gray = await objectOf(folder, 'gray', k);
  const lampRadiance = radianceFrom(gray, lamp.sourceSlope, direction);
  const half = normalize(combine([1, direction], [1, VIEW]));
  return {
    lampRadiance,
    sourceSlope: lamp.sourceSlope,
    lampTurnRad: lamp.turnRad,
    blurPx: lamp.blurPx,
    half,
  };
}

/** The circle of a ball's mask: its center of gravity and the radius of its area. */
function circleOf(mask: Mask): Circle {
  let [count, rows, columns] = [0, 0, 0];
  mask.data.forEach((inside, i) => {
    if (!inside) return;
    count++;
    rows += Math.floor(i / mask.width);
    columns += i % mask.width;
  });
  return { row: rows / count, column: columns / count, radiusPx: Math.sqrt(count / Math.PI) };
}

/** Radiance of the lamp that makes the gray ball as bright as it is, taken over its brightest tenth. */
function radianceFrom({ picture, mask }: Shown, sourceSlope: number, direction: Vector): number {
  const ball = circleOf(mask);
  const brightness = luminance(picture).data;
  const ratios: { value: number; cosine: number }[] = [];
  mask.data.forEach((inside, i) => {
    const x = ((i % mask.width) - ball.column) / ball.radiusPx;
    const y = (ball.row - Math.floor(i / mask.width)) / ball.radiusPx;
    if (!inside || x * x + y * y > 0.9) return;
    const cosine = dot([x, y, Math.sqrt(1 - x * x - y * y)], direction);
    ratios.push({ value: brightness[i]!, cosine });
  });
  ratios.sort((a, b) => b.value - a.value);
  const bright = ratios.slice(0, Math.ceil(ratios.length / 10));
  const mean = (key: 'value' | 'cosine') => bright.reduce((sum, one) => sum + one[key], 0) / bright.length;
  const solidAngle = 2 * Math.PI * (1 - Math.cos(2 * Math.atan(sourceSlope)));
  return (mean('value') * Math.PI) / (GRAY_ALBEDO * solidAngle * mean('cosine'));
}

function readingOf({ picture, mask }: Shown, light: HighlightLight): Reading {
  const crop = { stone: picture, mask, factor: 1, toPhoto: (r: number, c: number) => [r, c] as const };
  const { highlight, bound } = stoneGloss(crop, light);
  if (!highlight) {
    const least = bound?.byIndex[1]?.alphaAtLeast ?? 0;
    return { alpha: Number.POSITIVE_INFINITY, text: `no highlight, α at least ${least.toFixed(3)}` };
  }
  const { alpha, alphaLow, alphaHigh, gu60 } = glossOf(highlight.byIndex, null);
  const interval = `[${alphaLow.toFixed(3)}, ${alphaHigh.toFixed(3)}]`;
  const place = `at row ${highlight.row.toFixed(0)}, column ${highlight.column.toFixed(0)}`;
  return { alpha, text: `α ${alpha.toFixed(3)} ${interval} ${finishOf(gu60)} ${place}` };
}
