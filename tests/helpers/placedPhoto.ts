import exifr from 'exifr';
import { unzipSync } from 'fflate';
import sharp from 'sharp';

/** Words that the photo's metadata hold and nothing made from it may. */
const MARKS = ['Invented Cameras', 'Invented Owner', 'Invented Meadow'];

/**
 * A sample photo as a phone writes it that notes where it was taken: place, camera and owner in EXIF, place in XMP.
 *
 * @param path - Of the sample.
 * @param widthPx - Of the photo made.
 */
export async function placedPhoto(path: string, widthPx: number): Promise<Buffer> {
  const [camera, owner, meadow] = MARKS as [string, string, string];
  const exif = {
    IFD0: { Make: camera, Artist: owner, ImageDescription: meadow },
    IFD2: { DateTimeOriginal: '2026:03:16 09:00:00' },
    IFD3: {
      ...{ GPSLatitudeRef: 'N', GPSLatitude: '48/1 30/1 0/1' },
      ...{ GPSLongitudeRef: 'E', GPSLongitude: '9/1 15/1 0/1' },
    },
  };
  const xmp = `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:City="${meadow}"/></rdf:RDF></x:xmpmeta>`;
  return sharp(path).resize(widthPx).withExif(exif).withXmp(xmp).jpeg({ quality: 97 }).toBuffer();
}

/** Parts of a PNG that hold the picture and its colors, its size in the world, and nothing else. */
const PNG_PARTS = ['IHDR', 'PLTE', 'tRNS', 'sRGB', 'gAMA', 'cHRM', 'iCCP', 'sBIT', 'pHYs', 'IDAT', 'IEND'];

/** Types of a PNG's chunks (ISO/IEC 15948, section 5.3). */
function pngParts(file: Buffer): string[] {
  const types: string[] = [];
  for (let at = 8; at < file.length; at += 12 + file.readUInt32BE(at))
    types.push(file.toString('latin1', at + 4, at + 8));
  return types;
}

/** Markers of a JPEG before its first scan that hold words: APP1 to APP15 less color profiles, and COM (T.81, annex B). */
function jpegWords(file: Buffer): string[] {
  const found: string[] = [];
  for (let at = 2; file[at] === 0xff && file[at + 1] !== 0xda; at += 2 + file.readUInt16BE(at + 2)) {
    const marker = file[at + 1]!;
    const isProfile = marker === 0xe2 && file.toString('latin1', at + 4, at + 15) === 'ICC_PROFILE';
    if ((marker > 0xe0 && marker <= 0xef && !isProfile) || marker === 0xfe)
      found.push(`marker ${marker.toString(16)}`);
  }
  return found;
}

/**
 * What a file made from a photo still tells beside the picture: of a ZIP each of its files, of a picture every part that
 * can hold words, of any file the words themselves, and the place where exifr finds one.
 */
export async function tracesIn(file: Buffer): Promise<string[]> {
  const marks = MARKS.filter((word) => file.includes(word) || file.includes(Buffer.from(word, 'utf16le')));
  if (file.toString('latin1', 0, 2) === 'PK') {
    const inside = Object.values(unzipSync(file));
    return [...marks, ...(await Promise.all(inside.map((one) => tracesIn(Buffer.from(one))))).flat()];
  }
  const isPng = file.toString('latin1', 1, 4) === 'PNG';
  const isJpeg = file.readUInt16BE(0) === 0xffd8;
  if (!isPng && !isJpeg) return marks;
  const parts = isPng ? pngParts(file).filter((type) => !PNG_PARTS.includes(type)) : jpegWords(file);
  const place = await exifr.gps(file).catch(() => undefined);
  return [...marks, ...parts, ...(place ? [`place ${place.latitude}, ${place.longitude}`] : [])];
}
