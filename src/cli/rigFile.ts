import { readFile } from 'node:fs/promises';
import type { Rig, RigScene } from '../analysis/report';
import { Misuse } from './misuse';
import { writeFileOrSay } from './writeFileOrSay';

/**
 * Reads a rig saved by `writeRig`; files saved before the tray was kept with it are read without a scene.
 *
 * @throws Misuse if the file is missing or holds no rig.
 */
export async function readRig(path: string): Promise<Rig> {
  const text = await readFile(path, 'utf8').catch(() => {
    throw new Misuse(`There is no rig file "${path}".`);
  });
  const rig = rigIn(text);
  if (!rig) throw new Misuse(`"${path}" holds no rig: save one with --save-rig from a photo with the ball.`);
  return rig;
}

/** Saves what one photo with the ball told of lamp and camera. */
export function writeRig(path: string, rig: Rig): Promise<void> {
  return writeFileOrSay(path, `${JSON.stringify({ schema: 1, rig }, null, 1)}\n`);
}

function rigIn(text: string): Rig | null {
  try {
    const { schema, rig } = JSON.parse(text) as { schema: unknown; rig: Rig };
    const numbers = [rig.mmPerPx, rig.lampRadiance, rig.sourceSlope, rig.light.angularDiameterDeg];
    const isRig = [...numbers, ...rig.light.direction, rig.blurPx].every(Number.isFinite);
    const isShape = rig.lampTurnRad === null || Number.isFinite(rig.lampTurnRad);
    if (schema !== 1 || !isRig || !isShape || rig.light.direction.length !== 3) return null;
    if (!numbers.every((n) => n > 0) || !isColor(rig.lampColor ?? [1, 1, 1])) return null;
    return rig.scene === undefined || isScene(rig.scene) ? rig : null;
  } catch {
    return null;
  }
}

function isScene({ widthPx, heightPx, tray, shadow }: RigScene): boolean {
  const numbers = [widthPx, heightPx, shadow?.turnDeg ?? 0, shadow?.likeness ?? 0];
  return numbers.every(Number.isFinite) && tray.length === 9 && tray.every(isColor);
}

const isColor = (color: readonly number[]) => color.length === 3 && color.every(Number.isFinite);
