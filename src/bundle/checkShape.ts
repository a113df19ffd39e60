import type { Pace } from '../progress/pace';
import { BundleError } from './bundleError';
import { BUNDLE_LIMITS } from './bundleFormat';

/** Bytes that are looked at before the page has its turn. */
const PIECE_BYTES = 2 ** 20;
const [QUOTE, BACKSLASH, COMMA] = [0x22, 0x5c, 0x2c];
const [OPEN_LIST, CLOSE_LIST, OPEN_OBJECT, CLOSE_OBJECT] = [0x5b, 0x5d, 0x7b, 0x7d];
/** About what an engine without compressed pointers holds for an object, a list and an entry of either, bytes. */
const HELD = { object: 56, list: 32, entry: 12 } as const;

/**
 * Refuses JSON whose values would take far more memory than its text, or lie in each other far deeper than records do,
 * before it is parsed: a few hundred packed kilobytes can hold a hundred million empty lists.
 *
 * Only brackets, commas and strings are looked at; what is no JSON at all is left for the parser to refuse.
 *
 * @throws BundleError `too-large` or, too deep, `broken-json`.
 * @throws What `pace` throws.
 * @see RFC 8259, section 9: a parser may set limits on the size of texts and the depth of nesting.
 */
export async function checkShape(json: Uint8Array, pace: Pace): Promise<void> {
  const { jsonDepth, heldBytes } = BUNDLE_LIMITS;
  let [depth, held, isInString, isEscaped] = [0, 0, false, false];
  for (let from = 0; from < json.length; from += PIECE_BYTES) {
    const to = Math.min(json.length, from + PIECE_BYTES);
    for (let at = from; at < to; at++) {
      const byte = json[at];
      if (isInString) {
        isInString = isEscaped || byte !== QUOTE;
        isEscaped = !isEscaped && byte === BACKSLASH;
      } else if (byte === QUOTE) isInString = true;
      else if (byte === COMMA) held += HELD.entry;
      else if (byte === OPEN_LIST || byte === OPEN_OBJECT) {
        depth++;
        held += byte === OPEN_LIST ? HELD.list : HELD.object;
        if (depth > jsonDepth) throw new BundleError('broken-json');
      } else if (byte === CLOSE_LIST || byte === CLOSE_OBJECT) depth--;
    }
    if (held > heldBytes) throw new BundleError('too-large');
    await pace.at(to / json.length);
  }
}
