import '../../src/worker/analysisWorker';
import { openOpenCv } from '../../src/vision/openCv';

/** The analysis worker with OpenCV's memory overwritten, as a bug in it would: its next call runs out of bounds. */
const cv = (await openOpenCv()) as unknown as { readonly HEAPU8: Uint8Array };
cv.HEAPU8.fill(0xff);
