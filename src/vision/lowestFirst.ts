/** A queue that gives the lowest item first and, among equals, the one added first: a binary heap. */
export class LowestFirst {
  readonly #items: Int32Array;
  readonly #heights: Float64Array;
  readonly #turns: Float64Array;
  #count = 0;
  #turn = 0;

  /** @param capacity - Most items it can hold at one time. */
  constructor(capacity: number) {
    this.#items = new Int32Array(capacity);
    this.#heights = new Float64Array(capacity);
    this.#turns = new Float64Array(capacity);
  }

  /** @param item - A whole number, ≥ 0. */
  add(item: number, height: number): void {
    let place = this.#count++;
    const turn = this.#turn++;
    while (place > 0) {
      const parent = (place - 1) >> 1;
      if (!this.#isBefore(height, turn, parent)) break;
      this.#move(parent, place);
      place = parent;
    }
    this.#put(place, item, height, turn);
  }

  /** @returns The lowest item, taken out; −1 when there is none. */
  take(): number {
    if (this.#count === 0) return -1;
    const first = this.#items[0]!;
    const last = --this.#count;
    if (last > 0) this.#sink(this.#items[last]!, this.#heights[last]!, this.#turns[last]!);
    return first;
  }

  #sink(item: number, height: number, turn: number): void {
    let place = 0;
    for (;;) {
      let child = 2 * place + 1;
      if (child >= this.#count) break;
      const other = child + 1;
      if (other < this.#count && this.#isBefore(this.#heights[other]!, this.#turns[other]!, child))
        child = other;
      if (this.#isBefore(height, turn, child)) break;
      this.#move(child, place);
      place = child;
    }
    this.#put(place, item, height, turn);
  }

  #isBefore(height: number, turn: number, place: number): boolean {
    const there = this.#heights[place]!;
    return height < there || (height === there && turn < this.#turns[place]!);
  }

  #move(from: number, to: number): void {
    this.#put(to, this.#items[from]!, this.#heights[from]!, this.#turns[from]!);
  }

  #put(place: number, item: number, height: number, turn: number): void {
    this.#items[place] = item;
    this.#heights[place] = height;
    this.#turns[place] = turn;
  }
}
