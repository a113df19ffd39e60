const MOST_OCTETS = 75;

/**
 * Text as a value of a calendar's property: backslash, semicolon, comma and line breaks escaped, control characters left out.
 *
 * @see RFC 5545, 3.3.11 (TEXT) and 3.1 (CONTROL).
 */
export function calendarText(text: string): string {
  return text
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/(?!\t)\p{Cc}/gu, '');
}

/**
 * Content lines as a calendar file: each ended by CRLF, and folded so that none has more than 75 octets of UTF-8; no
 * character is cut in two.
 *
 * @see RFC 5545, 3.1.
 */
export function calendarLines(lines: readonly string[]): string {
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function folded(line: string): string {
  let [text, octets] = ['', 0];
  for (const character of line) {
    const size = new TextEncoder().encode(character).length;
    if (octets + size > MOST_OCTETS) {
      text += '\r\n ';
      octets = 1;
    }
    text += character;
    octets += size;
  }
  return text;
}
