import sharp, { type FormatEnum } from 'sharp';

/** An even gray photo file with a little noise, of a given format and size. */
export async function photoFile(
  format: 'jpeg' | 'png' | 'webp' | 'avif' | 'gif' | 'tiff',
  { width = 320, height = 240, settings = {} }: { width?: number; height?: number; settings?: object } = {},
): Promise<Buffer> {
  const noise = { type: 'gaussian', mean: 128, sigma: 20 } as const;
  const create = { width, height, channels: 3, background: '#808080', noise } as const;
  return sharp({ create })
    .toFormat(format as keyof FormatEnum, settings)
    .toBuffer();
}
