import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { GlossPhoto } from './glossTruth';
import type { GlossResult } from './readGlossPhoto';

const RUN = fileURLToPath(new URL('../../.config/run.mjs', import.meta.url));

/**
 * Measures photos in child processes, since one measurement keeps a core busy.
 *
 * @param photos - What to measure.
 * @param processes - How many at a time.
 * @param tell - Called after each photo.
 * @returns One result per photo, in the order of the photos.
 * @throws Error when a process ends before its work is done; it has then said why.
 */
export async function glossPool(
  photos: readonly GlossPhoto[],
  processes: number,
  tell: (done: number, result: GlossResult) => void,
): Promise<GlossResult[]> {
  const results: GlossResult[] = [];
  let next = 0;
  let done = 0;
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const child = fork(RUN, ['tests/bench/glossChild.ts']);
      let current = -1;
      child.on('message', (message) => {
        if (message !== 'ready') {
          results[current] = message as GlossResult;
          tell(++done, results[current]!);
        }
        current = next++;
        const photo = photos[current];
        if (photo) child.send(photo);
        else child.disconnect();
      });
      child.on('error', reject);
      child.on('exit', (code) => {
        if (code === 0 && current >= photos.length) resolve();
        else reject(new Error(`A measuring process ended with status ${code}.`));
      });
    });
  await Promise.all(Array.from({ length: Math.min(processes, photos.length) }, work));
  return results;
}
