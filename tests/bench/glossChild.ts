/** The process that measures photos for the gloss bench: a photo comes in as a message, its rows go back as one. */
import { openEngines } from '../../src/vision/openEngines';
import type { GlossPhoto } from './glossTruth';
import { readGlossPhoto } from './readGlossPhoto';

const engines = await openEngines();
process.on('message', async (job: GlossPhoto) => {
  const result = await readGlossPhoto(job, engines).catch((error: unknown) => {
    console.error(`${job.photoPath}: ${error instanceof Error ? error.stack : String(error)}`);
    process.exit(1);
  });
  process.send?.(result);
});
process.send?.('ready');
