import sharp, { type Sharp } from 'sharp';
import { expect, it } from 'vitest';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import { mergeExposures } from '../../src/analysis/mergeExposures';
import type { AnalysisOptions } from '../../src/analysis/options';
import { decodeFile } from '../../src/cli/decodeFile';
import { REFUSALS, Refusal, type RefusalCode, WARNINGS, type WarningCode } from '../../src/image/notice';
import type { Photo } from '../../src/image/photo';
import { openEngines } from '../../src/vision/openEngines';
import { wrongPhoto } from '../bench/wrongPhotos';
import { exposed, paintedOver, turnedAround } from '../helpers/alteredPhoto';
import { drawLitTray } from '../helpers/drawLitTray';
import { TRAY_BALL_MM, TRAY_LAMP, TRAY_STONES } from '../helpers/drawTray';
import { photoFile } from '../helpers/photoFile';
import { temporaryFolder } from '../helpers/temporaryFolder';

const engines = await openEngines();
const folder = await temporaryFolder();
const [CLOSE_UP, POLISHED] = ['sample-images/close-up.jpg', 'sample-images/polished-tray.jpg'];
const withBall: AnalysisOptions = { ballMm: 16, ballAt: null, rig: null };

const wholePhoto = await decodeFile(CLOSE_UP);

/** What `sharp` makes of pictures, as a photo of the same camera. */
async function pictured(picture: Sharp): Promise<Photo> {
  const { data, info } = await picture.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const { rgba: _, ...about } = wholePhoto;
  return { ...about, widthPx: info.width, heightPx: info.height, rgba: new Uint8ClampedArray(data) };
}

const pixelsOf = ({ rgba, widthPx, heightPx }: Photo) =>
  sharp(Buffer.from(rgba.buffer, rgba.byteOffset, rgba.length), {
    raw: { width: widthPx, height: heightPx, channels: 4 },
  });
const altered = (from: Photo, alter: (picture: Sharp) => Sharp) => pictured(alter(pixelsOf(from)));

/** The sample at 800 pixels, about nine to the millimeter, to be measured in little time. */
const photo = await pictured(sharp(CLOSE_UP).resize(800));
const measure = (taken: Photo, options: AnalysisOptions = withBall, lampMoved: Photo | null = null) =>
  analyzePhoto(taken, options, engines, () => {}, lampMoved);

const good = await measure(photo);
const { rig } = good;
const ball = good.ball!;
const trayColor = rig.scene!.tray[4]!;
const byRig: AnalysisOptions = { ballMm: null, ballAt: null, rig };
const bare = paintedOver(photo, { ...ball, radiusPx: 1.9 * ball.radiusPx }, trayColor);

/** A place on the ball, in its radii from its middle, right and up. */
const onBall = (right: number, up: number, radius: number) => ({
  row: ball.row - up * ball.radiusPx,
  column: ball.column + right * ball.radiusPx,
  radiusPx: radius * ball.radiusPx,
});
// Where a sphere mirrors the lamp to the camera its normal lies halfway between both.
const [x, y, z] = rig.light.direction;
const [lampRight, lampUp] = [x, y].map((part) => part / Math.hypot(x, y, 1 + z)) as [number, number];
const [BLACK, PALE] = [[0.01, 0.01, 0.01] as const, [0.85, 0.85, 0.85] as const];

const reddish = (from: Photo): Photo => ({
  ...from,
  rgba: from.rgba.map((level, i) => (i % 4 === 0 ? 0.85 * level : level)),
});
const fileOf = async (name: string, bytes: Uint8Array) => decodeFile(await folder.save(name, bytes));
const pngOf = (width: number, height: number) => {
  const header = Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex');
  const size = Buffer.alloc(17);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  return Buffer.concat([header, size, Buffer.from('0000000049454e44ae426082', 'hex')]);
};

/** What is done to a photo or its file for each refusal. */
const REFUSED: Readonly<Record<RefusalCode, () => Promise<unknown>>> = {
  'empty-file': () => fileOf('empty.jpg', new Uint8Array()),
  'not-an-image': () => fileOf('letter.jpg', Buffer.from('Dear stones, please shine.')),
  truncated: async () => fileOf('half.jpg', (await photoFile('jpeg')).subarray(0, 2000)),
  'too-small': async () => fileOf('small.png', await photoFile('png', { width: 300, height: 199 })),
  'too-large': () => fileOf('large.png', pngOf(10_000, 5001)),
  'no-stone': () => measure(paintedOver(photo, { row: 270, column: 400, radiusPx: 900 }, trayColor), byRig),
  'no-ball': () => measure(bare),
  'out-of-focus': async () => measure(await altered(photo, (picture) => picture.blur(6))),
  'too-dark': () => measure(exposed(bare, 0.05)),
  'low-resolution': async () => measure(await altered(bare, (picture) => picture.resize(540))),
  'exposures-differ-in-size': async () =>
    mergeExposures([photo, await altered(photo, (picture) => picture.resize(700))]),
  'exposures-differ-in-scene': async () => mergeExposures([photo, turnedAround(photo)]),
};

it.each(REFUSALS)('refuses a sample photo, or a file, altered so that it must be: %s', async (code) => {
  const reason = await REFUSED[code]().then(
    () => 'taken',
    (error: unknown) => error,
  );
  expect(reason).toBeInstanceOf(Refusal);
  expect((reason as Refusal).code).toBe(code);
});

/** A photo that shows no stones, see tests/bench/wrong-photos. */
const wrong = (name: string) => decodeFile(`tests/bench/wrong-photos/development/${name}.jpg`);
const { scene: _, ...withoutScene } = rig;
const wet = TRAY_STONES.map((stone) => ({ ...stone, n: 1.333, alpha: 0 }));

/** What is done to a photo for each warning. */
const WARNED: Readonly<
  Record<WarningCode, () => Promise<{ readonly warnings: readonly { readonly code: WarningCode }[] }>>
> = {
  'ball-clipped': () => measure(exposed(photo, 2)),
  'low-resolution': async () => measure(await altered(photo, (picture) => picture.resize(320))),
  'stone-cut-off': async () =>
    measure(
      await altered(photo, (picture) => picture.extract({ left: 222, top: 0, width: 578, height: 533 })),
    ),
  'lamp-too-large': () => measure(paintedOver(photo, onBall(lampRight, lampUp, 0.25), PALE)),
  blurred: async () => measure(await altered(photo, (picture) => picture.blur(2))),
  compressed: async () =>
    measure(
      await fileOf('compressed.jpg', await sharp(CLOSE_UP).resize(800).jpeg({ quality: 40 }).toBuffer()),
    ),
  'too-dark': () => measure(exposed(photo, 0.05)),
  clipped: () => measure(exposed(photo, 4)),
  'second-light': () => measure(paintedOver(photo, onBall(0.2, -0.4, 0.06), PALE)),
  'lamp-partly': () => measure(paintedOver(photo, onBall(lampRight - 0.11, lampUp, 0.1), BLACK)),
  // No photo of wet stones lies in the repository: this one is drawn with a film of water.
  'wet-stones': () => measure(drawLitTray({}, [TRAY_LAMP], wet), { ...withBall, ballMm: TRAY_BALL_MM }),
  // With the real ball taken out of the tray the printed one is read.
  'ball-unlit': async () => measure((await wrongPhoto('development', 'print', 'bare'))!),
  'unlike-stones': async () => measure(await wrong('coins')),
  'lamp-moved': () => measure(turnedAround(photo), { ...withBall, rig }),
  'camera-moved': async () => measure(await altered(bare, (picture) => picture.resize(700)), byRig),
  'focus-lost': async () => measure(await altered(bare, (picture) => picture.blur(1.2)), byRig),
  'exposure-changed': () => measure(exposed(bare, 0.8), byRig),
  'tray-changed': () => measure(reddish(bare), byRig),
  'moved-other-tray': async () => measure(photo, withBall, await pictured(sharp(POLISHED).resize(800))),
  'moved-same-lamp': () => measure(photo, withBall, photo),
  'moved-no-ball': () => measure(photo, withBall, bare),
  'rig-unchecked': () => measure(bare, { ...byRig, rig: withoutScene }),
};

it('has nothing to warn of in the photo as it is', () => {
  expect(good.warnings).toEqual([]);
  expect(good.stones.length).toBeGreaterThan(0);
});

it.each(WARNINGS)('warns of a sample photo altered, or used, so that it must: %s', async (code) => {
  const { warnings } = await WARNED[code]();
  expect(warnings.map((one) => one.code)).toContain(code);
});
