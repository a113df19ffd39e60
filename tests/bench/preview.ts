/**
 * Times the looks at the live picture in Node, with the same code as in the page: `npm run bench:preview`. Each sample
 * photo is made a frame of 1280 × 720, tray added at its sides, and looked at as while framing: ball followed, its lamp
 * checked as in one frame of four, ball searched everywhere, and with stones outlined. At rest the stones are outlined now and then, and in the other frames
 * their outlines are those of before (`camera/framing.ts`). Prints frames a second (median), what takes the time, and what is
 * found, and exits with 1 when the target is missed.
 */
import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { ballChecks } from '../../src/analysis/ballChecks';
import { findStones } from '../../src/analysis/findStones';
import { lampSide, rigOf } from '../../src/analysis/locateTray';
import { readBallAgain } from '../../src/analysis/readBall';
import { refuseBlindPhoto } from '../../src/analysis/refuseBlindPhoto';
import { stoneShape } from '../../src/analysis/stoneShape';
import { frameLight } from '../../src/camera/frameLight';
import { CHECK_LAMP_EVERY, OUTLINE_EVERY } from '../../src/camera/framing';
import type { FrameKnowledge } from '../../src/camera/preview';
import type { Photo } from '../../src/image/photo';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import { type OpenCv, openOpenCv } from '../../src/vision/openCv';
import { lookAtFrame } from '../../src/worker/lookAtFrame';
import { quantile } from './quantile';

const TARGET_PER_S = 8;
const RUNS = 5;
const BALL_MM = 16;
const SIDE_PX = 100;
const SAMPLES = ['coarse-tray', 'mid-tray', 'polished-tray', 'close-up'];

async function frameOf(name: string): Promise<Photo> {
  const { data, info } = await sharp(`sample-images/${name}.jpg`)
    .resize(1280 - 2 * SIDE_PX, 720, { fit: 'fill' })
    .extend({ left: SIDE_PX, right: SIDE_PX, extendWith: 'copy' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { widthPx: info.width, heightPx: info.height, rgba: new Uint8ClampedArray(data) };
}

/** Median time of several runs after one that warms up, ms. */
function timeOf(run: () => unknown): number {
  run();
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return quantile(times, 0.5);
}

/** Time of each part of a look, ms. */
function partsOf(photo: Photo, at: FrameKnowledge['ball'], cv: OpenCv): Record<string, number> {
  const small = shrinkPhoto(photo, 900);
  const reading = at && readBallAgain(photo, small, at);
  if (!reading) return {};
  const { factor, raster } = small;
  const { row, column, radiusPx } = reading.ball;
  const ball = { row: row / factor, column: column / factor, radiusPx: radiusPx / factor };
  const rig = rigOf(reading, BALL_MM);
  const leastPx = Math.PI * (2 / (rig.mmPerPx * factor)) ** 2;
  const pieces = findStones(cv, raster, ball, lampSide(rig), leastPx);
  return {
    shrink: timeOf(() => shrinkPhoto(photo, 900)),
    'read ball': timeOf(() => readBallAgain(photo, small, at)),
    'focus of edges': timeOf(() => refuseBlindPhoto(photo, raster, false)),
    exposure: timeOf(() => frameLight(raster, reading.lamp)),
    'lamp and second lights': timeOf(() => ballChecks(photo, reading)),
    'find stones': timeOf(() => findStones(cv, raster, ball, lampSide(rig), leastPx)),
    'round outlines': timeOf(() => pieces.map((piece) => stoneShape(cv, piece, factor))),
  };
}

const cv = await openOpenCv();
const kinds = ['followed', 'lamp checked', 'searched', 'outlined'] as const;
const all = new Map<string, number[]>();
const keep = (what: string, ms: number) => all.set(what, [...(all.get(what) ?? []), ms]);
for (const name of SAMPLES) {
  const photo = await frameOf(name);
  const known = JSON.parse(readFileSync(`sample-images/${name}.json`, 'utf8'));
  const look = { ballMm: BALL_MM, rig: null, ball: null, outline: false, checkLamp: false };
  const seen = lookAtFrame(photo, { ...look, outline: true }, cv);
  const at = seen.ball;
  console.log(
    `${name}: ball ${at ? 'seen' : 'MISSED'}, stones ${seen.stones?.length ?? 0} of ${known.stones.length}`,
  );
  keep(
    'followed',
    timeOf(() => lookAtFrame(photo, { ...look, ball: at }, cv)),
  );
  keep(
    'lamp checked',
    timeOf(() => lookAtFrame(photo, { ...look, ball: at, checkLamp: true }, cv)),
  );
  keep(
    'searched',
    timeOf(() => lookAtFrame(photo, look, cv)),
  );
  keep(
    'outlined',
    timeOf(() => lookAtFrame(photo, { ...look, ball: at, outline: true }, cv)),
  );
  for (const [part, ms] of Object.entries(partsOf(photo, at, cv))) keep(part, ms);
}

const medianOf = (what: string) => quantile(all.get(what) ?? [], 0.5);
console.log(`\nframes of 1280 × 720, median of ${SAMPLES.length} samples`);
for (const kind of kinds)
  console.log(`${kind.padEnd(12)} ${(1000 / medianOf(kind)).toFixed(1).padStart(5)} frames/s`);
console.log('\nframes/s with outlines, on average');
const followedMs =
  medianOf('followed') + (medianOf('lamp checked') - medianOf('followed')) / CHECK_LAMP_EVERY;
/** One frame is outlined anew after so many in which the ball is followed. */
const withOutlines = (after: number) => (1000 * (after + 1)) / (after * followedMs + medianOf('outlined'));
const situations = {
  'camera moved': 1000 / followedMs,
  'at rest': withOutlines(OUTLINE_EVERY.atLeast),
  'at rest, stones moved': withOutlines(OUTLINE_EVERY.changed),
};
for (const [what, perS] of Object.entries(situations)) {
  const verdict = perS >= TARGET_PER_S ? 'met' : `NOT MET, target ${TARGET_PER_S}`;
  console.log(`${what.padEnd(22)} ${perS.toFixed(1).padStart(5)}  ${verdict}`);
}
console.log('\npart of a look, ms');
for (const part of [...all.keys()].filter((what) => !kinds.some((kind) => kind === what))) {
  console.log(`${part.padEnd(24)} ${medianOf(part).toFixed(0).padStart(5)}`);
}
process.exitCode = Object.values(situations).every((perS) => perS >= TARGET_PER_S) ? 0 : 1;
