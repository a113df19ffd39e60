import type { StoneReport } from '../../analysis/report';
import { stoneBox } from '../../picture/stoneBox';

/**
 * Cuts a stone out of the photo along its outline and draws it into the middle of a canvas.
 *
 * @param canvas - Its width and height are kept and filled as far as the stone's shape allows.
 * @param photo - The upright, full-size photo.
 * @param marginPx - Room left around the stone, canvas pixels.
 */
export function drawCutOut(
  canvas: HTMLCanvasElement,
  photo: ImageBitmap,
  stone: Pick<StoneReport, 'outline'>,
  marginPx: number,
): void {
  const context = canvas.getContext('2d');
  if (context === null) return;
  const box = stoneBox(stone.outline);
  const room = { width: canvas.width - 2 * marginPx, height: canvas.height - 2 * marginPx };
  const scale = Math.min(room.width / box.width, room.height / box.height);
  const left = (canvas.width - box.width * scale) / 2;
  const top = (canvas.height - box.height * scale) / 2;
  context.clearRect(0, 0, canvas.width, canvas.height);
  context.save();
  context.beginPath();
  for (const [row, column] of stone.outline) {
    context.lineTo(left + (column - box.column) * scale, top + (row - box.row) * scale);
  }
  context.closePath();
  context.clip();
  context.imageSmoothingQuality = 'high';
  const { column, row, width, height } = box;
  context.drawImage(photo, column, row, width, height, left, top, width * scale, height * scale);
  context.restore();
}
