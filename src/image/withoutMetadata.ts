import { asciiAt, bigEndianAt } from './bytes';
import { exifTags } from './exifTags';

const [START_OF_SCAN, END_OF_IMAGE, COMMENT] = [0xda, 0xd9, 0xfe];
const ORIENTATION = 0x0112;

/**
 * A JPEG without what is told beside its picture: place, camera, owner, comments, previews, whatever follows its end. Of
 * all of that only the orientation and the color profile stay, without which it would look otherwise.
 *
 * @param jpeg - The whole file.
 * @returns The same bytes where there is nothing to leave out, and where segments cannot be followed.
 * @see ITU-T T.81, annex B (segments); CIPA DC-008 (Exif); ICC.1:2022, annex B.4 (profiles in APP2).
 */
export async function withoutMetadata(jpeg: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const kept: Uint8Array<ArrayBuffer>[] = [jpeg.subarray(0, 2)];
  let at = 2;
  while (at < jpeg.length && jpeg[at + 1] !== START_OF_SCAN) {
    if (jpeg[at] !== 0xff || at + 4 > jpeg.length) return jpeg;
    const end = jpeg[at + 1] === 0xff ? at + 1 : at + 2 + bigEndianAt(jpeg, at + 2, 2);
    if (!tellsMore(jpeg, at)) kept.push(jpeg.subarray(at, end));
    at = end;
  }
  const end = endOfPicture(jpeg, at);
  kept.push(jpeg.subarray(at, end));
  if (kept.reduce((sum, { length }) => sum + length, 0) === jpeg.length) return jpeg;
  const { [ORIENTATION]: turn } = await exifTags(jpeg, [ORIENTATION]);
  if (typeof turn === 'number' && turn > 1 && turn <= 8) kept.splice(1, 0, orientationSegment(turn));
  return new Uint8Array(await new Blob(kept).arrayBuffer());
}

/** Whether the segment holds what no decoder needs for the picture. */
function tellsMore(jpeg: Uint8Array, at: number): boolean {
  const marker = jpeg[at + 1] ?? 0;
  if (marker === COMMENT) return true;
  if (marker < 0xe1 || marker > 0xef) return false;
  const isProfile = marker === 0xe2 && asciiAt(jpeg, at + 4, 11) === 'ICC_PROFILE';
  // How the colors are coded.
  const isAdobe = marker === 0xee && asciiAt(jpeg, at + 4, 5) === 'Adobe';
  return !isProfile && !isAdobe;
}

/** Behind the first end marker after the pixels; the file's end where there is none. Pixels cannot hold the marker. */
function endOfPicture(jpeg: Uint8Array, from: number): number {
  for (let at = jpeg.indexOf(0xff, from); at >= 0; at = jpeg.indexOf(0xff, at + 1))
    if (jpeg[at + 1] === END_OF_IMAGE) return at + 2;
  return jpeg.length;
}

/** Exif data of one entry, big-endian. */
function orientationSegment(turn: number): Uint8Array<ArrayBuffer> {
  const exif = [0x45, 0x78, 0x69, 0x66, 0, 0];
  const header = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8];
  const entry = [0, 1, ORIENTATION >> 8, ORIENTATION & 255, 0, 3, 0, 0, 0, 1, 0, turn, 0, 0, 0, 0, 0, 0];
  const length = 2 + exif.length + header.length + entry.length;
  return Uint8Array.from([0xff, 0xe1, length >> 8, length & 255, ...exif, ...header, ...entry]);
}
