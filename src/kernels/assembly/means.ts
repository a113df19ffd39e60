import { splat } from './lanes';

/**
 * Weighted means around each block of q × q samples; the edge is repeated outward.
 *
 * @param fine - `width * q` columns and `height * q` rows.
 * @param kernel - `length` weights, down and across, the middle ones of the block itself; the same from both ends.
 * @param line - Room for `q + 1` rows of the length of `fine`'s, each with `length + 24` more.
 * @param into - `width * height` 64-bit floats.
 */
export function blockMeans(
  fine: usize,
  width: i32,
  height: i32,
  q: i32,
  kernel: usize,
  length: i32,
  line: usize,
  into: usize,
): void {
  const columns = width * q;
  const rows = height * q;
  const reach = (length - q) >> 1;
  const lineBytes = (<usize>(columns + 2 * reach + 24)) << 2;
  const inner = line + ((<usize>reach) << 2);
  const phase = (<usize>(width + (2 * reach) / q + 8)) << 2;
  const phases = line + lineBytes;
  for (let y = 0; y < height; y++) {
    meansDown(fine, columns, rows, y * q - reach, kernel, length, false, inner);
    repeatEnds(inner, columns, reach);
    if (q > 1) dealOut(line, columns + 2 * reach, q, phases, phase);
    const from = q > 1 ? phases : line;
    for (let x = 0; x < width; x += 4) {
      let sum = splat(0);
      let step = from + ((<usize>x) << 2);
      for (let j = 0; j < length; step += 4) {
        let at = step;
        for (let k = 0; k < q && j < length; k++, j++, at += phase) {
          sum = f32x4.add(sum, f32x4.mul(v128.load32_splat(kernel + ((<usize>j) << 2)), v128.load(at)));
        }
      }
      const to = into + ((<usize>(y * width + x)) << 3);
      v128.store(to, f64x2.promote_low_f32x4(sum));
      v128.store(to, f64x2.promote_low_f32x4(v128.shuffle<f32>(sum, sum, 2, 3, 0, 1)), 16);
    }
  }
}

/**
 * Convolves a plane; beyond the border it is mirrored about its outermost values.
 *
 * @param weights - `length` of them, an odd number, down and across.
 * @param line - Room for a row of `width + length + 24` values.
 * @param into - Another plane.
 */
export function convolvePlane(
  from: usize,
  width: i32,
  height: i32,
  weights: usize,
  length: i32,
  line: usize,
  into: usize,
): void {
  const reach = length >> 1;
  const inner = line + ((<usize>reach) << 2);
  for (let y = 0; y < height; y++) {
    meansDown(from, width, height, y - reach, weights, length, true, inner);
    for (let k = 1; k <= reach + 4; k++) {
      if (k <= reach)
        store<f32>(inner - ((<usize>k) << 2), load<f32>(inner + ((<usize>mirrored(-k, width)) << 2)));
      const beyond = width - 1 + k;
      store<f32>(inner + ((<usize>beyond) << 2), load<f32>(inner + ((<usize>mirrored(beyond, width)) << 2)));
    }
    const to = into + ((<usize>(y * width)) << 2);
    for (let x = 0; x < width; x += 16) {
      const step = line + ((<usize>x) << 2);
      let a = splat(0);
      let b = splat(0);
      let c = splat(0);
      let d = splat(0);
      for (let j: usize = 0; j < (<usize>length) << 2; j += 4) {
        const weight = v128.load32_splat(weights + j);
        a = f32x4.add(a, f32x4.mul(weight, v128.load(step + j)));
        b = f32x4.add(b, f32x4.mul(weight, v128.load(step + j, 16)));
        c = f32x4.add(c, f32x4.mul(weight, v128.load(step + j, 32)));
        d = f32x4.add(d, f32x4.mul(weight, v128.load(step + j, 48)));
      }
      const at = to + ((<usize>x) << 2);
      v128.store(at, a);
      v128.store(at, b, 16);
      v128.store(at, c, 32);
      v128.store(at, d, 48);
    }
  }
}

/** The place that stands for one beyond the border: −1 is 1, and `count` is `count − 2`. */
function mirrored(place: i32, count: i32): i32 {
  if (count === 1) return 0;
  while (place < 0 || place >= count) place = place < 0 ? -place : 2 * count - 2 - place;
  return place;
}

/** Weighted sums of `length` rows from `first` on, which may lie outside. */
function meansDown(
  fine: usize,
  columns: i32,
  rows: i32,
  first: i32,
  kernel: usize,
  length: i32,
  isMirrored: bool,
  into: usize,
): void {
  for (let x = 0; x < columns; x += 16) {
    let a = splat(0);
    let b = splat(0);
    let c = splat(0);
    let d = splat(0);
    const column = fine + ((<usize>x) << 2);
    for (let j = 0; j < length; j++) {
      const place = first + j;
      const row = isMirrored ? mirrored(place, rows) : min(rows - 1, max(0, place));
      const weight = v128.load32_splat(kernel + ((<usize>j) << 2));
      const at = column + ((<usize>(row * columns)) << 2);
      a = f32x4.add(a, f32x4.mul(weight, v128.load(at)));
      b = f32x4.add(b, f32x4.mul(weight, v128.load(at, 16)));
      c = f32x4.add(c, f32x4.mul(weight, v128.load(at, 32)));
      d = f32x4.add(d, f32x4.mul(weight, v128.load(at, 48)));
    }
    const to = into + ((<usize>x) << 2);
    v128.store(to, a);
    v128.store(to, b, 16);
    v128.store(to, c, 32);
    v128.store(to, d, 48);
  }
}

function repeatEnds(inner: usize, columns: i32, reach: i32): void {
  const first = load<f32>(inner);
  const end = inner + ((<usize>columns) << 2);
  const last = load<f32>(end - 4);
  for (let k: usize = 1; k <= <usize>reach; k++) store<f32>(inner - (k << 2), first);
  for (let k: usize = 0; k < <usize>(reach + 4); k++) store<f32>(end + (k << 2), last);
}

/** Every q-th value of a line into a row of its own, so that neighbors in it belong to neighboring blocks. */
function dealOut(line: usize, count: i32, q: i32, phases: usize, phase: usize): void {
  let to = phases;
  let k = 0;
  for (let i: usize = 0; i < <usize>count; i++) {
    store<f32>(to + <usize>k * phase, load<f32>(line + (i << 2)));
    if (++k === q) {
      k = 0;
      to += 4;
    }
  }
}
