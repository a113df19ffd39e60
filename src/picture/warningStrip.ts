import type { WarningCode } from '../image/notice';
import { texts } from '../texts/speech';
import { CHALK, HALO } from './actionMarks';
import type { LegendStrip } from './legendStrip';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';
import type { LetteredWarning } from './warningLetters';

const [TEXT_DOTS, ROW_DOTS, MARGIN_DOTS] = [12, 30, 18];

/**
 * Draws the key to the warnings' letters, one after the other, for a strip below the legend.
 *
 * @param warnings - From `warningLetters`.
 * @param widthPx - Width of the photo.
 * @param topPx - Where the strip begins, px from the photo's top.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @returns SVG elements and the strip's height; height 0 without a warning.
 */
export function warningStrip(
  warnings: readonly LetteredWarning[],
  widthPx: number,
  topPx: number,
  pxPerDot: number,
): LegendStrip {
  if (warnings.length === 0) return { svg: '', heightPx: 0 };
  const [textPx, rowPx, marginPx] = [TEXT_DOTS * pxPerDot, ROW_DOTS * pxPerDot, MARGIN_DOTS * pxPerDot];
  let [x, y] = [marginPx, topPx + rowPx / 2];
  const known: Partial<Readonly<Record<WarningCode, string>>> = texts().tray.warningWords;
  const entries = warnings.map(({ code, letter }) => {
    const words = known[code] ?? code;
    const letterPx = strokeTextWidth(letter, textPx);
    const entryPx = letterPx + 1.6 * textPx + strokeTextWidth(words, textPx) + 1.6 * marginPx;
    if (x > marginPx && x + entryPx > widthPx) [x, y] = [marginPx, y + rowPx];
    const room = 5 * pxPerDot;
    const top = y - textPx / 2;
    const box = [x - room, top - room, letterPx + 2 * room, textPx + 2 * room].map(svgNumber);
    const tag = `<rect x="${box[0]}" y="${box[1]}" width="${box[2]}" height="${box[3]}" rx="${svgNumber(room)}" fill="${CHALK}"/>`;
    const sign = `<g stroke="${HALO}" stroke-width="1.9">${strokeText(letter, { x, y: top, heightPx: textPx })}</g>`;
    const text = strokeText(words, { x: x + letterPx + 1.6 * textPx, y: top, heightPx: textPx });
    x += entryPx;
    return `${tag}${sign}<g stroke="${CHALK}" stroke-width="1.4">${text}</g>`;
  });
  const heightPx = Math.ceil(y - topPx + rowPx / 2 + marginPx / 3);
  const ground = `<rect y="${svgNumber(topPx)}" width="${svgNumber(widthPx)}" height="${heightPx}" fill="${HALO}"/>`;
  return { svg: `<g data-key="">${ground}${entries.join('')}</g>`, heightPx };
}
