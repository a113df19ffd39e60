import { sharpness } from '../camera/sharpness';
import type { Photo } from '../image/photo';
import { openOpenCv } from '../vision/openCv';
import { lookAtFrame } from './lookAtFrame';
import type { PreviewAnswer, PreviewOrder } from './messages';

/** Side of the middle of a photo in which its sharpness is measured, pixels. */
const SHARP_SIDE_PX = 2048;

/** Looks at a frame, which it closes, or measures a photo's sharpness; what goes wrong is an answer too. */
export async function answerPreview(order: PreviewOrder): Promise<PreviewAnswer> {
  const { id } = order;
  try {
    if (order.kind === 'sharpness')
      return { kind: 'sharpness', id, sharpness: await sharpnessOf(order.photo) };
    const photo = middleOf(order.frame, Number.POSITIVE_INFINITY);
    order.frame.close();
    return { kind: 'preview', id, preview: lookAtFrame(photo, order.knowledge, await openOpenCv()) };
  } catch (error) {
    return { kind: 'broken', id, message: error instanceof Error ? error.message : String(error) };
  }
}

async function sharpnessOf(photo: Blob): Promise<number> {
  const bitmap = await createImageBitmap(photo);
  try {
    const { rgba, widthPx, heightPx } = middleOf(bitmap, SHARP_SIDE_PX);
    return sharpness(rgba, widthPx, heightPx);
  } finally {
    bitmap.close();
  }
}

/** The pixels of a picture's middle, in sRGB. */
function middleOf(bitmap: ImageBitmap, mostPx: number): Photo {
  const widthPx = Math.min(bitmap.width, mostPx);
  const heightPx = Math.min(bitmap.height, mostPx);
  const context = new OffscreenCanvas(widthPx, heightPx).getContext('2d', {
    willReadFrequently: true,
    colorSpace: 'srgb',
  });
  if (!context) throw new Error('The browser gives no canvas to read the frame on.');
  context.drawImage(
    bitmap,
    Math.round((widthPx - bitmap.width) / 2),
    Math.round((heightPx - bitmap.height) / 2),
  );
  return { widthPx, heightPx, rgba: context.getImageData(0, 0, widthPx, heightPx).data };
}
