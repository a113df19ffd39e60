import type { MeasuredStone } from '../grading/measuredStone';
import type { CheckedStone } from '../journal/records';

/**
 * One stone out of the faces that a check saw of it: flaws and surface add up, the largest outline counts.
 *
 * Its gloss is that of the face that tells it best, unless another face is rougher for certain: a stone is as polished
 * as its worst side.
 *
 * @param faces - One or more.
 * @throws RangeError without a face.
 */
export function joinFaces(faces: readonly CheckedStone[]): MeasuredStone {
  const first = faces[0];
  if (!first) throw new RangeError('A stone needs at least one face.');
  const most = (figure: (face: CheckedStone) => number) => Math.max(...faces.map(figure));
  const told = faces.flatMap(({ highlight }) => (highlight === null ? [] : [highlight]));
  const withheld = faces.find(({ glossWithheld }) => glossWithheld !== undefined)?.glossWithheld;
  const unlike = faces.every((face) => face.unlike !== undefined) ? first.unlike : undefined;
  const highlight = told.length === 0 ? null : told.reduce(telling);
  return {
    id: first.place,
    lengthMm: most(({ lengthMm }) => lengthMm),
    widthMm: most(({ widthMm }) => widthMm),
    areaMm2: most(({ areaMm2 }) => areaMm2),
    cutOff: faces.every(({ cutOff }) => cutOff),
    highlight,
    glossBound: highlight ? null : (faces.find(({ glossBound }) => glossBound !== null)?.glossBound ?? null),
    ...(highlight === null && withheld !== undefined ? { glossWithheld: withheld } : {}),
    ...(unlike === undefined ? {} : { unlike }),
    flaws: faces.flatMap(({ flaws }) => flaws),
    inspectedCm2: faces.reduce((sum, { inspectedCm2 }) => sum + inspectedCm2, 0),
  };
}

type Highlight = NonNullable<CheckedStone['highlight']>;

function telling(a: Highlight, b: Highlight): Highlight {
  const [inA, inB] = [middle(a), middle(b)];
  if (inA.alphaLow > inB.alphaHigh) return a;
  if (inB.alphaLow > inA.alphaHigh) return b;
  return width(inA) <= width(inB) ? a : b;
}

/** The middle of the refractive indices stands for all: faces of one stone share theirs. */
const middle = ({ byIndex }: Highlight) => byIndex[byIndex.length >> 1]!;
const width = ({ alphaLow, alphaHigh }: { alphaLow: number; alphaHigh: number }) =>
  Math.log(Math.max(alphaHigh, 1e-6) / Math.max(alphaLow, 1e-6));
