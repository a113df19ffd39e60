/** The process that measures photos for the gloss bench: a photo comes in as a message, its rows go back as one. */
import { openOpenCv } from '../../src/vision/openCv';
import type { GlossPhoto } from './glossTruth';
import { readGlossPhoto } from './readGlossPhoto';

const cv = await openOpenCv();
process.on('message', async (job: GlossPhoto) => {
  const result = await readGlossPhoto(job, cv).catch((error: unknown) => {
    console.error(`${job.photoPath}: ${error instanceof Error ? error.stack : String(error)}`);
    process.exit(1);
  });
  process.send?.(result);
});
process.send?.('ready');
