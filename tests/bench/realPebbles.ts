import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { PhotoReport, Rig, StoneReport } from '../../src/analysis/report';
import { glossOf } from '../../src/grading/gloss';
import { fillPolygon } from '../../src/image/fillPolygon';
import { Refusal } from '../../src/image/notice';
import type { Engines } from '../../src/vision/openEngines';
import { brighterThan, overlapOf, realPicture } from './realPicture';
import type { Verdict } from './realVerdict';

const TARGET = { found: 0.98, overlap: 0.9, shiny: 0.02 };
/** Darker than this is the black that the scans were cut out onto, 0 to 255. */
const BLACK = 8;
/** A gloss reading from which a stone is called gloss or mirror: the lower end of "gloss". */
const SHINY = ['gloss', 'mirror'];

/**
 * The scans hold no ball and state no scale, so a fixed rig is assumed: one lamp 12° across, 30° off the
 * camera, above; a matte white sheet at the camera's limit, so that π = lamp radiance · solid angle · cos 30°;
 * 5 pixels a millimeter.
 */
const LAMP = { diameterDeg: 12, offAxisDeg: 30 };

/**
 * Runs the whole analysis on each scanned pebble, all of them unpolished.
 *
 * @param dataFolder - Folder that holds `pebbles/*.png`: one pebble on black each.
 * @returns How many outlines were found as one piece, and how many pebbles were called gloss or mirror.
 */
export async function pebbleVerdicts(dataFolder: string, engines: Engines): Promise<Verdict[]> {
  const folder = join(dataFolder, 'pebbles');
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.png'))
    .sort();
  const overlaps: number[] = [];
  let shiny = 0;
  for (const name of names) {
    const photo = await realPicture(join(folder, name));
    const stones = await stonesOf(photo, engines);
    const truth = brighterThan(photo, BLACK);
    const [first] = stones;
    const overlap = first ? overlapOf(fillPolygon(first.outline, truth.width, truth.height), truth) : 0;
    const isFound = stones.length === 1 && overlap >= TARGET.overlap;
    const finishes = stones.map(finishOf);
    if (finishes.some(({ finish }) => SHINY.includes(finish))) shiny++;
    overlaps.push(isFound ? overlap : 0);
    console.log(
      `    ${name} ${stones.length} pieces, overlap ${overlap.toFixed(3)}${isFound ? '' : ' NOT FOUND'}, ${finishes.map(({ text }) => text).join('; ')}`,
    );
  }
  const found = overlaps.filter((overlap) => overlap > 0).sort((a, b) => a - b);
  const share = (count: number) => `${count} of ${names.length}`;
  return [
    {
      what: `pebbles found in one piece, overlap ≥ ${TARGET.overlap}`,
      measured: `${share(found.length)}, median overlap ${found[found.length >> 1]?.toFixed(3)}`,
      target: `≥ ${100 * TARGET.found} %`,
      met: found.length >= TARGET.found * names.length,
    },
    {
      what: 'pebbles called gloss or mirror',
      measured: share(shiny),
      target: `≤ ${100 * TARGET.shiny} %`,
      met: shiny <= TARGET.shiny * names.length,
    },
  ];
}

async function stonesOf(photo: Parameters<typeof analyzePhoto>[0], engines: Engines) {
  const options = { ballMm: null, ballAt: null, rig: assumedRig() };
  try {
    const report: PhotoReport = await analyzePhoto(photo, options, engines, () => {});
    return report.stones;
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function assumedRig(): Rig {
  const radians = (deg: number) => (deg * Math.PI) / 180;
  const off = radians(LAMP.offAxisDeg);
  const solidAngle = 2 * Math.PI * (1 - Math.cos(radians(LAMP.diameterDeg / 2)));
  return {
    mmPerPx: 0.2,
    light: { direction: [0, Math.sin(off), Math.cos(off)], angularDiameterDeg: LAMP.diameterDeg },
    lampRadiance: Math.PI / (solidAngle * Math.cos(off)),
    sourceSlope: Math.tan(radians(LAMP.diameterDeg / 4)),
    lampTurnRad: null,
    blurPx: 0.7,
  };
}

function finishOf({ highlight }: StoneReport): { finish: string; text: string } {
  if (!highlight) return { finish: 'none', text: 'no highlight' };
  const { alpha, alphaLow, alphaHigh, finish } = glossOf(highlight.byIndex, null);
  const interval = `[${alphaLow.toFixed(3)}, ${alphaHigh.toFixed(3)}]`;
  return { finish, text: `α ${alpha.toFixed(3)} ${interval} ${finish}` };
}
