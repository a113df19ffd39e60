import { analyzeShots } from '../../src/analysis/analyzeShots';
import type { PhotoReport } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { Refusal } from '../../src/image/notice';
import type { Photo } from '../../src/image/photo';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';
import type { Engines } from '../../src/vision/openEngines';
import { glossBaselines } from './glossBaselines';
import {
  type GlossPhotoRow,
  type GlossRow,
  glossReading,
  leastAlpha,
  trueRow,
  warningsBeside,
} from './glossRow';
import { type GlossPhoto, type GlossTruth, readGlossTruth } from './glossTruth';
import { matchStones } from './matchStones';

/** Index of the perfect polish that the two plain scores are measured against: quartz, as for an unknown stone. */
const PLAIN_INDEX = 1.54;

/** One photo measured as the page does, beside its truth. */
export interface GlossResult {
  readonly photo: GlossPhotoRow;
  readonly rows: readonly GlossRow[];
}

/** Analyzes one photo and sets every true stone beside what was said about it. */
export async function readGlossPhoto(job: GlossPhoto, engines: Engines): Promise<GlossResult> {
  const truth = readGlossTruth(job);
  const started = performance.now();
  const measured = await measure(job, truth, engines).catch((error: unknown) => {
    if (error instanceof Refusal) return error.code;
    throw error;
  });
  const isRefused = typeof measured === 'string';
  return {
    photo: {
      part: truth.part ?? null,
      scene: job.scene,
      variant: job.variant,
      photoPath: job.photoPath,
      faults: truth.faults ?? [],
      refused: isRefused ? measured : null,
      warnings: isRefused ? [] : measured.report.warnings.map(({ code }) => code),
      trueStones: truth.stones.length,
      foundStones: isRefused ? 0 : measured.report.stones.length,
      seconds: (performance.now() - started) / 1000,
    },
    rows: isRefused ? unreadRows(job, truth) : readRows(job, truth, measured.photo, measured.report),
  };
}

/** Decodes and analyzes; throws the Refusal of either. */
async function measure(job: GlossPhoto, truth: GlossTruth, engines: Engines) {
  const photo = await decodeFile(job.photoPath);
  const options = { ballMm: truth.ball.diameterMm, ballAt: null, rig: null };
  const darker = job.darkerPath === null ? [] : [await decodeFile(job.darkerPath)];
  return { photo, report: await analyzeShots([photo, ...darker], options, engines, () => {}) };
}

const UNREAD = {
  isFound: false,
  reading: null,
  alphaAtLeast: null,
  warnings: [],
  gradientScore: null,
  areaScore: null,
};

function unreadRows(job: GlossPhoto, truth: GlossTruth): GlossRow[] {
  return truth.stones.map((stone) => ({ ...trueRow(job, truth, stone), ...UNREAD }));
}

function readRows(job: GlossPhoto, truth: GlossTruth, photo: Photo, report: PhotoReport): GlossRow[] {
  const matches = matchStones(report.stones, truth.stones, photo.widthPx, photo.heightPx);
  const mirrorRadiance = report.rig.lampRadiance * fresnelReflectance(PLAIN_INDEX, 1);
  return truth.stones.map((stone) => {
    const row = trueRow(job, truth, stone);
    const match = matches.find((one) => one.truth.id === stone.id);
    if (!match) return { ...row, ...UNREAD };
    const { highlight, outline } = match.stone;
    return {
      ...row,
      row: highlight?.row ?? row.row,
      column: highlight?.column ?? row.column,
      isFound: true,
      reading: glossReading(match.stone, stone.n),
      alphaAtLeast: leastAlpha(match.stone, stone.n),
      skin: match.stone.skin ?? null,
      warnings: warningsBeside(report, match.stone),
      ...glossBaselines(photo, outline, mirrorRadiance),
    };
  });
}
