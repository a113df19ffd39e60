import { svgNumber } from './svgNumber';

/** What a line of text looks like. */
export interface TextStyle {
  readonly sizePx: number;
  readonly color: string;
  readonly isBold?: boolean;
  /** Which point of the line stands at x: its left end, middle or right end. */
  readonly anchor?: 'left' | 'middle' | 'right';
}

/** The page's own stack, without names of one system only. */
const FONTS = "Seravek, 'Gill Sans Nova', Ubuntu, 'Noto Sans', 'DejaVu Sans', Calibri, sans-serif";

/** One character as a person sees it: a base with its marks and what is joined to it. */
const GRAPHEME = /\P{M}\p{M}{0,4}(?:\u200d\P{M}\p{M}{0,4}){0,7}/gu;
/** What XML forbids, what breaks lines, and what would turn the direction of the rest. */
const UNFIT = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069\u200e\u200f\ufffe\uffff]+/gu;
const RIGHT_TO_LEFT =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u;

/** A person's words as a picture may hold them: on one line, without control characters. */
export function plainLine(text: string): string {
  return text.replaceAll(UNFIT, ' ').replaceAll(/\s+/gu, ' ').trim();
}

/** Widths in ems on the generous side: no font of the stack is wider over a word. */
function advance(character: string): number {
  if (/^[ .,:;'’|!ijl()·-]/u.test(character)) return 0.4;
  if (/^[mwMW@%—→…]/u.test(character)) return 1.05;
  if (/^[A-Z0-9]/u.test(character)) return 0.74;
  if (/^[a-z]/u.test(character)) return 0.64;
  return /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Hebrew}\p{Script=Arabic}]/u.test(
    character,
  )
    ? 0.78
    : 1.25;
}

const graphemes = (text: string): string[] => text.match(GRAPHEME) ?? [];
const widthOf = (characters: readonly string[]) => characters.reduce((sum, one) => sum + advance(one), 0);

/** Width that a line of text hardly ever exceeds, px: fonts differ from device to device. */
export function mostWidthPx(text: string, sizePx: number): number {
  return widthOf(graphemes(text)) * sizePx;
}

/**
 * Breaks a text into lines at its spaces, and inside words that are longer than a line.
 *
 * @param text - A person's words, of any script.
 * @param sizePx - Size of the letters.
 * @param widthPx - Room for a line.
 * @param most - Most lines; what does not fit is left out with an ellipsis.
 * @returns At most so many lines, none wider than there is room; none for a text without a visible letter.
 */
export function linesOf(text: string, sizePx: number, widthPx: number, most: number): string[] {
  const room = widthPx / sizePx;
  const lines: string[][] = [];
  let line: string[] = [];
  for (const word of plainLine(text).split(' ').map(graphemes)) {
    const joined = line.length === 0 ? word : [...line, ' ', ...word];
    if (widthOf(joined) <= room) line = joined;
    else {
      if (line.length > 0) lines.push(line);
      line = word;
      while (widthOf(line) > room && line.length > 1) {
        const fits = fitting(line, room);
        lines.push(line.slice(0, fits));
        line = line.slice(fits);
      }
    }
    if (lines.length > most) break;
  }
  if (line.length > 0) lines.push(line);
  const kept = lines.slice(0, most);
  const last = kept.at(-1);
  if (lines.length > most && last) {
    kept[most - 1] = [...last.slice(0, fitting(last, room - advance('…'))), '…'];
  }
  return kept.map((characters) => characters.join(''));
}

/** How many characters fit, at least one. */
function fitting(characters: readonly string[], room: number): number {
  let [width, count] = [0, 0];
  while (count < characters.length && width + advance(characters[count]!) <= room)
    width += advance(characters[count++]!);
  return Math.max(1, count);
}

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** As XML writes it. */
const escaped = (text: string) => text.replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign]!);

/** Whether a text is read from right to left: its first letter decides. */
export function isRightToLeft(text: string): boolean {
  const letter = /\p{L}/u.exec(text)?.[0];
  return letter !== undefined && RIGHT_TO_LEFT.test(letter);
}

/**
 * One line of text in the fonts of the device.
 *
 * @param text - Any words; control characters are left out.
 * @param x - Where the line is anchored, px.
 * @param y - Its baseline, px.
 * @returns An SVG text element.
 */
export function textLine(text: string, x: number, y: number, style: TextStyle): string {
  const { sizePx, color, isBold = false, anchor = 'left' } = style;
  const isTurned = isRightToLeft(text);
  // Under `direction: rtl` a line starts at its right end.
  const ends = isTurned ? { left: 'end', right: 'start' } : { left: 'start', right: 'end' };
  const anchored = anchor === 'middle' ? 'middle' : ends[anchor];
  const way = isTurned ? ' direction="rtl"' : '';
  const weight = isBold ? ' font-weight="700"' : '';
  return `<text x="${svgNumber(x)}" y="${svgNumber(y)}" font-family="${FONTS}" font-size="${svgNumber(sizePx)}" fill="${color}" text-anchor="${anchored}"${weight}${way}>${escaped(plainLine(text))}</text>`;
}
