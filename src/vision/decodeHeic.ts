import startLibheif, { type DecodedHeif, type Libheif } from 'libheif-js/libheif-wasm/libheif.js';
import wasmUrl from 'libheif-js/libheif-wasm/libheif.wasm?url';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { readHeifColors } from '../image/readHeifColors';
import { srgbFromDisplayP3 } from '../image/srgbFromDisplayP3';
import { readBytes } from './readBytes';

let opened: Promise<Libheif> | undefined;

/**
 * Decodes the main picture of an HEIC file: upright (turned and mirrored as its boxes say; EXIF orientation does not
 * count in this format), in sRGB. The same code in a worker and in Node.
 *
 * Pictures of more than 8 bits a channel are reduced to 8; those with a tone curve for high dynamic range are not
 * known as such and come out too dark.
 *
 * @param bytes - The whole file.
 * @throws Refusal `not-an-image` if it cannot be decoded, `too-small` or `too-large` before it is.
 * @throws Error if the decoder itself cannot be loaded; the next call tries again.
 */
export async function decodeHeic(bytes: Uint8Array): Promise<Photo> {
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  const photo = decode(await opened, bytes);
  if (readHeifColors(bytes) === 'display-p3') srgbFromDisplayP3(photo.rgba);
  return photo;
}

async function open(): Promise<Libheif> {
  return startLibheif({ wasmBinary: await readBytes(wasmUrl) });
}

/** Everything taken from the engine is given back, whatever happens. */
function decode(libheif: Libheif, bytes: Uint8Array): Photo {
  const context = libheif.heif_context_alloc();
  if (!context) throw new Error('The HEIC decoder is out of memory.');
  try {
    libheif.heif_context_read_from_memory(context, bytes);
    const handle = libheif.heif_js_context_get_primary_image_handle(context);
    if (!handle || handle.code) throw new Refusal('not-an-image');
    try {
      checkSize(libheif.heif_image_handle_get_width(handle), libheif.heif_image_handle_get_height(handle));
      return pixelsOf(libheif, handle);
    } finally {
      libheif.heif_image_handle_release(handle);
    }
  } finally {
    libheif.heif_context_free(context);
  }
}

function pixelsOf(libheif: Libheif, handle: object): Photo {
  const { heif_colorspace_RGB } = libheif.heif_colorspace;
  const { heif_chroma_interleaved_RGBA } = libheif.heif_chroma;
  const decoded = libheif.heif_js_decode_image2(handle, heif_colorspace_RGB, heif_chroma_interleaved_RGBA);
  if (!decoded || decoded.code) throw new Refusal('not-an-image');
  try {
    return photoOf(decoded);
  } finally {
    libheif.heif_image_release(decoded.image);
  }
}

/** Copies the rows out of the engine's memory, which may pad them. */
function photoOf({ channels: [plane] }: DecodedHeif): Photo {
  if (!plane) throw new Refusal('not-an-image');
  const { width, height, stride, data } = plane;
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let row = 0; row < height; row++) {
    rgba.set(data.subarray(row * stride, row * stride + 4 * width), row * 4 * width);
  }
  return { widthPx: width, heightPx: height, rgba };
}
