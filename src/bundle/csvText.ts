/** Numbers and true or false stay what they are; null is an empty cell. */
export type Cell = string | number | boolean | null;

/** What a spreadsheet takes for the beginning of a formula, wide forms of these letters included. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;
const BYTE_ORDER_MARK = '\ufeff';

/**
 * A table as CSV: comma, CRLF after every row, cells quoted where they must be.
 *
 * Text that a spreadsheet would run as a formula gets an apostrophe in front (common practice); numbers never do, and
 * are written with a point and no grouping. It begins with a byte order mark, which RFC 4180 neither asks for nor
 * forbids: spreadsheets otherwise read letters beyond ASCII wrongly, and readers of UTF-8 pass over it.
 *
 * @see RFC 4180, section 2.
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER_MARK + rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');
}

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'string') return String(cell);
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
