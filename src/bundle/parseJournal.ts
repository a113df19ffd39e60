import type { Pace } from '../progress/pace';
import { BundleError } from './bundleError';
import { checkShape } from './checkShape';

/** Bytes that are read at a time. */
const PIECE_BYTES = 2 ** 17;
/** Share of the time that looking at its shape takes. */
const SHAPED = 0.15;
/** How the first line of a bundle's journal ends, and what its last one is. */
const [RECORDS, END] = ['"records":[', ']}'];

/**
 * Parses a bundle's `journal.json`: line by line where it has one record a line, as bundles are written, and in one go,
 * which holds the page up, where another program laid it out anew.
 *
 * @param json - In UTF-8.
 * @returns What `JSON.parse` returns.
 * @throws BundleError `broken-json` or, as `checkShape` says, `too-large`.
 * @throws What `pace` throws.
 */
export async function parseJournal(json: Uint8Array, pace: Pace): Promise<unknown> {
  await checkShape(json, pace.part(0, SHAPED));
  return (await byLines(json, pace.part(SHAPED, 1))) ?? inOneGo(json);
}

function inOneGo(json: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(json));
  } catch {
    throw new BundleError('broken-json');
  }
}

/** Null where it is not laid out so. */
async function byLines(json: Uint8Array, pace: Pace): Promise<unknown> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const records: unknown[] = [];
  let [head, isOver] = [null as object | null, false];
  // Pieces of a line that goes on: put together only once it ends, or a long one would be copied over and over.
  let rest: string[] = [];
  // Whether a comma says that another record follows; null before the first one.
  let goesOn: boolean | null = null;
  const take = (line: string) => {
    if (head === null) {
      head = headOf(line);
      return;
    }
    if (isOver || (line === END ? goesOn === true : goesOn === false)) throw new SyntaxError('Out of order.');
    isOver = line === END;
    if (isOver) return;
    goesOn = line.endsWith(',');
    records.push(JSON.parse(goesOn ? line.slice(0, -1) : line));
  };
  for (let from = 0; from < json.length; from += PIECE_BYTES) {
    try {
      const isLast = from + PIECE_BYTES >= json.length;
      const piece = decoder.decode(json.subarray(from, from + PIECE_BYTES), { stream: !isLast });
      const [first = '', ...others] = piece.split('\n');
      rest.push(first);
      for (const line of others) {
        take(rest.join(''));
        rest = [line];
      }
    } catch {
      return null;
    }
    await pace.at(Math.min(1, (from + PIECE_BYTES) / json.length));
  }
  return isOver && rest.join('') === '' ? { ...head, records } : null;
}

/** What stands before the records. */
function headOf(line: string): object {
  if (!line.endsWith(RECORDS)) throw new SyntaxError('The first line does not end where records begin.');
  return JSON.parse(`${line}${END}`) as object;
}
