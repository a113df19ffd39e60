/** Photos taken at each press, of which the sharpest is kept: a hand trembles about three times in that time. */
export const BURST = 5;

/** Takes one photo. */
export type TakeOne = () => Promise<Blob>;

interface Watched {
  /** Told before each photo, 1 to `BURST`. */
  readonly onShot: (number: number) => void;
  readonly signal: AbortSignal;
}

/**
 * Takes photos one after another and keeps the sharpest.
 *
 * @param take - Takes one.
 * @param sharpnessOf - Measures one.
 * @throws DOMException `AbortError` when stopped; else as the two throw.
 */
export async function takeBurst(
  take: TakeOne,
  sharpnessOf: (photo: Blob) => Promise<number>,
  { onShot, signal }: Watched,
): Promise<Blob> {
  let best: { readonly photo: Blob; readonly sharpness: number } | null = null;
  for (let number = 1; number <= BURST; number++) {
    signal.throwIfAborted();
    onShot(number);
    const photo = await take();
    const sharpness = await sharpnessOf(photo);
    if (best === null || sharpness > best.sharpness) best = { photo, sharpness };
  }
  signal.throwIfAborted();
  return best!.photo;
}
