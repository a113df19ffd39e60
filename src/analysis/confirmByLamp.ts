import type { Mask } from '../image/raster';
import { gaussianBlur } from '../kernels/gaussianBlur';
import {
  type AskLamp,
  type Hollow,
  hollowsBetween,
  type LampAnswer,
  reliefBetween,
} from '../measure/reliefBetween';
import { shrinkMask } from '../measure/shrinkMask';
import { FLAW_CLASSES } from '../vision/openFlawNet';
import type { FlawPlanes } from './flawPlanes';
import type { FlawDraft } from './stoneFlaws';
import type { UnderBoth } from './stoneUnderBoth';

/** Hollows weaker than this are noise, in logarithms of light and standard errors. */
const LEAST: LampAnswer = { swing: 0.03, tValue: 3.5 };
/**
 * Log odds that a hollow is a pit: sums of logarithms of its t value, its swing, its diameter (mm) and the network's
 * share. A facet or the rim of a glint is wide and follows the lamp too, but is less deep for its width.
 * Fitted by logistic regression to four development trays photographed twice, see DEVELOPERS.md.
 */
const ODDS = {
  bias: -6.1,
  tValue: 5.26,
  swing: 2.18,
  diameter: -2.62,
  share: 0.48,
  leastShare: 0.003,
} as const;
/** Where the network gives a fracture or a chip this share, a hollow is part of it. */
const OTHER_SHARE = 0.35;
/** Nothing is looked for nearer to the outline, places: its own shadow follows the lamp. */
const RIM_PLACES = 2;
/** A hollow on a fracture or in a chip is part of it: so near, mm. */
const PART_MM = 0.5;
/** Log odds taken off a mark whose shading stays when the lamp moves, and added to one whose shading follows it. */
const PATTERN_COST = 1.2;
const RELIEF_GAIN = 0.7;
/** A place of a line or a chip follows the lamp from this on, standard errors; and a line that does so on this share of its places. */
const STRONG = 3;
/** A hollow is beyond doubt from this on, standard errors. */
const SURE_T = 7;
/** Chips less sure than this are no flaws, and hollows in them are pits. */
const LEAST_CHIP = 0.15;
const LEAST_STRONG = 0.15;

/**
 * Weighs flaws by a second photo with the lamp elsewhere: what is shaded by the lamp is relief, what stays is pattern.
 *
 * @returns A function that drops marks of pattern, confirms those of relief, and adds hollows that color hid.
 */
export function confirmByLamp(planes: FlawPlanes, shares: Float32Array, { difference, way }: UnderBoth) {
  const { mask, mmPerPlace } = planes;
  const inner = shrinkMask(mask, RIM_PLACES);
  const ask = reliefBetween(difference, inner, way);
  const hollows = hollowsBetween(difference, inner, way, mmPerPlace, gaussianBlur, LEAST);
  return (drafts: readonly FlawDraft[], cosine: (place: number) => number): FlawDraft[] => {
    const lines = drafts
      .filter(({ kind }) => kind === 'fracture')
      .map((draft) => confirmLine(draft, ask, mask.width));
    const chips = drafts
      .filter(({ kind, confidence }) => kind === 'chip' && confidence >= LEAST_CHIP)
      .map((draft) => confirmChip(draft, ask, hollows));
    const larger = [...lines.filter(({ confidence }) => confidence >= 0.5), ...chips];
    const marks = drafts.filter(({ kind }) => kind === 'pit');
    const pits = hollows
      .filter((hollow) => !larger.some((other) => isPartOf(hollow, other, mask.width, mmPerPlace)))
      .flatMap((hollow) => pitOf(hollow, marks, planes, shares, cosine) ?? []);
    const others = marks.filter((mark) => !hollows.some((hollow) => isSame(hollow, mark)));
    return [...lines, ...chips, ...pits, ...others.map((mark) => confirmHole(mark, ask))];
  };
}

/** A hollow as a pit, with the outline's size where the network marked it too; null on a fracture or a chip. */
function pitOf(
  hollow: Hollow,
  marks: readonly FlawDraft[],
  { mask, mmPerPlace }: FlawPlanes,
  shares: Float32Array,
  cosine: (place: number) => number,
): FlawDraft | null {
  const { row, column, radius, swing, tValue } = hollow;
  const most = (kind: (typeof FLAW_CLASSES)[number]) => mostWithin(hollow, mask, shares, kind);
  if (Math.max(most('fracture'), most('chip')) >= OTHER_SHARE) return null;
  const own = marks.find((mark) => isSame(hollow, mark));
  const diameterMm = 2 * radius * mmPerPlace;
  const odds =
    ODDS.bias +
    ODDS.tValue * Math.log(tValue) +
    ODDS.swing * Math.log(swing) +
    ODDS.diameter * Math.log(diameterMm) +
    ODDS.share * Math.log(most('pit') + ODDS.leastShare);
  return {
    kind: 'pit',
    row,
    column,
    radius,
    sizeMm: own?.sizeMm ?? diameterMm / Math.sqrt(cosine(row * mask.width + column)),
    confidence: shareOf(own ? Math.max(odds, oddsOf(own.confidence) + RELIEF_GAIN) : odds),
    followsLamp: true,
  };
}

/** Largest share of a class within a hollow. */
function mostWithin(
  { row, column, radius }: Hollow,
  { width, height }: Mask,
  shares: Float32Array,
  kind: (typeof FLAW_CLASSES)[number],
): number {
  const from = FLAW_CLASSES.indexOf(kind) * width * height;
  let most = 0;
  for (let r = Math.max(0, Math.ceil(row - radius)); r <= Math.min(height - 1, row + radius); r++) {
    for (let c = Math.max(0, Math.ceil(column - radius)); c <= Math.min(width - 1, column + radius); c++) {
      if (Math.hypot(r - row, c - column) <= radius) most = Math.max(most, shares[from + r * width + c]!);
    }
  }
  return most;
}

/** A groove shows where it runs across the lamp's way; along it nothing tells, so nothing is held against it. */
function confirmLine(draft: FlawDraft, ask: AskLamp, width: number): FlawDraft {
  const answers = (draft.way ?? []).flatMap((place) => {
    const answer = ask(Math.floor(place / width), place % width, Math.max(1.7, draft.radius * 1.5));
    return answer ? [answer.tValue] : [];
  });
  const strong = answers.filter((tValue) => tValue > STRONG).length;
  return answers.length > 0 && strong >= LEAST_STRONG * answers.length ? weighed(draft, true) : draft;
}

function confirmHole(draft: FlawDraft, ask: AskLamp): FlawDraft {
  const answer = ask(draft.row, draft.column, draft.radius);
  if (!answer) return draft;
  return weighed(draft, answer.tValue > STRONG && answer.swing > LEAST.swing);
}

/** A chip follows the lamp as a whole, or by a hollow in it: a bite is seldom as even as a pit. */
function confirmChip(draft: FlawDraft, ask: AskLamp, hollows: readonly Hollow[]): FlawDraft {
  const holds = hollows.some(
    (hollow) =>
      hollow.tValue >= SURE_T &&
      Math.hypot(draft.row - hollow.row, draft.column - hollow.column) < draft.radius,
  );
  return holds ? weighed(draft, true) : confirmHole(draft, ask);
}

function weighed(draft: FlawDraft, followsLamp: boolean): FlawDraft {
  const odds = oddsOf(draft.confidence) + (followsLamp ? RELIEF_GAIN : -PATTERN_COST);
  return { ...draft, confidence: shareOf(odds), followsLamp };
}

/** Log odds of a share, and back. */
const oddsOf = (share: number) => Math.log(Math.max(1e-6, share) / Math.max(1e-6, 1 - share));
const shareOf = (logOdds: number) => 1 / (1 + Math.exp(-logOdds));

/** Whether a hollow lies in a mark of the network, or the mark in it. */
function isSame(hollow: Hollow, mark: FlawDraft): boolean {
  return (
    Math.hypot(mark.row - hollow.row, mark.column - hollow.column) < Math.max(mark.radius, hollow.radius)
  );
}

function isPartOf({ row, column }: Hollow, other: FlawDraft, width: number, mmPerPlace: number): boolean {
  const reach = PART_MM / mmPerPlace;
  if (!other.way) return Math.hypot(other.row - row, other.column - column) < other.radius + reach;
  return other.way.some(
    (place) => Math.hypot(Math.floor(place / width) - row, (place % width) - column) < other.radius + reach,
  );
}
