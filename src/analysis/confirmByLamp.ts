import {
  type AskLamp,
  type Hollow,
  hollowsBetween,
  type LampAnswer,
  reliefBetween,
} from '../measure/reliefBetween';
import { shrinkMask } from '../measure/shrinkMask';
import { gaussianBlur } from '../vision/gaussianBlur';
import type { OpenCv } from '../vision/openCv';
import type { FlawPlanes } from './flawPlanes';
import type { FlawDraft } from './stoneFlaws';
import type { UnderBoth } from './stoneUnderBoth';

/** Hollows weaker than this are noise, in logarithms of light and standard errors. */
const LEAST: LampAnswer = { swing: 0.05, tValue: 4 };
/** A hollow counts from here on: set on development trays, see DEVELOPERS.md. */
const SURE = { swing: 0.08, tValue: 7 } as const;
/** A facet or the rim of a highlight is as wide as a large pit, but less deep: from this radius on more is asked, mm. */
const WIDE = { radiusMm: 0.95, swing: 0.16 } as const;
/** Nothing is looked for nearer to the outline, places: its own shadow follows the lamp. */
const RIM_PLACES = 2;
/** A hollow on a fracture or in a chip is part of it: so near, mm. */
const PART_MM = 0.5;
/** Log odds taken off a mark whose shading stays when the lamp moves, and added to one whose shading follows it. */
const PATTERN_COST = 2.5;
const RELIEF_GAIN = 0.5;
/** A place of a line or a chip follows the lamp from this on, standard errors; and a line that does so on this share of its places. */
const STRONG = 3;
const LEAST_STRONG = 0.15;

/**
 * Weighs flaws by a second photo with the lamp elsewhere: what is shaded by the lamp is relief, what stays is pattern.
 *
 * @returns A function that drops marks of pattern, confirms those of relief, and adds hollows that color hid.
 */
export function confirmByLamp(cv: OpenCv, planes: FlawPlanes, { difference, way }: UnderBoth) {
  const { mask, mmPerPlace } = planes;
  const inner = shrinkMask(mask, RIM_PLACES);
  const ask = reliefBetween(difference, inner, way);
  const hollows = hollowsBetween(difference, inner, way, mmPerPlace, (r, s) => gaussianBlur(cv, r, s), LEAST);
  return (drafts: readonly FlawDraft[], cosine: (place: number) => number): FlawDraft[] => {
    const lines = drafts
      .filter(({ kind }) => kind === 'fracture')
      .map((draft) => confirmLine(draft, ask, mask.width));
    const chips = drafts.filter(({ kind }) => kind === 'chip').map((draft) => confirmChip(draft, ask));
    const others = [...lines, ...chips].filter(({ confidence }) => confidence >= 0.5);
    const marks = drafts.filter(({ kind }) => kind === 'pit');
    const pits = hollows
      .filter((hollow) => !others.some((other) => isPartOf(hollow, other, mask.width, mmPerPlace)))
      .map((hollow) =>
        pitOf(
          hollow,
          marks,
          mmPerPlace,
          cosine(Math.round(hollow.row) * mask.width + Math.round(hollow.column)),
        ),
      );
    const unseen = marks.filter((mark) => ask(mark.row, mark.column, mark.radius) === null);
    return [...lines, ...chips, ...pits, ...unseen];
  };
}

/** A hollow as a pit, with the outline's size where the network marked it too. */
function pitOf(hollow: Hollow, marks: readonly FlawDraft[], mmPerPlace: number, cosine: number): FlawDraft {
  const { row, column, radius, swing, tValue } = hollow;
  const own = marks.find(
    (mark) => Math.hypot(mark.row - row, mark.column - column) < Math.max(mark.radius, radius),
  );
  const leastSwing = radius * mmPerPlace > WIDE.radiusMm && !own ? WIDE.swing : SURE.swing;
  const odds =
    Math.min(4 * Math.log(swing / leastSwing), 2.5 * Math.log(tValue / SURE.tValue)) + (own ? 0.5 : 0);
  return {
    kind: 'pit',
    row,
    column,
    radius,
    sizeMm: own?.sizeMm ?? (2 * radius * mmPerPlace) / Math.sqrt(cosine),
    confidence: 1 / (1 + Math.exp(-odds)),
    followsLamp: true,
  };
}

/** A groove shows where it runs across the lamp's way; along it nothing tells. */
function confirmLine(draft: FlawDraft, ask: AskLamp, width: number): FlawDraft {
  const answers = (draft.way ?? []).flatMap((place) => {
    const answer = ask(Math.floor(place / width), place % width, Math.max(1.7, draft.radius * 1.5));
    return answer ? [answer.tValue] : [];
  });
  if (answers.length === 0) return draft;
  const strong = answers.filter((tValue) => tValue > STRONG).length / answers.length;
  return weighed(draft, strong >= LEAST_STRONG);
}

function confirmChip(draft: FlawDraft, ask: AskLamp): FlawDraft {
  const answer = ask(draft.row, draft.column, draft.radius);
  if (!answer) return draft;
  return weighed(draft, answer.tValue > STRONG && answer.swing > LEAST.swing);
}

function weighed(draft: FlawDraft, followsLamp: boolean): FlawDraft {
  const gain = Math.exp(followsLamp ? RELIEF_GAIN : -PATTERN_COST);
  const odds = (draft.confidence / Math.max(1e-6, 1 - draft.confidence)) * gain;
  return { ...draft, confidence: odds / (1 + odds), followsLamp };
}

function isPartOf({ row, column }: Hollow, other: FlawDraft, width: number, mmPerPlace: number): boolean {
  const reach = PART_MM / mmPerPlace;
  if (!other.way) return Math.hypot(other.row - row, other.column - column) < other.radius + reach;
  return other.way.some(
    (place) => Math.hypot(Math.floor(place / width) - row, (place % width) - column) < other.radius + reach,
  );
}
