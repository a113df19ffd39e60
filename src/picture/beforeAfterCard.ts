import type { Step } from '../grading/steps';
import { lengthWords } from '../texts/measures';
import { speech, texts } from '../texts/speech';
import { type GlossReading, glossLine } from './glossLine';
import { KEEPSAKE_INK, keepsakeDocument, star, writtenDay } from './keepsakeGround';
import { linesOf, mostWidthPx, textLine } from './keepsakeText';
import { type Keepsake, type PicturedStone, placeStone, stoneShape, turnedSize } from './placedStone';
import { svgNumber } from './svgNumber';

/** A stone at one of its checks. */
export interface CardMoment {
  /** YYYY-MM-DD. */
  readonly day: string;
  /** Step it came out of. */
  readonly step: Step;
  readonly stone: PicturedStone;
  /** Turn that it is shown with, degrees, clockwise. */
  readonly turnDeg: number;
  readonly lengthMm: number;
  /** Null where the photo carried no number. */
  readonly gloss: GlossReading | null;
}

export interface BeforeAfter {
  /** The owner's name for the stone. */
  readonly title: string;
  /** Material, source, batch: what is known, in that order. */
  readonly about: readonly string[];
  readonly isFavorite: boolean;
  readonly before: CardMoment;
  readonly after: CardMoment;
  /** What a perfect polish of its material reads, gloss units at 60°. */
  readonly ceilingGu60: number;
  /** Steps it came through, each once, in order. */
  readonly steps: readonly Step[];
  /** Null when it was never seen in coarse. */
  readonly weeksInCoarse: number | null;
  readonly checkCount: number;
}

const [WIDTH, HEIGHT] = [1600, 1200];
const MIDDLE = WIDTH / 2;
/** Room for a stone, and where its middle lies. */
const ROOM = { width: 640, height: 470, y: 505 };
const SIDES = { before: 420, after: 1180 };
/** No photo is enlarged further: pixels of the card in one of the measured photo. */
const MOST_ENLARGED = 3.2;
const SOFT = { sizePx: 30, color: KEEPSAKE_INK.soft, anchor: 'middle' } as const;

/**
 * Draws a stone at its first and at its last check side by side, both to one scale, with what came between.
 *
 * @param card - What is known of the stone.
 * @returns A picture of 1600 × 1200 px with room for two photographs, the earlier one first.
 */
export function beforeAfterCard(card: BeforeAfter): Keepsake {
  const moments = [card.before, card.after] as const;
  const pxPerMm = Math.min(
    ...moments.map(({ stone, turnDeg }) => {
      const { widthMm, heightMm } = turnedSize(stone, turnDeg);
      return Math.min(ROOM.width / widthMm, ROOM.height / heightMm, MOST_ENLARGED / stone.mmPerPx);
    }),
  );
  const places = [
    placeStone(card.before.stone, SIDES.before, ROOM.y, pxPerMm, card.before.turnDeg),
    placeStone(card.after.stone, SIDES.after, ROOM.y, pxPerMm, card.after.turnDeg),
  ] as const;
  const drawn = [
    heading(card),
    ...moments.map(({ stone }, i) => stoneShape(stone, places[i]!)),
    caption(card.before, SIDES.before),
    caption(card.after, SIDES.after),
    scaleBar(pxPerMm),
    glossLine(card.before.gloss, card.after.gloss, card.ceilingGu60, { left: 400, right: 1200, y: 985 }),
    way(card),
  ];
  return {
    svg: keepsakeDocument(WIDTH, HEIGHT, drawn.join('')),
    widthPx: WIDTH,
    heightPx: HEIGHT,
    places,
  };
}

/** The stone's name, on two smaller lines where one is not enough, and what else is known of it. */
function heading({ title, about, isFavorite }: BeforeAfter): string {
  const room = WIDTH - 260;
  const isShort = mostWidthPx(title, 62) <= room;
  const sizePx = isShort ? 62 : 44;
  const lines = linesOf(title, sizePx, room, isShort ? 1 : 2);
  const style = { sizePx, color: KEEPSAKE_INK.strong, isBold: true, anchor: 'middle' } as const;
  const first = lines.length > 1 ? 98 : 116;
  const drawn = lines.map((line, i) => textLine(line, MIDDLE, first + 50 * i, style));
  const sub = linesOf(about.join(', '), SOFT.sizePx, room, 1)[0] ?? '';
  const mark = isFavorite ? star(MIDDLE, first - sizePx - 14, 17) : '';
  return `${mark}${drawn.join('')}${textLine(sub, MIDDLE, 198, SOFT)}`;
}

/** Day, step and size under a stone. */
function caption({ day, step, lengthMm }: CardMoment, x: number): string {
  const written = textLine(writtenDay(day), x, 815, {
    sizePx: 34,
    color: KEEPSAKE_INK.strong,
    isBold: true,
    anchor: 'middle',
  });
  const { keepsake, verdicts } = texts();
  const facts = keepsake.moment(verdicts.stepsWithin[step], lengthWords(lengthMm));
  return written + textLine(facts, x, 858, SOFT);
}

/** Ten millimeters or half an inch between the stones: both are drawn to it. */
function scaleBar(pxPerMm: number): string {
  const barMm = speech().length === 'mm' ? 10 : 12.7;
  const half = (barMm / 2) * pxPerMm;
  const path = `M${svgNumber(MIDDLE - half)} 796v16m0-8h${svgNumber(2 * half)}m0-8v16`;
  const words = textLine(lengthWords(barMm), MIDDLE, 848, { ...SOFT, sizePx: 24 });
  return `<path data-bar="" d="${path}" fill="none" stroke="${KEEPSAKE_INK.soft}" stroke-width="3"/>${words}`;
}

/** Steps and weeks, in one line at the foot. */
function way({ steps, weeksInCoarse, checkCount }: BeforeAfter): string {
  const { keepsake, verdicts } = texts();
  const through = steps.map((step) => verdicts.stepsWithin[step]).join(' → ');
  const weeks = weeksInCoarse === null ? [] : [keepsake.weeksInCoarse(weeksInCoarse)];
  return textLine([through, ...weeks, keepsake.checks(checkCount)].join('  ·  '), MIDDLE, 1106, SOFT);
}
