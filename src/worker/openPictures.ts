import { photoFormat } from '../image/photoFormat';
import { webpOrientation } from '../image/webpTurn';

/** Bytes that tell a file's format. */
const FIRST_BYTES = 256;

/**
 * Gives pictures that the page can show: a photo itself, or a JPEG of a HEIC that this browser cannot
 * show, and of a WebP that has to be turned upright, which browsers do not agree on.
 *
 * Only for showing: measured is always the photo. Each photo is turned into a picture once for as long as it is held.
 *
 * @returns A function that never throws: what cannot be decoded comes back as it is.
 */
export function openPictures(startWorker: () => Worker = startPictureWorker): (photo: Blob) => Promise<Blob> {
  const known = new WeakMap<Blob, Promise<Blob>>();
  return (photo) => {
    const held = known.get(photo) ?? showable(photo, startWorker);
    known.set(photo, held);
    return held;
  };
}

async function showable(photo: Blob, startWorker: () => Worker): Promise<Blob> {
  const start = new Uint8Array(await photo.slice(0, FIRST_BYTES).arrayBuffer());
  const format = photoFormat(start);
  if (format === 'webp')
    return (await isTurned(photo)) ? ((await askWorker(photo, startWorker())) ?? photo) : photo;
  if (format !== 'heic') return photo;
  const shown = await createImageBitmap(photo).catch(() => null);
  shown?.close();
  return shown ? photo : ((await askWorker(photo, startWorker())) ?? photo);
}

async function isTurned(webp: Blob): Promise<boolean> {
  return webpOrientation(new Uint8Array(await webp.arrayBuffer())) !== 1;
}

/** One worker for one photo: the decoder's memory goes with it. */
function askWorker(photo: Blob, worker: Worker): Promise<Blob | null> {
  return new Promise<Blob | null>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Blob | null>) => resolve(data);
    worker.onerror = (event) => {
      event.preventDefault();
      resolve(null);
    };
    worker.postMessage(photo);
  }).finally(() => worker.terminate());
}

function startPictureWorker(): Worker {
  return new Worker(new URL('./pictureWorker.ts', import.meta.url), { type: 'module' });
}
