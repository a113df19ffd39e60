import { readFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import { zipSync } from 'fflate';
import sharp from 'sharp';
import type { RefusalCode } from '../../src/image/notice';
import { sizeFields } from './repair';

/** A file at the edge of what a photo can be, and what must become of it. */
export interface Extreme {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Code of its refusal; null where it is graded. */
  readonly refused: RefusalCode | null;
  /** Another file of the same picture, and by how many levels of 255 the two may differ: 0 means the same report. */
  readonly twin?: { readonly bytes: Uint8Array; readonly levels: number };
}

const refused = (name: string, code: RefusalCode, bytes: Uint8Array): Extreme => ({
  name,
  bytes,
  refused: code,
});
const asTwin = (name: string, bytes: Uint8Array, twin: Uint8Array, levels = 0): Extreme => ({
  name,
  bytes,
  refused: null,
  twin: { bytes: twin, levels },
});

/**
 * The list of extremes, most of them made of one good photo.
 *
 * @param photo - An upright PNG in sRGB, with EXIF data.
 */
export async function makeExtremes(photo: Uint8Array): Promise<Extreme[]> {
  const plain = new Uint8Array(await sharp(photo).png().toBuffer());
  const made = [refusedOnes(plain), oddFormats(plain), profiles(plain), reEncoded(plain), withLens(photo)];
  return (await Promise.all(made)).flat();
}

async function refusedOnes(plain: Uint8Array): Promise<Extreme[]> {
  const narrow = sharp({ create: { width: 1, height: 30_000, channels: 3, background: '#778' } });
  const [jpeg, webp, avif] = await Promise.all([
    sharp(plain).jpeg().toBuffer(),
    sharp(plain).ensureAlpha(0.9).webp().toBuffer(),
    sharp(plain).avif({ effort: 0 }).toBuffer(),
  ]);
  const heic = readFileSync(new URL('../golden/wide.heic', import.meta.url));
  return [
    refused('zero bytes', 'empty-file', new Uint8Array()),
    refused('a zip called .jpg', 'not-an-image', zipSync({ 'photo.jpg': jpeg })),
    refused('a PNG of 50,000 × 50,000 by its header', 'too-large', resized('png', plain, 50_000)),
    refused('a JPEG of 50,000 × 50,000 by its header', 'too-large', resized('jpeg', jpeg, 50_000)),
    refused('a WebP of 50,000 × 50,000 by its header', 'too-large', resized('webp', webp, 49_999)),
    refused('an AVIF of 50,000 × 50,000 by its header', 'too-large', resized('avif', avif, 50_000)),
    refused('a HEIC of 50,000 × 50,000 by its header', 'too-large', resized('heic', heic, 50_000)),
    refused('a PNG of 1 × 30,000', 'too-small', await narrow.clone().png().toBuffer()),
    refused('a JPEG of 1 × 30,000', 'too-small', await narrow.clone().jpeg().toBuffer()),
  ];
}

/** Both sides as the header states them, whatever the pixels are. */
function resized(kind: Parameters<typeof sizeFields>[0], whole: Uint8Array, side: number): Uint8Array {
  const bytes = Buffer.from(whole);
  for (const { at, length } of sizeFields(kind, whole)) {
    if (kind === 'webp') bytes.writeUIntLE(side, at, length);
    else bytes.writeUIntBE(side, at, length);
  }
  if (kind === 'png') bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}

async function oddFormats(plain: Uint8Array): Promise<Extreme[]> {
  const gray = await sharp(plain).toColorspace('b-w').png().toBuffer();
  const palette = await sharp(plain).png({ palette: true, colors: 256 }).toBuffer();
  const cmyk = await sharp(plain)
    .toColorspace('cmyk')
    .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
    .toBuffer();
  return [
    { name: 'CMYK', bytes: cmyk, refused: null },
    asTwin('16 bits', await sharp(plain).toColorspace('rgb16').png().toBuffer(), plain),
    asTwin('grayscale', gray, await sharp(gray).toColorspace('srgb').png({ palette: false }).toBuffer()),
    asTwin('palette', palette, await sharp(palette).png({ palette: false }).toBuffer()),
    asTwin('opaque alpha', await sharp(plain).ensureAlpha(1).png().toBuffer(), plain),
    asTwin('animated WebP', await animatedWebp(plain), plain),
    asTwin('animated PNG', animatedPng(plain), plain),
  ];
}

/** The photo, then its negative. */
async function animatedWebp(plain: Uint8Array): Promise<Buffer> {
  const { data, info } = await sharp(plain).raw().toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: 2 * info.height, channels: 3, pageHeight: info.height } as const;
  return sharp(Buffer.concat([data, data.map((level) => 255 - level)]), { raw })
    .webp({ lossless: true, delay: [100, 100] })
    .toBuffer();
}

/** The photo, then it again as a second frame (PNG Third Edition, section 11.3.6). */
function animatedPng(plain: Uint8Array): Buffer {
  const parts = chunksOf(plain);
  const header = parts.find(({ type }) => type === 'IHDR')!;
  const pixels = Buffer.concat(parts.filter(({ type }) => type === 'IDAT').map(({ data }) => data));
  const frame = (sequence: number) =>
    chunk(
      'fcTL',
      Buffer.concat([
        uint32(sequence),
        header.data.subarray(0, 8),
        Buffer.alloc(8),
        Buffer.from('0064006400000000', 'hex').subarray(0, 6),
      ]),
    );
  return Buffer.concat([
    plain.subarray(0, 8),
    chunk('IHDR', header.data),
    chunk('acTL', Buffer.concat([uint32(2), uint32(0)])),
    frame(0),
    chunk('IDAT', pixels),
    frame(1),
    chunk('fdAT', Buffer.concat([uint32(2), pixels])),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

async function profiles(plain: Uint8Array): Promise<Extreme[]> {
  const wide = await sharp(plain).toColorspace('rgb16').withIccProfile('p3').png().toBuffer();
  const whole = { quality: 100, chromaSubsampling: '4:4:4' } as const;
  const jpeg = await sharp(plain).jpeg(whole).toBuffer();
  const withProfile = await sharp(plain).withIccProfile('p3').jpeg(whole).toBuffer();
  const profile = jpegSegment(withProfile, 0xe2);
  const damaged = (from: number) => withSegment(jpeg, Buffer.from(profile).fill(0x55, from));
  const rubbish = Buffer.concat([Buffer.from('rubbish\0\0', 'latin1'), deflateSync(Buffer.alloc(600, 0x55))]);
  return [
    asTwin('Display P3', wide, plain, 6),
    asTwin('an ICC profile of rubbish in a PNG', withChunk(plain, 'iCCP', rubbish), plain),
    asTwin(
      'an ICC profile that cannot be unpacked in a PNG',
      withChunk(plain, 'iCCP', Buffer.from('bad\0\0none')),
      plain,
    ),
    asTwin('an ICC profile of rubbish in a JPEG', damaged(18), jpeg),
    asTwin('an ICC profile with a broken list of tags in a JPEG', damaged(18 + 128), jpeg),
  ];
}

/** Lossless, and as they are turned by EXIF, or by the boxes of an AVIF. */
async function reEncoded(plain: Uint8Array): Promise<Extreme[]> {
  const made: Extreme[] = [
    asTwin('lossless WebP', await sharp(plain).webp({ lossless: true }).toBuffer(), plain),
    asTwin('lossless AVIF', await sharp(plain).avif({ lossless: true, effort: 1 }).toBuffer(), plain),
  ];
  for (let orientation = 1; orientation <= 8; orientation++) {
    const stored = sharp(await asStored(plain, orientation)).withMetadata({ orientation });
    made.push(
      asTwin(`PNG of orientation ${orientation}`, await stored.clone().png().toBuffer(), plain),
      asTwin(
        `WebP of orientation ${orientation}`,
        await stored.clone().webp({ lossless: true }).toBuffer(),
        plain,
      ),
      asTwin(
        `AVIF of orientation ${orientation}`,
        await stored.clone().avif({ lossless: true, effort: 1 }).toBuffer(),
        plain,
      ),
    );
  }
  return made;
}

/** Lossless copies that keep the EXIF data, and with them the lens, from which the perspective is known. */
async function withLens(photo: Uint8Array): Promise<Extreme[]> {
  const kept = sharp(photo).keepExif();
  return [
    asTwin('lossless WebP with its lens', await kept.clone().webp({ lossless: true }).toBuffer(), photo),
    asTwin(
      'lossless AVIF with its lens',
      await kept.clone().avif({ lossless: true, effort: 1 }).toBuffer(),
      photo,
    ),
  ];
}

/** The pixels as they lie in a file that has to be turned upright (CIPA DC-008, tag 0x0112): 2 is mirrored, 6 turned. */
async function asStored(plain: Uint8Array, orientation: number): Promise<Buffer> {
  const turns: Readonly<Record<number, readonly [mirror: boolean, degrees: number]>> = {
    ...{ 1: [false, 0], 2: [true, 0], 3: [false, 180], 4: [true, 180] },
    ...{ 5: [true, 270], 6: [false, 270], 7: [true, 90], 8: [false, 90] },
  };
  const [mirror, degrees] = turns[orientation]!;
  const mirrored = mirror ? await sharp(plain).flop().png().toBuffer() : plain;
  return sharp(mirrored).rotate(degrees).png().toBuffer();
}

const uint32 = (value: number) => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
};

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  return Buffer.concat([uint32(data.length), body, uint32(crc32(body))]);
}

function chunksOf(png: Uint8Array): { type: string; data: Buffer }[] {
  const bytes = Buffer.from(png);
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at)) {
    const data = bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at));
    chunks.push({ type: bytes.toString('latin1', at + 4, at + 8), data });
  }
  return chunks;
}

/** A PNG with one more chunk behind its header. */
function withChunk(png: Uint8Array, type: string, data: Uint8Array): Buffer {
  return Buffer.concat([png.subarray(0, 33), chunk(type, data), png.subarray(33)]);
}

/** The first segment of a marker, marker and length included (ITU-T T.81, annex B). */
function jpegSegment(jpeg: Buffer, marker: number): Buffer {
  for (let at = 2; jpeg[at + 1] !== 0xda; at += 2 + jpeg.readUInt16BE(at + 2))
    if (jpeg[at + 1] === marker) return jpeg.subarray(at, at + 2 + jpeg.readUInt16BE(at + 2));
  throw new Error(`The JPEG has no segment ${marker.toString(16)}.`);
}

const withSegment = (jpeg: Buffer, segment: Buffer) =>
  Buffer.concat([jpeg.subarray(0, 2), segment, jpeg.subarray(2)]);
