import { GLYPH_HEIGHT, STROKE_GLYPHS } from './strokeGlyphs';
import { svgNumber } from './svgNumber';

/** Space between two characters, in glyph units. */
const SPACING = 2.4;

/** Where a line of text goes: its upper-left corner and the height of its capitals, px. */
export interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly heightPx: number;
}

function glyphOf(character: string) {
  const glyph = STROKE_GLYPHS[character];
  if (glyph === undefined) throw new RangeError(`No stroke is drawn for the character "${character}".`);
  return glyph;
}

/**
 * Width of a line of stroke text.
 *
 * @param text - Characters of `STROKE_GLYPHS`; lower case is raised, ß to SS.
 * @param heightPx - Height of the capitals, px.
 * @returns Width in px, 0 for an empty text.
 * @throws RangeError for a character that has no stroke.
 */
export function strokeTextWidth(text: string, heightPx: number): number {
  const widths = [...text.toUpperCase()].map((character) => glyphOf(character).width);
  const units = widths.reduce((sum, width) => sum + width, 0) + SPACING * Math.max(0, widths.length - 1);
  return (units * heightPx) / GLYPH_HEIGHT;
}

/**
 * Draws a line of text as strokes, so that it looks the same where no font is installed.
 *
 * @param text - As for {@link strokeTextWidth}.
 * @param place - Upper-left corner and height.
 * @returns One SVG group; color, and width in tenths of the height, are inherited from its parent.
 * @throws RangeError for a character that has no stroke.
 */
export function strokeText(text: string, place: TextPlace): string {
  let x = 0;
  const paths = [...text.toUpperCase()].map((character) => {
    const glyph = glyphOf(character);
    const path =
      glyph.path === '' ? '' : `<path transform="translate(${svgNumber(x)} 0)" d="${glyph.path}"/>`;
    x += glyph.width + SPACING;
    return path;
  });
  const move = `translate(${svgNumber(place.x)} ${svgNumber(place.y)})`;
  return `<g transform="${move} scale(${svgNumber(place.heightPx / GLYPH_HEIGHT)})">${paths.join('')}</g>`;
}
