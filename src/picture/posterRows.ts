/** The room a stone takes. */
export interface StoneSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface PosterField {
  readonly left: number;
  readonly top: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Room under every row for the names, px. */
  readonly labelPx: number;
  /** Least gap between stones of a row, px. */
  readonly gapPx: number;
  /** Most picture pixels in a millimeter. */
  readonly mostPxPerMm: number;
}

/** Where a stone lies: its middle, and the room for its name below. */
export interface PosterSeat {
  readonly x: number;
  readonly y: number;
  /** Upper edge of its name's room. */
  readonly labelY: number;
  readonly labelWidthPx: number;
}

export interface PosterRows {
  readonly pxPerMm: number;
  /** In the order of the stones. */
  readonly seats: readonly PosterSeat[];
  /** Of all rows with their names, without the space that is left over. */
  readonly heightPx: number;
}

interface Row {
  readonly stones: number[];
  widthPx: number;
  heightPx: number;
}

/**
 * Lays stones in rows, in their order and all to one scale: as many rows, each about as wide as the others, as let the
 * stones be largest.
 *
 * @param sizes - Above 0 in both directions.
 * @param field - Where they may lie.
 * @returns Scale, seats, and the height that they take.
 */
export function posterRows(sizes: readonly StoneSize[], field: PosterField): PosterRows {
  let best: { readonly pxPerMm: number; readonly rows: readonly Row[] } = { pxPerMm: 0, rows: [] };
  for (let count = 1; count <= sizes.length && count * field.labelPx < field.heightPx; count++) {
    const pxPerMm = largestScale(sizes, count, field);
    // More rows must be worth it: a stone alone in a row rarely is.
    if (pxPerMm > 1.02 * best.pxPerMm) best = { pxPerMm, rows: balanced(sizes, pxPerMm, count, field) };
  }
  const heightPx = heightOf(best.rows, field);
  return { pxPerMm: best.pxPerMm, seats: seatsOf(best, sizes, field), heightPx };
}

function largestScale(sizes: readonly StoneSize[], count: number, field: PosterField): number {
  const fits = (pxPerMm: number) => {
    const rows = balanced(sizes, pxPerMm, count, field);
    return rows.length <= count && isFitting(rows, field);
  };
  if (fits(field.mostPxPerMm)) return field.mostPxPerMm;
  let [least, tooLarge] = [0, field.mostPxPerMm];
  for (let i = 0; i < 24; i++) {
    const middle = (least + tooLarge) / 2;
    if (fits(middle)) least = middle;
    else tooLarge = middle;
  }
  return least;
}

/** At most so many rows where the field's width allows it, the widest of them as narrow as can be. */
function balanced(
  sizes: readonly StoneSize[],
  pxPerMm: number,
  count: number,
  { widthPx, gapPx }: PosterField,
): Row[] {
  let [least, most] = [0, widthPx];
  for (let i = 0; i < 24; i++) {
    const middle = (least + most) / 2;
    if (rowsOf(sizes, pxPerMm, gapPx, middle).length <= count) most = middle;
    else least = middle;
  }
  return rowsOf(sizes, pxPerMm, gapPx, most);
}

/** Fills rows one after the other, none wider than `mostPx` but for a stone that is. */
function rowsOf(sizes: readonly StoneSize[], pxPerMm: number, gapPx: number, mostPx: number): Row[] {
  const rows: Row[] = [];
  sizes.forEach(({ widthMm, heightMm }, stone) => {
    const [width, height] = [widthMm * pxPerMm, heightMm * pxPerMm];
    const last = rows.at(-1);
    if (last && last.widthPx + gapPx + width <= mostPx) {
      last.stones.push(stone);
      last.widthPx += gapPx + width;
      last.heightPx = Math.max(last.heightPx, height);
    } else rows.push({ stones: [stone], widthPx: width, heightPx: height });
  });
  return rows;
}

const heightOf = (rows: readonly Row[], { labelPx }: PosterField) =>
  rows.reduce((sum, { heightPx }) => sum + heightPx + labelPx, 0);

function isFitting(rows: readonly Row[], field: PosterField): boolean {
  return rows.every(({ widthPx }) => widthPx <= field.widthPx) && heightOf(rows, field) <= field.heightPx;
}

function seatsOf(
  { rows, pxPerMm }: { readonly rows: readonly Row[]; readonly pxPerMm: number },
  sizes: readonly StoneSize[],
  field: PosterField,
): PosterSeat[] {
  const seats: PosterSeat[] = [];
  const spare = (field.heightPx - heightOf(rows, field)) / (rows.length + 1);
  const between = Math.min(spare, 90);
  const used = heightOf(rows, field) + between * (rows.length - 1);
  let top = field.top + Math.max(0, (field.heightPx - used) / 2);
  for (const row of rows) {
    const free = field.widthPx - row.widthPx;
    const more = Math.min(free / (row.stones.length + 1), 1.5 * field.gapPx);
    const gap = field.gapPx + more;
    let x = field.left + (free - more * (row.stones.length - 1)) / 2;
    for (const stone of row.stones) {
      const width = sizes[stone]!.widthMm * pxPerMm;
      seats[stone] = {
        x: x + width / 2,
        y: top + row.heightPx / 2,
        labelY: top + row.heightPx,
        labelWidthPx: width + 0.85 * gap,
      };
      x += width + gap;
    }
    top += row.heightPx + field.labelPx + between;
  }
  return seats;
}
