import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp, { type Sharp } from 'sharp';
import type { PhotoFormat } from '../../src/image/photoFormat';

export const KINDS = ['jpeg', 'png', 'webp', 'avif', 'heic'] as const satisfies readonly PhotoFormat[];

/** A whole photo file that mutations start from. */
export interface Base {
  readonly kind: PhotoFormat;
  readonly name: string;
  readonly bytes: Uint8Array;
  /** True for a tray that is graded, which takes seconds; the others are refused in no time. */
  readonly isTray: boolean;
}

const POLISHED = sample('polished-tray.jpg');
/** The ball and one stone. */
const TRAY = { left: 960, top: 20, width: 420, height: 640 };
/** A part of the tray on which nothing lies. */
const BARE = { left: 1250, top: 0, width: 500, height: 410 };
const CAMERA = {
  IFD0: { Make: 'Invented Cameras' },
  IFD2: { FocalLengthIn35mmFilm: '70', ExposureTime: '1/50', FNumber: '2/1', ISOSpeedRatings: '100' },
};

function sample(name: string): string {
  return fileURLToPath(new URL(`../../sample-images/${name}`, import.meta.url));
}

/** A small photo of the ball and one stone, as pixels; 2.3 pixels to the millimeter unless made wider. */
export function smallTray(widthPx = TRAY.width / 2): Sharp {
  return sharp(POLISHED).extract(TRAY).resize(widthPx);
}

/** Every base, made anew: the same bytes with the same version of `sharp`. */
export async function makeBases(): Promise<Base[]> {
  const tray = await sharp(await smallTray().png().toBuffer())
    .withExif(CAMERA)
    .png()
    .toBuffer();
  const bare = await sharp(POLISHED).extract(BARE).resize(300).withExif(CAMERA).png().toBuffer();
  const from = (picture: Buffer) => sharp(picture).keepExif();
  const make: readonly (readonly [PhotoFormat, string, Sharp])[] = [
    ['jpeg', 'baseline', from(bare).withIccProfile('p3').jpeg({ quality: 85 })],
    ['jpeg', 'progressive', from(bare).jpeg({ progressive: true })],
    ['jpeg', 'CMYK', from(bare).toColorspace('cmyk').jpeg()],
    ['jpeg', 'gray', from(bare).toColorspace('b-w').jpeg()],
    ['jpeg', 'tray', from(tray).jpeg({ quality: 92 })],
    ['png', 'RGB', from(bare).withIccProfile('p3').png()],
    ['png', 'interlaced', from(bare).png({ progressive: true })],
    ['png', 'palette', from(bare).png({ palette: true, colors: 64 })],
    ['png', '16-bit', from(bare).toColorspace('rgb16').png()],
    ['png', 'tray', from(tray).png()],
    ['webp', 'lossy', from(bare).withIccProfile('p3').webp()],
    ['webp', 'lossless', from(bare).webp({ lossless: true })],
    ['webp', 'alpha', from(bare).ensureAlpha(0.5).webp()],
    ['webp', 'animated', sharp(await animation(), { animated: true }).webp()],
    ['webp', 'tray', from(tray).webp({ lossless: true })],
    ['avif', '8-bit', from(bare).avif({ effort: 1 })],
    ['avif', '10-bit', from(bare).avif({ effort: 1, bitdepth: 10 })],
    ['avif', 'turned', from(bare).withMetadata({ orientation: 6 }).avif({ effort: 1 })],
    ['avif', 'tray', from(tray).avif({ effort: 1, quality: 80 })],
  ];
  const made = await Promise.all(
    make.map(async ([kind, name, picture]) => ({
      kind,
      name,
      bytes: new Uint8Array(await picture.toBuffer()),
      isTray: name === 'tray',
    })),
  );
  const heic = ['wide.heic', 'small-tray.heic'].map((file) => ({
    kind: 'heic' as const,
    name: file,
    bytes: new Uint8Array(readFileSync(new URL(`../golden/${file}`, import.meta.url))),
    isTray: file === 'small-tray.heic',
  }));
  return [...made, ...heic];
}

/** Two frames, one under the other, as `sharp` takes an animation. */
async function animation(): Promise<Buffer> {
  const [width, pageHeight] = [300, 246];
  const pixels = Buffer.alloc(3 * width * 2 * pageHeight, 0x77).fill(0x99, 3 * width * pageHeight);
  const raw = { width, height: 2 * pageHeight, channels: 3, pageHeight } as const;
  return sharp(pixels, { raw })
    .gif({ delay: [100, 100] })
    .toBuffer();
}
