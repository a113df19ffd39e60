import type { WarningCode } from '../image/notice';
import { CHALK, HALO } from './actionMarks';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';
import type { LetteredWarning } from './warningLetters';

/** Smallest half-size of a mark, and height of its letter, dots. */
const SMALLEST_DOTS = 9;
const LETTER_DOTS = 12;
/** The four arrowheads: depth and half-width in dots. */
const HEAD = { depth: 7, half: 5 };

/**
 * Marks what the warnings are about: four hollow arrowheads that point at the place from its corners, and the
 * warning's letter on a tag. Nothing else in the picture points inward, so no color is needed.
 *
 * @param warnings - From `warningLetters`.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @param size - Of the photo, px: letters stay inside.
 * @param lit - The warning to bring out; the others are drawn faintly. Null for all alike.
 * @returns SVG groups in photo pixels, to stand in an element with `fill="none"`.
 */
export function warningMarks(
  warnings: readonly LetteredWarning[],
  pxPerDot: number,
  size: { readonly widthPx: number; readonly heightPx: number },
  lit: WarningCode | null,
): string {
  return warnings
    .map(({ code, letter, places }, index) => {
      const faint = lit !== null && lit !== code ? ' opacity=".25"' : '';
      const strong = lit === code ? 1.7 : 1;
      const drawn = places.map(({ row, column, radiusPx }) => {
        const reach = Math.max(radiusPx, SMALLEST_DOTS * pxPerDot) + 2 * pxPerDot;
        const heads = [45, 135, 225, 315].map((deg) => arrowhead(column, row, reach, deg, pxPerDot));
        return (
          inked(`<path d="${heads.join('')}"/>`, 1.9 * strong * pxPerDot, pxPerDot) + tag(row, column, reach)
        );
      });
      function tag(row: number, column: number, reach: number): string {
        const heightPx = LETTER_DOTS * pxPerDot;
        const widthPx = strokeTextWidth(letter, heightPx);
        const room = 5 * pxPerDot;
        // Letters of several warnings about one place stand in a row.
        const left = column - widthPx / 2 + index * (widthPx + 2.4 * room);
        const x = Math.min(size.widthPx - widthPx - room, Math.max(room, left));
        const above = row - reach - heightPx - HEAD.depth * pxPerDot;
        const y =
          above > room
            ? above
            : Math.min(size.heightPx - heightPx - room, row + reach + HEAD.depth * pxPerDot);
        const box = [x - room, y - room, widthPx + 2 * room, heightPx + 2 * room].map(svgNumber);
        const ground = `<rect x="${box[0]}" y="${box[1]}" width="${box[2]}" height="${box[3]}" rx="${svgNumber(room)}" fill="${CHALK}" stroke="${HALO}" stroke-width="${svgNumber(1.2 * pxPerDot)}"/>`;
        return `${ground}<g stroke="${HALO}" stroke-width="1.9">${strokeText(letter, { x, y, heightPx })}</g>`;
      }
      return `<g data-warning="${code}"${faint}>${drawn.join('')}</g>`;
    })
    .join('');
}

/** A hollow triangle on a ray from the place, its tip toward it. */
function arrowhead(x: number, y: number, reach: number, deg: number, pxPerDot: number): string {
  const [right, down] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const far = reach + HEAD.depth * pxPerDot;
  const at = (along: number, aside: number) =>
    `${svgNumber(x + along * right - aside * down)} ${svgNumber(y + along * down + aside * right)}`;
  const half = HEAD.half * pxPerDot;
  return `M${at(reach, 0)}L${at(far, half)}L${at(far, -half)}Z`;
}

function inked(shape: string, widthPx: number, pxPerDot: number): string {
  const halo = `<g stroke="${HALO}" stroke-opacity=".9" stroke-width="${svgNumber(widthPx + 2.6 * pxPerDot)}">${shape}</g>`;
  return `${halo}<g stroke="${CHALK}" stroke-width="${svgNumber(widthPx)}">${shape}</g>`;
}
