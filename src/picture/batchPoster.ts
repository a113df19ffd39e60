import type { Action } from '../grading/opinion';
import { texts } from '../texts/speech';
import { ACTION_MARKS } from './actionMarks';
import { KEEPSAKE_INK, keepsakeDocument, star, writtenDay } from './keepsakeGround';
import { linesOf, mostWidthPx, textLine } from './keepsakeText';
import { countActions } from './legendStrip';
import { type Keepsake, type PicturedStone, placeStone, stoneShape, turnedSize } from './placedStone';
import { type PosterField, type PosterSeat, posterRows } from './posterRows';
import { svgNumber } from './svgNumber';

/** A stone at its last check. */
export interface PosterStone {
  readonly stone: PicturedStone;
  /** The owner's name for it. */
  readonly name: string;
  readonly isFavorite: boolean;
  /** What was done with it last, or advised. */
  readonly action: Action;
}

export interface BatchPoster {
  /** The owner's name for the batch. */
  readonly name: string;
  /** YYYY-MM-DD. */
  readonly startedOn: string;
  readonly lastDay: string;
  readonly checkCount: number;
  readonly stones: readonly PosterStone[];
}

/** A sheet of ISO 216 in portrait at 254 dots per inch as A4; a few stones take a lower one. */
const [WIDTH, HEIGHT, LEAST_HEIGHT] = [2100, 2970, 1485];
const MIDDLE = WIDTH / 2;
const MARGIN = 130;
const [HEAD, FOOT] = [440, 290];
/** Left free above and below the rows of a lower sheet. */
const AIR = 160;
/** No photo is enlarged further: pixels of the poster in one of the measured photo. */
const MOST_ENLARGED = 3;
const SOFT = { sizePx: 44, color: KEEPSAKE_INK.soft, anchor: 'middle' } as const;

/**
 * Draws all stones of a batch at their last check, to one scale and in their order, on one sheet.
 *
 * @param poster - The batch and its stones.
 * @returns A picture 2100 px wide and 1485 to 2970 px high, with room for a photograph of each stone.
 */
export function batchPoster(poster: BatchPoster): Keepsake {
  const { stones } = poster;
  const sizePx = stones.length > 60 ? 26 : stones.length > 24 ? 32 : 38;
  const labels = { sizePx, lines: stones.some(({ name }) => mostWidthPx(name, 1) > 5) ? 2 : 1 };
  const sizes = stones.map(({ stone }) => seatFor(turnedSize(stone, 0)));
  const full: PosterField = {
    left: MARGIN,
    top: HEAD,
    widthPx: WIDTH - 2 * MARGIN,
    heightPx: HEIGHT - HEAD - FOOT,
    labelPx: (1.05 + 1.15 * labels.lines) * sizePx,
    gapPx: stones.length > 24 ? 46 : 70,
    mostPxPerMm: Math.min(30, ...stones.map(({ stone }) => MOST_ENLARGED / stone.mmPerPx)),
  };
  const taken = HEAD + FOOT + AIR + posterRows(sizes, full).heightPx;
  const heightPx = Math.round(Math.min(HEIGHT, Math.max(LEAST_HEIGHT, taken)));
  const { pxPerMm, seats } = posterRows(sizes, { ...full, heightPx: heightPx - HEAD - FOOT });
  const places = stones.map(({ stone }, i) => placeStone(stone, seats[i]!.x, seats[i]!.y, pxPerMm, 0));
  const drawn = [
    heading(poster),
    ...stones.map(({ stone }, i) => stoneShape(stone, places[i]!)),
    ...stones.map((stone, i) => label(stone, seats[i]!, labels)),
    counts(stones, heightPx),
  ];
  return { svg: keepsakeDocument(WIDTH, heightPx, drawn.join('')), widthPx: WIDTH, heightPx, places };
}

/** Sizes of stones that can lie on a sheet: a record may hold any number, and one stone must not take the others' room. */
const [LEAST_MM, MOST_MM] = [0.1, 1000];
const within = (mm: number) => (mm > LEAST_MM ? Math.min(mm, MOST_MM) : LEAST_MM);
const seatFor = ({ widthMm, heightMm }: ReturnType<typeof turnedSize>) => ({
  widthMm: within(widthMm),
  heightMm: within(heightMm),
});

function heading({ name, startedOn, lastDay, checkCount }: BatchPoster): string {
  const { keepsake } = texts();
  const room = WIDTH - 2 * MARGIN;
  const isShort = mostWidthPx(name, 104) <= room;
  const sizePx = isShort ? 104 : 66;
  const lines = linesOf(name, sizePx, room, isShort ? 1 : 2);
  const style = { sizePx, color: KEEPSAKE_INK.strong, isBold: true, anchor: 'middle' } as const;
  const first = lines.length > 1 ? 176 : 230;
  const drawn = lines.map((line, i) => textLine(line, MIDDLE, first + 80 * i, style));
  const days =
    startedOn === lastDay ? writtenDay(lastDay) : keepsake.days(writtenDay(startedOn), writtenDay(lastDay));
  const checks = keepsake.checks(checkCount);
  return `${drawn.join('')}${textLine(`${days}  ·  ${checks}`, MIDDLE, 340, SOFT)}`;
}

/** Fonts are usually so much narrower than the widest. */
const USUAL_SHARE = 0.86;

interface Labels {
  readonly sizePx: number;
  readonly lines: number;
}

/** A stone's name below it, with a star before a favorite's. */
function label({ name, isFavorite }: PosterStone, seat: PosterSeat, { sizePx, lines }: Labels): string {
  const starPx = isFavorite ? 1.4 * sizePx : 0;
  const words = linesOf(name, sizePx, seat.labelWidthPx - starPx, lines);
  const style = { sizePx, color: KEEPSAKE_INK.strong, anchor: 'middle' } as const;
  const [x, y] = [seat.x + starPx / 2, seat.labelY + 1.35 * sizePx];
  const drawn = words.map((line, i) => textLine(line, x, y + 1.15 * i * sizePx, style));
  const half = (USUAL_SHARE * mostWidthPx(words[0] ?? '', sizePx)) / 2;
  const mark = isFavorite ? star(x - half - 0.85 * sizePx, y - 0.36 * sizePx, 0.55 * sizePx) : '';
  return mark + drawn.join('');
}

/** How many stones, and how they stand: signs as in the sorting picture, in ink. */
function counts(stones: readonly PosterStone[], heightPx: number): string {
  const { keepsake, verdicts } = texts();
  const favorites = stones.filter(({ isFavorite }) => isFavorite).length;
  const total = keepsake.stones(stones.length, favorites);
  const entries = countActions(stones.map(({ action }) => action)).map(([action, count]) => {
    const words = keepsake.counted(count, verdicts.actionsWithin[action]);
    return { action, words, widthPx: 54 + USUAL_SHARE * mostWidthPx(words, 38) };
  });
  const gap = 46;
  const widthPx = entries.reduce((sum, entry) => sum + entry.widthPx + gap, -gap);
  const shrink = Math.min(1, (WIDTH - 2 * MARGIN) / Math.max(1, widthPx));
  let x = 0;
  const drawn = entries.map(({ action, words, widthPx: width }) => {
    const sign = `<path d="${ACTION_MARKS[action].glyph}" transform="translate(${svgNumber(x)} -31) scale(3.4)" fill="none" stroke="${KEEPSAKE_INK.strong}" stroke-width="1.4" stroke-linecap="round" stroke-linejoin="round"/>`;
    const text = textLine(words, x + 50, 0, { sizePx: 38, color: KEEPSAKE_INK.soft });
    x += width + gap;
    return sign + text;
  });
  const place = `translate(${svgNumber(MIDDLE - (shrink * widthPx) / 2)} ${heightPx - 130}) scale(${Math.round(shrink * 1e4) / 1e4})`;
  return `${textLine(total, MIDDLE, heightPx - 205, SOFT)}<g data-counts="" transform="${place}">${drawn.join('')}</g>`;
}
