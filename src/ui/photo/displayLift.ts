/** Where the middle brightness of a photo should lie on the screen, and how far it is ever lifted. */
const WISHED = 0.5;
const MOST = 2;

/**
 * How much a photo is brightened on the screen only: photos taken dark enough to measure look gloomy.
 *
 * @param photo - Any decoded photo.
 * @returns Factor for the CSS `brightness` filter, 1 to 2.
 */
export function displayLift(photo: ImageBitmap): number {
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) return 1;
  context.imageSmoothingQuality = 'high';
  context.drawImage(photo, 0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = context.getImageData(0, 0, 1, 1).data;
  const mean = (red + green + blue) / 3 / 255;
  return Math.min(MOST, Math.max(1, WISHED / Math.max(0.05, mean)));
}
