import { decodeFile } from '../../src/cli/decodeFile';
import { Refusal } from '../../src/image/notice';

/** How the command's decoder dealt with one file. */
export interface DecodeEnd {
  readonly kind: 'decoded' | 'refused' | 'failed';
  /** A refusal's code, what went wrong, or the size of the picture. */
  readonly said: string;
}

/** A process that decodes the files whose paths it is sent, one at a time: if one kills it, it kills no more than this. */
process.on('message', async (path: string) => {
  process.send!(await endOf(path));
});
process.send!('ready');
// What runs TypeScript here stops when this module has run; the HEIC decoder is loaded later.
await new Promise((resolve) => process.on('disconnect', resolve));

async function endOf(path: string): Promise<DecodeEnd> {
  try {
    const { widthPx, heightPx, rgba } = await decodeFile(path);
    if (rgba.length !== 4 * widthPx * heightPx) throw new Error(`${rgba.length} values`);
    return { kind: 'decoded', said: `${widthPx} × ${heightPx}` };
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'refused', said: error.code };
    return { kind: 'failed', said: String(error) };
  }
}
