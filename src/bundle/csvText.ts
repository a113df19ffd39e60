/** Numbers and true or false stay what they are; null is an empty cell. */
export type Cell = string | number | boolean | null;

/**
 * Where a spreadsheet may see the beginning of a formula: a sign, in wide and small forms too, at the beginning of a
 * cell or behind spaces and letters that cannot be seen; and behind a semicolon, tab or line break within it, where a
 * spreadsheet that parts cells by those begins another one.
 *
 * @see OWASP, "CSV Injection" (from memory): cells that begin with = + - @, tab, carriage return or line feed, or with
 *   wide forms of them, get a single quote in front; separators and quotes within may begin a cell, too.
 */
const FORMULA = /(^|[;\t\r\n])([\p{Z}\p{C}]*)(?=[=+\-@＝＋－＠﹦﹢﹣﹫])/gu;
const BREAK_FIRST = /^(?=[\t\r\n])/;
const BYTE_ORDER_MARK = '\ufeff';

/**
 * A table as CSV: comma, CRLF after every row, cells quoted where they must be.
 *
 * Text that a spreadsheet would run as a formula gets an apostrophe in front of it; numbers never do, and
 * are written with a point and no grouping. It begins with a byte order mark, which RFC 4180 neither asks for nor
 * forbids: spreadsheets otherwise read letters beyond ASCII wrongly, and readers of UTF-8 pass over it.
 *
 * @see RFC 4180, section 2.
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER_MARK + csvRows(rows);
}

/** More rows of a table that `csvText` began. */
export const csvRows = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(written).join(',')}\r\n`).join('');

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'string') return String(cell);
  const text = cell.replace(FORMULA, "$1$2'").replace(BREAK_FIRST, "'");
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
