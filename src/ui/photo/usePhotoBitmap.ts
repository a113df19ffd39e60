import { useEffect, useState } from 'react';
import { usePictureOf } from '../stores';

/** The decoded, upright photo to cut stones out of; null while it is decoded or when it cannot be. */
export function usePhotoBitmap(file: Blob | null): ImageBitmap | null {
  const pictureOf = usePictureOf();
  const [bitmap, setBitmap] = useState<ImageBitmap | null>(null);
  useEffect(() => {
    setBitmap(null);
    if (file === null) return;
    let current: ImageBitmap | null = null;
    let gone = false;
    const show = (decoded: ImageBitmap) => {
      if (gone) return decoded.close();
      current = decoded;
      setBitmap(decoded);
    };
    pictureOf(file)
      .then((picture) => createImageBitmap(picture))
      .then(show, () => setBitmap(null));
    return () => {
      gone = true;
      current?.close();
    };
  }, [file, pictureOf]);
  return bitmap;
}
