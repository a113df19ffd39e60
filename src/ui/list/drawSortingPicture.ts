import { paceOf } from '../../progress/pace';
import { orCalledOff, type Watch } from '../../progress/watch';

/**
 * Lays a sorting picture over its photo.
 *
 * @param photo - The upright, full-size photo.
 * @param svg - As `sortingPicture` draws it; where it is taller than the photo, its legend goes below.
 * @param watch - Twelve megapixels take 1 s on a computer, nearly all of it packing the file.
 * @returns A PNG file.
 * @throws Error when the browser cannot draw it, as when the photo is larger than its canvas, or the reason for which it
 *   was called off.
 */
export async function drawSortingPicture(photo: ImageBitmap, svg: string, watch: Watch = {}): Promise<Blob> {
  const pace = paceOf(watch);
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const drawing = new Image();
    drawing.src = address;
    await drawing.decode();
    await pace.at(0.1);
    const canvas = document.createElement('canvas');
    canvas.width = photo.width;
    canvas.height = drawing.naturalHeight;
    const context = canvas.getContext('2d');
    context?.drawImage(photo, 0, 0);
    context?.drawImage(drawing, 0, 0);
    await pace.at(0.3);
    const packed = new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    const file = await orCalledOff(watch, packed);
    if (file === null) throw new Error('The sorting picture is larger than this browser can draw.');
    return file;
  } finally {
    URL.revokeObjectURL(address);
  }
}
