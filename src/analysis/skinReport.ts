import type { StoneSkin } from '../measure/stoneSkin';
import type { SkinReport } from './report';
import type { StoneCrop } from './stoneCrop';

const degrees = (slope: number) => (Math.atan(slope) * 180) / Math.PI;

/**
 * Tells what was read of a stone's skin in millimeters, degrees and places of the photo.
 *
 * @param skin - In pixels of the crop.
 * @param crop - The stone's crop.
 * @param mmPerPx - Millimeters per pixel of the photo.
 */
export function skinReport(skin: StoneSkin, crop: StoneCrop, mmPerPx: number): SkinReport {
  const mm = mmPerPx * crop.factor;
  const { waviness } = skin;
  return {
    waviness: waviness && {
      slopeDeg: waviness.slope === null ? null : degrees(waviness.slope),
      slopeLowDeg: degrees(waviness.low),
      slopeHighDeg: degrees(waviness.high),
      wavelengthMm: waviness.wavelengthPx === null ? null : waviness.wavelengthPx * mm,
      longestMm: waviness.longestPx * mm,
    },
    dullPatches: skin.dullPatches.map(({ row, column, areaPx, share }) => {
      const [photoRow, photoColumn] = crop.toPhoto(row, column);
      return { row: photoRow, column: photoColumn, areaMm2: areaPx * mm * mm, share };
    }),
  };
}
