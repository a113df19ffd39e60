/**
 * Makes tray.heic and wide.heic with libheif's own encoder: `node .config/run.mjs tests/golden/heic.ts`, which
 * needs heif-enc 1.15 (Debian's libheif-examples).
 *
 * tray.heic: the coarse sample tray at 1200 × 800, stored on its side, with the EXIF entries and the turning box
 * that a phone held sideways writes. small-tray.heic: a ball and one stone, turned likewise. wide.heic: the colors of WIDE_COLORS in Display P3, with its ICC profile. scene.avif: TURNED_SCENE, upright,
 * by libvips.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { smallTray } from '../fuzz/bases';
import { TURNED_SCENE } from '../helpers/turnedScene';

const SAMPLE = fileURLToPath(new URL('../../sample-images/coarse-tray.jpg', import.meta.url));
/** sRGB colors in four bands, top to bottom. */
export const WIDE_COLORS: readonly (readonly number[])[] = [
  [200, 60, 50],
  [70, 160, 80],
  [60, 80, 180],
  [180, 180, 180],
];
const BAND = { widthPx: 320, heightPx: 64 };

/** The upright tray as PNG: what the decoded tray.heic is compared with. */
export function uprightTray(): Promise<Buffer> {
  return sharp(SAMPLE).resize(1200, 800, { kernel: 'lanczos3' }).png({ compressionLevel: 1 }).toBuffer();
}

/** Quality 0 to 100 as heif-enc takes it. */
function encode(picture: Buffer, quality: number, name: string, ...more: string[]): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'glintgrade-heic-'));
  const [from, to] = [join(folder, name), join(folder, 'picture.heic')];
  writeFileSync(from, picture);
  execFileSync('heif-enc', ['-q', String(quality), ...more, '-o', to, from]);
  const bytes = readFileSync(to);
  rmSync(folder, { recursive: true });
  return bytes;
}

/** Adds an `irot` box that turns every item it lists by 90° clockwise (ISO/IEC 23008-12, section 6.5.10). */
function withTurn(bytes: Buffer): Buffer {
  const irot = Buffer.from('0000000969726f7403', 'hex');
  const ipco = bytes.indexOf('ipco') - 4;
  const ipma = bytes.indexOf('ipma') - 4;
  const afterIpco = ipco + bytes.readUInt32BE(ipco);
  if (bytes.readUInt32BE(ipma + 12) !== 1) throw new Error('Made for files with one picture.');
  let [at, count] = [ipco + 8, 1];
  for (; at < afterIpco; at += bytes.readUInt32BE(at)) count++;
  const afterIpma = ipma + bytes.readUInt32BE(ipma);
  const essential = Buffer.from([0x80 | count]);
  for (const box of ['ipco', 'iprp', 'meta']) grow(bytes, box, irot.length);
  for (const box of ['ipma', 'iprp', 'meta']) grow(bytes, box, 1);
  bytes.writeUInt8(bytes.readUInt8(ipma + 18) + 1, ipma + 18);
  moveItems(bytes, irot.length + 1);
  const parts = [bytes.subarray(0, afterIpco), irot, bytes.subarray(afterIpco, afterIpma), essential];
  return Buffer.concat([...parts, bytes.subarray(afterIpma)]);
}

function grow(bytes: Buffer, box: string, by: number): void {
  const at = bytes.indexOf(box) - 4;
  bytes.writeUInt32BE(bytes.readUInt32BE(at) + by, at);
}

/** Item locations count from the start of the file; heif-enc 1.15 writes 4 bytes each, one extent an item. */
function moveItems(bytes: Buffer, by: number): void {
  const iloc = bytes.indexOf('iloc') - 4;
  const [version, sizes] = [bytes[iloc + 8], bytes.readUInt16BE(iloc + 12)];
  if (version !== 0 || sizes !== 0x4440) throw new Error(`Unknown item locations: ${version}, ${sizes}.`);
  for (let i = 0; i < bytes.readUInt16BE(iloc + 14); i++) {
    const offset = iloc + 16 + 18 * i + 10;
    bytes.writeUInt32BE(bytes.readUInt32BE(offset) + by, offset);
  }
}

async function makeTray(): Promise<Buffer> {
  const exif = {
    IFD0: { Orientation: '6' },
    IFD2: { FocalLengthIn35mmFilm: '52', ExposureTime: '1/50', FNumber: '2/1', ISOSpeedRatings: '100' },
  };
  const onItsSide = sharp(await uprightTray())
    .rotate(-90)
    .withExif(exif);
  const jpeg = await onItsSide.jpeg({ quality: 100, chromaSubsampling: '4:4:4' }).toBuffer();
  return withTurn(encode(jpeg, 45, 'a.jpg'));
}

async function makeSmallTray(): Promise<Buffer> {
  const onItsSide = sharp(await smallTray().png().toBuffer()).rotate(-90);
  return withTurn(encode(await onItsSide.png().toBuffer(), 70, 'a.png'));
}

async function makeWide(): Promise<Buffer> {
  const rows = WIDE_COLORS.flatMap(
    (color) => new Array(BAND.widthPx * BAND.heightPx).fill(color).flat() as number[],
  );
  const raw = { width: BAND.widthPx, height: BAND.heightPx * WIDE_COLORS.length, channels: 3 } as const;
  const wide = await sharp(Buffer.from(rows), { raw }).withIccProfile('p3').png().toBuffer();
  return encode(wide, 95, 'a.png', '-p', 'chroma=444');
}

function makeScene(): Promise<Buffer> {
  const { widthPx: width, heightPx: height, colors } = TURNED_SCENE;
  const quarter = { width: width / 2, height: height / 2, channels: 3 } as const;
  const quarters = colors.map(({ row, column, rgb: [r, g, b] }) => ({
    input: { create: { ...quarter, background: { r, g, b } } },
    left: column - width / 4,
    top: row - height / 4,
  }));
  const scene = sharp({ create: { width, height, channels: 3, background: 'white' } }).composite(quarters);
  return scene.avif({ quality: 90, effort: 4 }).toBuffer();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL('tray.heic', import.meta.url), await makeTray());
  writeFileSync(new URL('small-tray.heic', import.meta.url), await makeSmallTray());
  writeFileSync(new URL('wide.heic', import.meta.url), await makeWide());
  writeFileSync(new URL('scene.avif', import.meta.url), await makeScene());
}
