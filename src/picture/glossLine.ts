import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import { KEEPSAKE_INK } from './keepsakeGround';
import { textLine } from './keepsakeText';
import { svgNumber } from './svgNumber';

/** Estimated gloss at 60° and its 90 % interval, gloss units. */
export interface GlossReading {
  readonly gu60: number;
  readonly gu60Low: number;
  readonly gu60High: number;
}

interface LinePlace {
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

const INK = KEEPSAKE_INK;
const WORDS = { sizePx: 27, color: INK.soft } as const;

/**
 * Draws gloss then and now on a line from nothing to the stone's ceiling: then as an open pebble with its number above,
 * now as a solid one with its number below, so that no color is needed.
 *
 * @param then - Null where the photo carried no number.
 * @param now - As `then`.
 * @param ceilingGu60 - What a perfect polish reads, above 0.
 * @param place - Ends of the line and its height, px.
 * @returns SVG elements.
 */
export function glossLine(
  then: GlossReading | null,
  now: GlossReading | null,
  ceilingGu60: number,
  place: LinePlace,
): string {
  const { left, right, y } = place;
  const said = texts().keepsake;
  const most = Math.max(ceilingGu60, then?.gu60 ?? 0, now?.gu60 ?? 0);
  const at = (gu: number) => left + ((right - left) * Math.min(most, Math.max(0, gu))) / most;
  const end = at(ceilingGu60);
  const base =
    `<path d="M${left} ${y}H${right}M${left} ${y - 9}v18" fill="none" stroke="${INK.line}" stroke-width="4"/>` +
    `<path data-ceiling="" d="M${svgNumber(end)} ${y - 26}v52" fill="none" stroke="${INK.strong}" stroke-width="5"/>`;
  const title = textLine(said.gloss, left - 26, y + 9, { ...WORDS, anchor: 'right' });
  const ceiling = textLine(said.ceiling(plainNumber(ceilingGu60)), right + 26, y + 9, WORDS);
  const [thenWords, nowWords] = [words('then', then), words('now', now)];
  const thenX = then === null ? left : at(then.gu60);
  const nowX = now === null ? left : at(now.gu60);
  return [
    base,
    title,
    ceiling,
    then === null ? '' : between(then, at, y) + pebble(thenX, y, false),
    now === null ? '' : between(now, at, y) + pebble(nowX, y, true),
    textLine(thenWords, inside(thenX, place), y - 40, { ...WORDS, anchor: 'middle' }),
    textLine(nowWords, inside(nowX, place), y + 62, {
      ...WORDS,
      color: INK.strong,
      isBold: true,
      anchor: 'middle',
    }),
  ].join('');
}

/** Such as "then 3 (2 to 4)": without a number when the photo carried none. */
function words(when: 'then' | 'now', reading: GlossReading | null): string {
  const { thenReading, nowReading, thenNoNumber, nowNoNumber } = texts().keepsake;
  if (reading === null) return when === 'then' ? thenNoNumber : nowNoNumber;
  const say = when === 'then' ? thenReading : nowReading;
  return say(plainNumber(reading.gu60), plainNumber(reading.gu60Low), plainNumber(reading.gu60High));
}

/** Labels keep their middle on the line, which has room for half of them beside it. */
const inside = (x: number, { left, right }: LinePlace) => Math.min(right - 30, Math.max(left + 60, x));

/** The interval, as a broad pale stroke. */
function between({ gu60Low, gu60High }: GlossReading, at: (gu: number) => number, y: number): string {
  return `<path d="M${svgNumber(at(gu60Low))} ${y}H${svgNumber(at(gu60High))}" fill="none" stroke="${INK.line}" stroke-width="14"/>`;
}

function pebble(x: number, y: number, isSolid: boolean): string {
  const fill = isSolid ? INK.strong : '#ffffff';
  return `<ellipse data-when="${isSolid ? 'now' : 'then'}" cx="${svgNumber(x)}" cy="${y}" rx="15" ry="12.5" transform="rotate(-18 ${svgNumber(x)} ${y})" fill="${fill}" stroke="${INK.strong}" stroke-width="4"/>`;
}
