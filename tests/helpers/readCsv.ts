/**
 * Reads CSV by the letter of the grammar, and nothing that does not follow it.
 *
 * @throws Error where the text leaves the grammar.
 * @see RFC 4180, section 2: record = field *(COMMA field), field = escaped / non-escaped; every record ends with CRLF.
 */
export function readCsv(text: string): string[][] {
  const field = /"((?:[^"]|"")*)"(,|\r\n)|([^",\r\n]*)(,|\r\n)/y;
  const records: string[][] = [];
  let record: string[] = [];
  while (field.lastIndex < text.length) {
    const at = field.lastIndex;
    const found = field.exec(text);
    if (!found) throw new Error(`No field of RFC 4180 at ${at}: ${text.slice(at, at + 40)}`);
    const [, escaped, endOfEscaped, plain, endOfPlain] = found;
    record.push(escaped?.replaceAll('""', '"') ?? plain ?? '');
    if ((endOfEscaped ?? endOfPlain) === '\r\n') {
      records.push(record);
      record = [];
    }
  }
  return records;
}
