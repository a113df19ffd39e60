import type { Face } from '../../history/batchHistory';
import type { Keepsake, PlacedStone } from '../../picture/placedStone';
import { paceOf } from '../../progress/pace';
import { orCalledOff, type Watch } from '../../progress/watch';
import { displayLift } from '../photo/displayLift';

/**
 * Paints a picture to keep: what is drawn, and over it the stones cut out of their photographs, brightened as on the
 * tray. A stone whose photograph was not kept stays a plain pebble.
 *
 * @param keepsake - As `src/picture` draws it.
 * @param faces - One for each of its places.
 * @param bitmapOf - Decodes a kept photo; null when it is gone.
 * @param watch - Every photograph takes about 0.1 s to decode on a computer, and the file up to a second to pack.
 * @returns A PNG file.
 * @throws Error when the browser cannot draw it, or the reason for which it was called off.
 */
export async function drawKeepsake(
  { svg, widthPx, heightPx, places }: Keepsake,
  faces: readonly Face[],
  bitmapOf: (key: string) => Promise<ImageBitmap | null>,
  watch: Watch = {},
): Promise<Blob> {
  const pace = paceOf(watch);
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('This browser draws no pictures.');
  context.imageSmoothingQuality = 'high';
  await drawSvg(context, svg);
  // Photo by photo, since the decoded ones are held only for a while.
  const keys = [...new Set(faces.map(({ photo }) => photo.photo))];
  for (const [i, key] of keys.entries()) {
    await pace.at(0.1 + (0.6 * i) / keys.length);
    const bitmap = key === null ? null : await orCalledOff(watch, bitmapOf(key));
    if (bitmap === null) continue;
    const lift = displayLift(bitmap);
    faces.forEach((face, i) => {
      const place = places[i];
      if (face.photo.photo === key && place) drawStone(context, bitmap, face, place, lift);
    });
  }
  await pace.at(0.7);
  const packed = new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  const file = await orCalledOff(watch, packed);
  if (file === null) throw new Error('The picture is larger than this browser can draw.');
  return file;
}

async function drawSvg(context: CanvasRenderingContext2D, svg: string): Promise<void> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const drawing = new Image();
    drawing.src = address;
    await drawing.decode();
    context.drawImage(drawing, 0, 0);
  } finally {
    URL.revokeObjectURL(address);
  }
}

function drawStone(
  context: CanvasRenderingContext2D,
  bitmap: ImageBitmap,
  { photo, stone }: Face,
  { x, y, scale, turnDeg, middle }: PlacedStone,
  lift: number,
): void {
  if (photo.longestPx === null) return;
  // Outlines are in pixels of the measured photo; the kept one may be smaller.
  const shrunk = photo.longestPx / Math.max(bitmap.width, bitmap.height);
  context.save();
  context.translate(x, y);
  context.rotate((turnDeg * Math.PI) / 180);
  context.scale(scale, scale);
  context.translate(-middle[1], -middle[0]);
  context.beginPath();
  for (const [row, column] of stone.outline) context.lineTo(column, row);
  context.closePath();
  context.clip();
  const [width, height] = [bitmap.width * shrunk, bitmap.height * shrunk];
  context.drawImage(bitmap, 0, 0, width, height);
  if (lift > 1) {
    // Adding a share of the photo to itself brightens it, in every browser.
    context.globalCompositeOperation = 'lighter';
    context.globalAlpha = lift - 1;
    context.drawImage(bitmap, 0, 0, width, height);
  }
  context.restore();
}
