import type { Addition } from './additions';
import { ofWholeAdditions } from './additions';
import type { CopiedAddition, SafetyCopy } from './safetyCopy';

/** A journal's additions, as far as its database still has them. */
export interface NotedAdditions {
  readonly ids: () => Promise<readonly string[]>;
  /** What a piece brought; null when it is gone. */
  readonly read: (id: string) => Promise<(CopiedAddition & { readonly addition: Addition }) | null>;
  /** Adds a piece again that is gone. @returns How many records were not there. */
  readonly restore: (piece: CopiedAddition & { readonly addition: Addition }) => Promise<number>;
}

/**
 * Brings journal and safety copy level: what the database lost comes back from the copy, and what was never copied, as
 * before there was one or when the browser was closed too soon, is copied now. Additions that the copy has only in part
 * stay out, as a bundle is taken in whole or not at all.
 *
 * @returns How many records came back.
 */
export async function makeWhole(noted: NotedAdditions, copy: SafetyCopy): Promise<number> {
  const present = new Set(await noted.ids());
  const copied = await copy.ids();
  const lost = [...copied].filter((id) => !present.has(id)).sort();
  let restored = 0;
  for (const id of ofWholeAdditions(lost, new Set([...present, ...copied]))) {
    const piece = await copy.read(id);
    if (piece) restored += await noted.restore(piece);
  }
  for (const id of present) {
    if (copied.has(id)) continue;
    const piece = await noted.read(id);
    if (piece) await copy.keep(piece.addition, piece);
  }
  return restored;
}
