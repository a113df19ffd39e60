import { useEffect, useState } from 'react';
import { usePictureOf } from '../stores';

/** The decoded, upright photo to cut stones out of; null while it is decoded or when it cannot be. */
export function usePhotoBitmap(file: Blob | null): ImageBitmap | null {
  const pictureOf = usePictureOf();
  const [decoded, setDecoded] = useState<{ readonly of: Blob; readonly bitmap: ImageBitmap } | null>(null);
  useEffect(() => {
    if (file === null) return;
    let current: ImageBitmap | null = null;
    let gone = false;
    const show = (bitmap: ImageBitmap) => {
      if (gone) return bitmap.close();
      current = bitmap;
      setDecoded({ of: file, bitmap });
    };
    pictureOf(file)
      .then((picture) => createImageBitmap(picture))
      .then(show, () => setDecoded(null));
    return () => {
      gone = true;
      current?.close();
      // The same photo may come back.
      setDecoded(null);
    };
  }, [file, pictureOf]);
  // That of another photo is closed before anything is drawn for this one.
  return decoded?.of === file ? decoded.bitmap : null;
}
