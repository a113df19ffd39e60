/**
 * Least or greatest of the 8-bit values under a disc at every pixel, sixteen pixels at a time.
 *
 * @param from - Plane with `radius` more rows and columns on every side, `width + 2 * radius` columns; may be overrun.
 * @param halfWidths - Half the disc's width, an 8-bit number for each of its 2 · radius + 1 rows.
 * @param into - Plane of rows `stride` apart, each written up to 15 values past its end; rows in their order.
 */
export function extremesUnderDisc(
  from: usize,
  width: i32,
  height: i32,
  halfWidths: usize,
  radius: i32,
  isLeast: bool,
  into: usize,
  stride: i32,
): void {
  const columns = width + 2 * radius;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x += 16) {
      let extreme = isLeast ? i8x16.splat(-1) : i8x16.splat(0);
      for (let row = 0; row <= 2 * radius; row++) {
        const half = <i32>load<u8>(halfWidths + row);
        let at = from + (y + row) * columns + x + radius - half;
        const end = at + 2 * half;
        for (; at <= end; at++) {
          const values = v128.load(at);
          extreme = isLeast ? i8x16.min_u(extreme, values) : i8x16.max_u(extreme, values);
        }
      }
      v128.store(into + y * stride + x, extreme);
    }
  }
}
