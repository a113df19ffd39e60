/** Stands for no pixel. */
const NONE = -1;

/**
 * Pixels in buckets of nearly equal totals, the lowest bucket given first: a ring of lists through the pixels themselves,
 * so that each is in one at most and moves at no cost.
 */
export class PixelBuckets {
  readonly #width: number;
  readonly #first: Int32Array;
  readonly #last: Int32Array;
  readonly #before: Int32Array;
  readonly #after: Int32Array;
  /** Place in the ring of the bucket each pixel is in. */
  readonly #where: Int32Array;
  #place = 0;
  #count = 0;

  /**
   * @param pixels - Number of pixels.
   * @param width - Totals that share a bucket differ by less, > 0.
   * @param farthest - No total put in is more above the one taken out last.
   */
  constructor(pixels: number, width: number, farthest: number) {
    this.#width = width;
    const ring = Math.ceil(farthest / width) + 2;
    this.#first = new Int32Array(ring).fill(NONE);
    this.#last = new Int32Array(ring).fill(NONE);
    this.#before = new Int32Array(pixels).fill(NONE);
    this.#after = new Int32Array(pixels).fill(NONE);
    this.#where = new Int32Array(pixels).fill(NONE);
  }

  /** Puts a pixel in, or moves it. */
  put(pixel: number, total: number): void {
    if (this.#where[pixel] !== NONE) this.#remove(pixel);
    const place = Math.floor(total / this.#width) % this.#first.length;
    const last = this.#last[place]!;
    this.#where[pixel] = place;
    this.#before[pixel] = last;
    this.#after[pixel] = NONE;
    if (last === NONE) this.#first[place] = pixel;
    else this.#after[last] = pixel;
    this.#last[place] = pixel;
    this.#count++;
  }

  /** @returns A pixel of the lowest bucket, taken out: the one put in first; −1 when there is none. */
  take(): number {
    if (this.#count === 0) return NONE;
    while (this.#first[this.#place] === NONE) this.#place = (this.#place + 1) % this.#first.length;
    const pixel = this.#first[this.#place]!;
    this.#remove(pixel);
    return pixel;
  }

  #remove(pixel: number): void {
    const place = this.#where[pixel]!;
    const before = this.#before[pixel]!;
    const after = this.#after[pixel]!;
    if (before === NONE) this.#first[place] = after;
    else this.#after[before] = after;
    if (after === NONE) this.#last[place] = before;
    else this.#before[after] = before;
    this.#where[pixel] = NONE;
    this.#count--;
  }
}
