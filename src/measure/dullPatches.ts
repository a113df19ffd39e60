import type { HighlightFit, HighlightProblem } from './highlightFit';

/** A place inside the lamp's image that does not mirror the lamp: a pit, frosting, an undercut grain. */
export interface DullPatch {
  /** Middle, pixels of the stone's crop. */
  readonly row: number;
  readonly column: number;
  /** Area as seen from the camera, pixels of the crop. */
  readonly areaPx: number;
  /** Light that its darkest place mirrors, share of what the skin around it does, 0 to 1. */
  readonly share: number;
}

/**
 * The stone's own light comes on top of what it mirrors, so that no color makes a place darker than the lamp's image
 * alone; darker than this share of it and the skin does not mirror.
 */
const DARKER_THAN = 0.6;
/** A patch is sought where the image has this share of its height, and must reach in to where it has the second. */
const IMAGE = { rim: 0.3, inside: 0.7 };
/**
 * What a patch must be: of the eight directions from its pixels so many lead to a bright place, and its darkest place is
 * left so much light at most. A dent of the outline has up to five such directions; on the development scenes pits left
 * at most 0.06 of the light, facets and waves that only bend the image 0.1 and more.
 */
const ENCLOSED = [
  { directions: 7, mostShare: 0.25 },
  { directions: 5, mostShare: 0.08 },
];
/** Fewest window pixels of a patch: a single one may be noise. */
const FEWEST_PIXELS = 2;

/**
 * Finds dull patches inside the lamp's image on a stone.
 *
 * @param problem - The window of the highlight.
 * @param fit - Its fit.
 * @returns Patches, the largest first; none on a stone so dull or pale that its own light outshines the image.
 */
export function dullPatches({ window }: HighlightProblem, fit: HighlightFit): DullPatch[] {
  const { width, values, use } = window;
  const highest = fit.lobe.reduce((most, value) => Math.max(most, value), 0);
  const isImage = (i: number) => fit.lobe[i]! >= IMAGE.rim * highest;
  const isDark = (i: number) =>
    use[i] === 1 && isImage(i) && values[i]! < DARKER_THAN * fit.amplitude * fit.lobe[i]!;
  const isBright = (i: number) => isImage(i) && use[i] !== 0 && !isDark(i);
  const seen = new Uint8Array(values.length);
  const patches: DullPatch[] = [];
  values.forEach((_, first) => {
    if (seen[first] || !isDark(first)) return;
    const patch = spread(first, isDark, seen, width);
    const isInside = patch.some((i) => fit.lobe[i]! >= IMAGE.inside * highest);
    const share = Math.min(...patch.map((i) => (values[i]! - fit.body[i]!) / (fit.amplitude * fit.lobe[i]!)));
    if (!isInside || patch.length < FEWEST_PIXELS) return;
    const around = enclosure(patch, window, isBright);
    if (!ENCLOSED.some(({ directions, mostShare }) => around >= directions && share <= mostShare)) return;
    const middle = (of: (i: number) => number) => patch.reduce((sum, i) => sum + of(i), 0) / patch.length;
    patches.push({
      row: window.row + middle((i) => Math.floor(i / width)) * window.stepPx,
      column: window.column + middle((i) => i % width) * window.stepPx,
      areaPx: patch.length * window.stepPx ** 2,
      share: Math.max(0, share),
    });
  });
  return patches.sort((a, b) => b.areaPx - a.areaPx);
}

/** Mean over a patch of how many of the eight directions lead to a bright pixel. */
function enclosure(
  patch: readonly number[],
  { width, height }: { readonly width: number; readonly height: number },
  isBright: (i: number) => boolean,
): number {
  const leads = (i: number, down: number, right: number) => {
    let [row, column] = [Math.floor(i / width) + down, (i % width) + right];
    while (row >= 0 && column >= 0 && row < height && column < width) {
      if (isBright(row * width + column)) return 1;
      [row, column] = [row + down, column + right];
    }
    return 0;
  };
  const ways = [-1, 0, 1].flatMap((down) => [-1, 0, 1].map((right) => [down, right] as const));
  const found = ways.filter(([down, right]) => down !== 0 || right !== 0);
  const hits = patch.flatMap((i) => found.map(([down, right]): number => leads(i, down, right)));
  return hits.reduce((sum, hit) => sum + hit, 0) / patch.length;
}

/** The pixels connected with one by their sides; marks them as seen. */
function spread(first: number, belongs: (i: number) => boolean, seen: Uint8Array, width: number): number[] {
  const patch = [first];
  seen[first] = 1;
  for (let k = 0; k < patch.length; k++) {
    for (const i of neighbors(patch[k]!, width, seen.length)) {
      if (seen[i] || !belongs(i)) continue;
      seen[i] = 1;
      patch.push(i);
    }
  }
  return patch;
}

function neighbors(i: number, width: number, count: number): number[] {
  const column = i % width;
  const found = [i - width, i + width].filter((k) => k >= 0 && k < count);
  if (column > 0) found.push(i - 1);
  if (column < width - 1) found.push(i + 1);
  return found;
}
