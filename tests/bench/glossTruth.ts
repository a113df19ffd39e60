import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { TrueStone, Truth } from './truth';
import { truthOfVariant } from './truthOfVariant';

/** What a scene of the gloss bench truly shows: the fields of sample-images/README.md, and some of its own. */
export interface GlossTruth extends Omit<Truth, 'stones' | 'lamp'> {
  readonly lamp: Truth['lamp'] & { readonly shape: 'round' | 'square' };
  /** Part of the bench: development, test, turned or faults. */
  readonly part?: string;
  /** What is wrong with the scene on purpose; left out or empty for a good one. */
  readonly faults?: readonly string[];
  /** How each photo was developed: with which faults, and how much smaller than the render. */
  readonly variants?: readonly {
    readonly variant: string;
    readonly faults: readonly string[];
    readonly scale?: number;
  }[];
  readonly stones: readonly TrueGlossStone[];
}

export interface TrueGlossStone extends TrueStone {
  readonly form: string;
  /** Pattern of the body, such as `bands`. */
  readonly pattern?: string;
  readonly center: readonly [row: number, column: number];
  /** The same in every photo that shows this very stone, turned. */
  readonly stone?: string;
  readonly pitsInHighlight?: number;
  /** Waves of the skin: their length, and the root mean square of their slope along one direction. */
  readonly waviness?: { readonly wavelengthMm: number; readonly slope: number };
  /** Where the sound skin mirrors the lamp; not visible when a neighbor hides it from lamp or camera. */
  readonly highlight?: { readonly row: number; readonly column: number; readonly visible: boolean };
}

/** One photo of a scene. */
export interface GlossPhoto {
  readonly scene: string;
  /** How the photo was developed from the render; `clean` when nothing was done to it. */
  readonly variant: string;
  readonly photoPath: string;
  /** A darker shot of the same scene to merge; null for a single photo. */
  readonly darkerPath: string | null;
  readonly truthPath: string;
}

export const CLEAN = 'clean';
/** Two exposures of one scene, and what is read from both together. */
const PAIR = { bright: 'pair-bright', dark: 'pair-dark', merged: 'pair' };

/** The truth of a photo, in its own pixels and with its own faults. */
export function readGlossTruth({ truthPath, variant }: GlossPhoto): GlossTruth {
  return truthOfVariant(JSON.parse(readFileSync(truthPath, 'utf8')) as GlossTruth, variant);
}

/**
 * Every developed photo of every scene in a folder, in the order of names, `clean` first, and every pair of
 * exposures once more, merged, as `pair`.
 *
 * @param folder - Holds `SCENE.json` and `SCENE.VARIANT.jpg`; a bare `SCENE.jpg` is `clean` where no other is.
 */
export function glossPhotosIn(folder: string): GlossPhoto[] {
  const names = readdirSync(folder).sort();
  const isTruth = (name: string) =>
    name.endsWith('.json') && /"stones"\s*:\s*\[/.test(readFileSync(join(folder, name), 'utf8'));
  return names.filter(isTruth).flatMap((truthName) => {
    const scene = truthName.slice(0, -'.json'.length);
    const variants = variantsOf(scene, names);
    const photo = (variant: string, name: string, darker: string | null): GlossPhoto => ({
      scene,
      variant,
      photoPath: join(folder, name),
      darkerPath: darker === null ? null : join(folder, darker),
      truthPath: join(folder, truthName),
    });
    const [bright, dark] = [variants.get(PAIR.bright), variants.get(PAIR.dark)];
    return [
      ...[...variants].map(([variant, name]) => photo(variant, name, null)),
      ...(bright && dark ? [photo(PAIR.merged, bright, dark)] : []),
    ];
  });
}

/**
 * Which of the names are photos of a scene.
 *
 * @returns File name by variant, `clean` first.
 */
export function variantsOf(scene: string, names: readonly string[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const name of names) {
    if (!name.startsWith(`${scene}.`)) continue;
    const rest = /^(?:([\w-]+)\.)?(?:jpg|jpeg|png|webp)$/.exec(name.slice(scene.length + 1));
    if (!rest) continue;
    const variant = rest[1] ?? CLEAN;
    if (rest[1] !== undefined || !found.has(CLEAN)) found.set(variant, name);
  }
  const isLater = ([variant]: [string, string]) => (variant === CLEAN ? 0 : 1);
  return new Map([...found].sort((a, b) => isLater(a) - isLater(b)));
}
