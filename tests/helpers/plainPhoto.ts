/** A JPEG of nothing but gray, drawn by the browser. */
export async function plainPhoto(widthPx: number, heightPx: number): Promise<Blob> {
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('No canvas.');
  context.fillStyle = '#777';
  context.fillRect(0, 0, widthPx, heightPx);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
}
