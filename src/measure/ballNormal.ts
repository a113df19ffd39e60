import { combine, cross, normalize, type Vector } from '../optics/vector';
import type { Circle } from './circleFit';

/**
 * Surface normals of a ball as seen in the picture.
 *
 * @param ball - The ball's circle.
 * @param view - Unit vector from the ball to the camera: x right, y up, z along the camera's axis.
 * @returns Unit normal at a row and column; at the rim for places outside.
 */
export function ballNormal(ball: Circle, view: Vector): (row: number, column: number) => Vector {
  const right = normalize(cross([0, 1, 0], view));
  const up = cross(view, right);
  return (row, column) => {
    const x = (column - ball.column) / ball.radiusPx;
    const y = (ball.row - row) / ball.radiusPx;
    return normalize(combine([x, right], [y, up], [Math.sqrt(Math.max(0, 1 - x * x - y * y)), view]));
  };
}
