import type { KeptPhoto } from '../../journal/openJournal';

/** Decoded photos held at once: a timeline asks for one stone of each. */
const MOST_HELD = 8;

/** Decodes kept photos, each once for as long as it is among the last ones asked for. */
export function keptBitmaps(photoOf: (key: string) => Promise<KeptPhoto | null>) {
  const held = new Map<string, Promise<ImageBitmap | null>>();
  return (key: string): Promise<ImageBitmap | null> => {
    const known = held.get(key);
    if (known) {
      held.delete(key);
      held.set(key, known);
      return known;
    }
    const decoded = photoOf(key).then((kept) => (kept ? createImageBitmap(kept.photo) : null));
    held.set(key, decoded);
    const oldest = held.size > MOST_HELD ? held.keys().next().value : undefined;
    if (oldest !== undefined) held.delete(oldest);
    return decoded;
  };
}
