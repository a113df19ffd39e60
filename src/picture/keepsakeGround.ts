import { speech } from '../texts/speech';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';

/** Inks on limestone; all of them print. */
export const KEEPSAKE_INK = { strong: '#21201d', soft: '#55514a', line: '#a8a294' } as const;

/** A stone of which no photograph was kept, and the shadow under every stone. */
export const STONE_SHADE = { body: '#b9b4a6', shadow: '#5d584d' } as const;

const GROUND = '#f4f1e9';
const SPECKS = ['#e3dfd3', '#d8d3c5', '#fbf9f4'] as const;
/** One speck for so many square pixels. */
const PX2_PER_SPECK = 2600;

/** Numbers from 0 to 1 that are the same every time (Lehmer, multiplier 48271 of Park and Miller 1993). */
function evenNumbers(): () => number {
  let seed = 20_011;
  return () => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed / 2_147_483_647;
  };
}

/** Small angular grains, few and pale: seen as stone, not as dirt, and hardly any ink on paper. */
function specks(widthPx: number, heightPx: number): string {
  const next = evenNumbers();
  const paths = SPECKS.map(() => '');
  const count = Math.round((widthPx * heightPx) / PX2_PER_SPECK);
  for (let i = 0; i < count; i++) {
    const [x, y, radius, turn] = [next() * widthPx, next() * heightPx, 1 + 3 * next() ** 2, next() * 6.28];
    const corners = [0, 1.4, 2.6, 4.1, 5.2].map((angle) => {
      const reach = radius * (0.7 + 0.6 * next());
      return `${svgNumber(x + reach * Math.cos(turn + angle))} ${svgNumber(y + reach * Math.sin(turn + angle))}`;
    });
    paths[i % SPECKS.length] += `M${corners.join('L')}Z`;
  }
  return paths.map((path, i) => `<path d="${path}" fill="${SPECKS[i]}"/>`).join('');
}

const MARK = 'Glintgrade';
const MARK_PX = 17;

/** A small pebble and the name, ending at the lower right. */
function wordMark(rightPx: number, bottomPx: number): string {
  const width = strokeTextWidth(MARK, MARK_PX);
  const word = strokeText(MARK, { x: rightPx - width, y: bottomPx - MARK_PX, heightPx: MARK_PX });
  const pebble = `translate(${svgNumber(rightPx - width - 46)} ${svgNumber(bottomPx - MARK_PX - 6)}) scale(.85)`;
  return (
    `<g data-mark="" fill="none" stroke="${KEEPSAKE_INK.soft}" stroke-width="1.3" stroke-linecap="round" stroke-linejoin="round">${word}</g>` +
    `<g transform="${pebble}"><path d="M3 21C2 13 9 5 19 3.5C28 2 37 8 38 16C39 25 31 30 20 30C10 30 4 28 3 21Z" fill="${KEEPSAKE_INK.soft}"/>` +
    `<path d="M9 17C10.5 12.5 14 9.5 18.5 8.6" fill="none" stroke="${GROUND}" stroke-width="2.4" stroke-linecap="round"/></g>`
  );
}

/**
 * A whole picture to keep: limestone, what is drawn on it, and the word mark.
 *
 * @param widthPx - Of the picture.
 * @param heightPx - Of the picture.
 * @param drawn - SVG elements.
 * @returns An SVG document.
 */
export function keepsakeDocument(widthPx: number, heightPx: number, drawn: string): string {
  const size = `width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}"`;
  const soft =
    '<filter id="soft" x="-20%" y="-20%" width="140%" height="140%"><feGaussianBlur stdDeviation="7"/></filter>';
  const ground = `<rect width="${widthPx}" height="${heightPx}" fill="${GROUND}"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}><defs>${soft}</defs>${ground}${specks(widthPx, heightPx)}${drawn}${wordMark(widthPx - 50, heightPx - 42)}</svg>`;
}

/** A favorite's star of five points. */
export function star(x: number, y: number, radiusPx: number): string {
  const points = Array.from({ length: 10 }, (_, k) => {
    const reach = k % 2 === 0 ? radiusPx : 0.45 * radiusPx;
    const angle = (Math.PI * k) / 5 - Math.PI / 2;
    return `${svgNumber(x + reach * Math.cos(angle))} ${svgNumber(y + reach * Math.sin(angle))}`;
  });
  return `<path data-star="" d="M${points.join('L')}Z" fill="${KEEPSAKE_INK.strong}"/>`;
}

/** A day as one writes it under a picture, in the language spoken now; what is no day stays as it is. */
export function writtenDay(day: string): string {
  const date = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(date)
    ? day
    : new Intl.DateTimeFormat(speech().language, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
