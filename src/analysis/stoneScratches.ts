import { boxOfPlaces } from '../image/boxOfPlaces';
import { cropLinear } from '../image/cropLinear';
import { fillPolygon } from '../image/fillPolygon';
import { luminance } from '../image/luminance';
import type { Photo } from '../image/photo';
import { addedLight } from '../measure/addedLight';
import { type StraightMark, straightMarks } from '../measure/straightMarks';
import { FLAW_CLASSES } from '../vision/openFlawNet';
import type { FlawPlanes } from './flawPlanes';
import type { FlawReport, PixelPoint } from './report';

/** Shorter lines are grain, mm. */
const LEAST_MM = 1.5;
/** Lines with a lower peak share are left out. */
const LEAST_PEAK = 0.12;
/** Peak share from which a line that could be a groove counts: one such was found on 164 stones of development trays without scratches. */
const SURE_PEAK = 0.22;
/**
 * Light that a groove sends to the camera, as a share of what a white surface facing the lamp would: rough walls that
 * lean 10° to 35° both ways mirror 0.03 to 0.12 of it, away from the stone's highlight (`lobeShare` with a roughness of
 * 0.3). Median of the scratches found on three development trays: 0.105; nine of ten lie within a factor of two.
 */
export const GROOVE_LIGHT = 0.105;
/** No grain of a tumbler leaves a wider groove, mm: half of a 60 grit's largest grains, and the doubt of the width. What looks wider is a vein or a band. */
const MOST_WIDTH_MM = 0.25;
const MARGIN_PX = 3;

/** What a stone's scratches are measured with. */
export interface ScratchScene {
  readonly photo: Photo;
  readonly outline: readonly PixelPoint[];
  readonly mmPerPx: number;
  /** Light that a white surface facing the lamp sends back, linear; null or left out when nobody knows. */
  readonly white?: number | null | undefined;
}

/**
 * Finds fresh scratches: straight runs in the network's map whatever their direction, and how wide the grooves are by
 * the light that they add. A line that takes light away, or adds more than any groove could, is the stone's pattern.
 *
 * @param planes - The stone as the network saw it.
 * @param shares - The network's map.
 * @param cosine - Cosine between surface and camera by place.
 * @returns Scratches, in no order; without `widthMm` when the lamp is not known.
 */
export function stoneScratches(
  planes: FlawPlanes,
  shares: Float32Array,
  scene: ScratchScene,
  cosine: (place: number) => number,
): FlawReport[] {
  const size = planes.mask.data.length;
  const index = FLAW_CLASSES.indexOf('scratch');
  const marks = straightMarks(shares.subarray(index * size, (index + 1) * size), planes.mask).filter(
    ({ peak, lengthPlaces }) => peak >= LEAST_PEAK && lengthPlaces * planes.mmPerPlace >= LEAST_MM,
  );
  if (marks.length === 0) return [];
  const widthOf = grooveWidth(scene);
  return marks.flatMap((mark): FlawReport[] => {
    const ends = [planes.toPhoto(...mark.ends[0]), planes.toPhoto(...mark.ends[1])] as const;
    const widthMm = widthOf(ends);
    if (widthMm !== null && (widthMm <= 0 || widthMm > MOST_WIDTH_MM)) return [];
    const middle = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2] as const;
    return [
      {
        kind: 'scratch',
        row: middle[0],
        column: middle[1],
        lengthMm: mark.lengthPlaces * planes.mmPerPlace * stretchOf(mark, planes, cosine),
        path: [ends[0], middle, ends[1]],
        ...(widthMm === null ? {} : { widthMm }),
        confidence: Math.min(1, (0.5 * mark.peak) / SURE_PEAK),
      },
    ];
  });
}

/** Half of all directions run across the slope, where nothing is foreshortened. */
function stretchOf(
  { ends: [first, last] }: StraightMark,
  { mask }: FlawPlanes,
  cosine: (place: number) => number,
): number {
  const stretches = [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => {
    const row = Math.round(first[0] + share * (last[0] - first[0]));
    const column = Math.round(first[1] + share * (last[1] - first[1]));
    return (1 + 1 / cosine(row * mask.width + column)) / 2;
  });
  return stretches.reduce((sum, one) => sum + one, 0) / stretches.length;
}

/** Reads the width of a groove between two places of the photo; null when the lamp is not known, or too little is seen. */
function grooveWidth({ photo, outline, mmPerPx, white }: ScratchScene) {
  if (!white) return () => null;
  const box = boxOfPlaces(outline, MARGIN_PX, photo);
  const light = luminance(cropLinear(photo, box));
  const inside = outline.map(([row, column]): PixelPoint => [row - box.row, column - box.column]);
  const mask = fillPolygon(inside, light.width, light.height);
  return (ends: readonly [PixelPoint, PixelPoint]): number | null => {
    const [first, last] = ends.map(([row, column]) => [row - box.row, column - box.column] as const);
    const added = addedLight(light, mask, [first!, last!], mmPerPx);
    return added === null ? null : added / white / GROOVE_LIGHT;
  };
}
