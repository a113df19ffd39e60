import { DEFAULT_LIMITS, type Limits, type StepLimits } from '../grading/limits';
import { MATERIAL_NAMES } from '../grading/materials';
import { STEPS } from '../grading/steps';
import { checkedPlanSettings, FIRST_PLAN_SETTINGS } from '../recipes/planSettings';
import { checkedUnits, FIRST_UNITS } from '../recipes/units';
import { checkedLanguage } from '../texts/languages';
import type { Settings } from './settings';

type Storing = Pick<Storage, 'getItem' | 'setItem'> | null;

const KEY = 'glintgrade settings 1';

/** Smallest and largest reference ball that can be set, mm. */
export const BALL_RANGE_MM = [4, 60] as const;

/** What a first visit starts with: a coarse check of a mixed tray with the usual ball. */
export const FIRST_SETTINGS: Settings = {
  step: 'coarse',
  material: null,
  limits: DEFAULT_LIMITS,
  ballMm: 16,
  noBall: false,
  rig: null,
  rigDay: null,
  cautionsSeen: false,
  savedUpTo: null,
  plan: FIRST_PLAN_SETTINGS,
  units: FIRST_UNITS,
  language: null,
};

const KEPT = Object.keys(FIRST_SETTINGS) as (keyof Settings)[];

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** Takes over every limit that is a sound number where the usual limits have one. */
function checkedLimits(kept: unknown): Limits {
  const steps = STEPS.map((step) => {
    const usual = DEFAULT_LIMITS[step];
    const own: Record<string, unknown> = isRecord(kept) && isRecord(kept[step]) ? kept[step] : {};
    const entries = Object.entries(usual).map(([name, value]) => {
      const wished = own[name];
      const sound = value !== null && typeof wished === 'number' && Number.isFinite(wished) && wished >= 0;
      return [name, sound ? wished : value];
    });
    return [step, Object.fromEntries(entries) as unknown as StepLimits];
  });
  return Object.fromEntries(steps) as Limits;
}

function checkedRig(kept: unknown): Settings['rig'] {
  if (!isRecord(kept) || !isRecord(kept.light)) return null;
  const numbers = [
    kept.mmPerPx,
    kept.lampRadiance,
    kept.sourceSlope,
    kept.blurPx,
    kept.light.angularDiameterDeg,
  ];
  const sound = numbers.every((value) => typeof value === 'number' && Number.isFinite(value) && value >= 0);
  const lamp = kept.lampTurnRad === null || typeof kept.lampTurnRad === 'number';
  if (!sound || !lamp || !Array.isArray(kept.light.direction)) return null;
  const { scene, ...rest } = kept;
  return (isScene(scene) ? kept : rest) as unknown as Settings['rig'];
}

/** Whether a kept scene can be compared with; a rig without one is still good for the ball's part. */
function isScene(scene: unknown): boolean {
  if (!isRecord(scene) || !Array.isArray(scene.tray) || scene.tray.length !== 9) return false;
  const numbers = [scene.widthPx, scene.heightPx, ...scene.tray.flat()];
  return numbers.every((value) => typeof value === 'number' && Number.isFinite(value));
}

/** Takes over what is still valid; anything else falls back to the first settings. */
function checked(kept: Record<string, unknown>): Settings {
  const { ballMm } = kept;
  const rig = checkedRig(kept.rig);
  const [least, most] = BALL_RANGE_MM;
  return {
    step: STEPS.find((known) => known === kept.step) ?? FIRST_SETTINGS.step,
    material: MATERIAL_NAMES.find((known) => known === kept.material) ?? FIRST_SETTINGS.material,
    limits: checkedLimits(kept.limits),
    ballMm: typeof ballMm === 'number' && ballMm >= least && ballMm <= most ? ballMm : FIRST_SETTINGS.ballMm,
    noBall: kept.noBall === true && rig !== null,
    rig,
    rigDay: rig !== null && typeof kept.rigDay === 'string' ? kept.rigDay : null,
    cautionsSeen: kept.cautionsSeen === true,
    savedUpTo: typeof kept.savedUpTo === 'string' ? kept.savedUpTo : null,
    plan: checkedPlanSettings(kept.plan),
    units: checkedUnits(kept.units),
    language: checkedLanguage(kept.language),
  };
}

/** What was chosen on earlier visits; the first settings when nothing, or nothing readable, was kept. */
export function readSettings(storage: Storing): Settings {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(KEY) ?? 'null');
    return isRecord(kept) ? checked(kept) : FIRST_SETTINGS;
  } catch {
    return FIRST_SETTINGS;
  }
}

/** Keeps the settings for later visits; a full or forbidden storage is no reason to stop. */
export function writeSettings(storage: Storing, settings: Settings): void {
  const kept = Object.fromEntries(KEPT.map((name) => [name, settings[name]]));
  try {
    storage?.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Nothing is lost but the convenience.
  }
}
