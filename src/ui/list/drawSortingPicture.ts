/**
 * Lays a sorting picture over its photo.
 *
 * @param photo - The upright, full-size photo.
 * @param svg - As `sortingPicture` draws it; where it is taller than the photo, its legend goes below.
 * @returns A PNG file.
 * @throws Error when the browser cannot draw it, as when the photo is larger than its canvas.
 */
export async function drawSortingPicture(photo: ImageBitmap, svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const drawing = new Image();
    drawing.src = address;
    await drawing.decode();
    const canvas = document.createElement('canvas');
    canvas.width = photo.width;
    canvas.height = drawing.naturalHeight;
    const context = canvas.getContext('2d');
    context?.drawImage(photo, 0, 0);
    context?.drawImage(drawing, 0, 0);
    const file = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (file === null) throw new Error('The sorting picture is larger than this browser can draw.');
    return file;
  } finally {
    URL.revokeObjectURL(address);
  }
}
