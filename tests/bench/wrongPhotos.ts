import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { PhotoReport, PixelPoint, Rig } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { gradeStone } from '../../src/grading/gradeStone';
import type { Action } from '../../src/grading/opinion';
import type { Step } from '../../src/grading/steps';
import { Refusal } from '../../src/image/notice';
import type { Photo } from '../../src/image/photo';
import type { Engines } from '../../src/vision/openEngines';

export const WRONG_SETS = ['development', 'test'] as const;
export type WrongSet = (typeof WRONG_SETS)[number];

/** As photographed, the ball taken out, and the same with the rig of the set's good photo remembered. */
export const WRONG_VARIANTS = ['ball', 'bare', 'rig'] as const;
export type WrongVariant = (typeof WRONG_VARIANTS)[number];

const FOLDER = fileURLToPath(new URL('wrong-photos', import.meta.url));
const BALL_MM = 16;
const STEPS: readonly Step[] = ['coarse', 'medium', 'prepolish', 'polish'];
/** The ball and its shadow lie within so many of its radii. */
const BALL_REACH = 2.3;

interface Places {
  /** Row, column and radius, px. */
  readonly ball: readonly [number, number, number] | null;
  /** Stones well photographed; everything else must not go on. */
  readonly stones: readonly (readonly [number, number, number])[];
}

interface SceneTruth {
  readonly shows: string;
  /** Refusals and warnings, any of which marks the photo; none where nothing may be said. */
  readonly must: readonly string[];
}

/** What was said about one thing found. */
export interface JudgedThing {
  readonly id: number;
  readonly center: PixelPoint;
  /** Whether it is a stone well photographed. */
  readonly isReal: boolean;
  /** The verdict at each step, material unknown. */
  readonly actions: Readonly<Record<Step, Action>>;
  /** What was said against it; null for nothing. */
  readonly unlike: string | null;
}

export interface JudgedPhoto {
  /** Code of the refusal; null when it was graded. */
  readonly refused: string | null;
  readonly warnings: readonly string[];
  readonly things: readonly JudgedThing[];
  /** Things that are no stone well photographed and may go on or are called finished at some step. */
  readonly letPass: readonly JudgedThing[];
  /** True when one of the codes that must be said was said, or there are none. */
  readonly isMarked: boolean;
  readonly report: PhotoReport | null;
}

/** Names of all scenes, and what they show. */
export const wrongTruth = (): Readonly<Record<string, SceneTruth>> =>
  JSON.parse(readFileSync(join(FOLDER, 'truth.json'), 'utf8'));

/** A scene's photo as a variant shows it; null where the scene has no ball to take out. */
export async function wrongPhoto(set: WrongSet, name: string, variant: WrongVariant): Promise<Photo | null> {
  const path = join(FOLDER, set, `${name}.jpg`);
  if (!existsSync(path)) return null;
  const photo = await decodeFile(path);
  const { ball } = placesOf(set, name);
  if (!ball) return variant === 'ball' ? null : photo;
  if (variant === 'ball') return photo;
  return withoutBall(photo, await decodeFile(join(FOLDER, set, 'empty.jpg')), ball);
}

/** The rig that the set's good photo tells; lamp and camera are the same in the whole set. */
export async function rigOfSet(set: WrongSet, engines: Engines): Promise<Rig> {
  const photo = await decodeFile(join(FOLDER, set, 'good.jpg'));
  const options = { ballMm: BALL_MM, ballAt: null, rig: null };
  return (await analyzePhoto(photo, options, engines, () => {})).rig;
}

/** Measures and judges one photo, with the rig when one is given. */
export async function judgeWrong(
  photo: Photo,
  about: { readonly set: WrongSet; readonly name: string; readonly rig: Rig | null },
  engines: Engines,
): Promise<JudgedPhoto> {
  const { must } = wrongTruth()[about.name]!;
  const said = (codes: readonly string[]) => must.length === 0 || codes.some((code) => must.includes(code));
  const options = { ballMm: BALL_MM, ballAt: null, rig: about.rig };
  const report = await analyzePhoto(photo, options, engines, () => {}).catch((error: unknown) => {
    if (error instanceof Refusal) return error.code;
    throw error;
  });
  if (typeof report === 'string') {
    return { refused: report, warnings: [], things: [], letPass: [], isMarked: said([report]), report: null };
  }
  const places = placesOf(about.set, about.name);
  const things = judgedThings(report, places);
  const letPass = things.filter(({ isReal, actions }) => !isReal && Object.values(actions).some(goesOn));
  const warnings = report.warnings.map(({ code }) => code);
  return { refused: null, warnings, things, letPass, isMarked: said(warnings), report };
}

const goesOn = (action: Action) => action === 'advance' || action === 'finished';

function judgedThings(report: PhotoReport, { stones: real }: Places): JudgedThing[] {
  return report.stones.map((stone) => {
    const [row, column] = stone.center;
    const actions = Object.fromEntries(
      STEPS.map((step) => {
        const settings = { step, material: null, limits: null, mmPerPx: report.mmPerPx };
        return [step, gradeStone(stone, settings).verdict.action];
      }),
    ) as Record<Step, Action>;
    const isReal = real.some(([r, c, radius]) => Math.hypot(r - row, c - column) < radius);
    return { id: stone.id, center: stone.center, isReal, actions, unlike: stone.unlike ?? null };
  });
}

/** Where ball and real stones of a wrong photo lie, as it was rendered. */
export function placesOf(set: WrongSet, name: string): Places {
  const path = join(FOLDER, set, `${name === 'screen' ? 'good' : name}.json`);
  if (name === 'screen-bare' || !existsSync(path)) return { ball: null, stones: [] };
  const places = JSON.parse(readFileSync(path, 'utf8')) as Places;
  return name === 'screen' ? { ...places, stones: [] } : places;
}

/** The ball and its shadow replaced by the empty tray, as bright as the tray around them. */
function withoutBall(
  photo: Photo,
  empty: Photo,
  [row, column, radius]: readonly [number, number, number],
): Photo {
  const { widthPx, heightPx } = photo;
  const rgba = new Uint8ClampedArray(photo.rgba);
  const reach = BALL_REACH * radius;
  const ratio = brightness(photo, row, column, reach) / brightness(empty, row, column, reach);
  for (let r = Math.max(0, Math.floor(row - reach)); r < Math.min(heightPx, row + reach); r++) {
    for (let c = Math.max(0, Math.floor(column - reach)); c < Math.min(widthPx, column + reach); c++) {
      if (Math.hypot(r - row, c - column) > reach) continue;
      const i = 4 * (r * widthPx + c);
      for (let k = 0; k < 3; k++) rgba[i + k] = ratio * empty.rgba[i + k]!;
    }
  }
  return { ...photo, rgba };
}

/** Median green level on a ring around the ball. */
function brightness({ rgba, widthPx, heightPx }: Photo, row: number, column: number, radius: number): number {
  const levels: number[] = [];
  for (let k = 0; k < 360; k++) {
    const r = Math.round(row + radius * Math.sin((k * Math.PI) / 180));
    const c = Math.round(column + radius * Math.cos((k * Math.PI) / 180));
    if (r >= 0 && c >= 0 && r < heightPx && c < widthPx) levels.push(rgba[4 * (r * widthPx + c) + 1]!);
  }
  return levels.sort((a, b) => a - b)[levels.length >> 1] ?? 1;
}
