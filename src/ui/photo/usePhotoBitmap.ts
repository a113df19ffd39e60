import { useEffect, useState } from 'react';

/** The decoded, upright photo to cut stones out of; null while it is decoded or when it cannot be. */
export function usePhotoBitmap(file: Blob | null): ImageBitmap | null {
  const [bitmap, setBitmap] = useState<ImageBitmap | null>(null);
  useEffect(() => {
    setBitmap(null);
    if (file === null) return;
    let current: ImageBitmap | null = null;
    let gone = false;
    createImageBitmap(file).then(
      (decoded) => {
        if (gone) return decoded.close();
        current = decoded;
        setBitmap(decoded);
      },
      () => setBitmap(null),
    );
    return () => {
      gone = true;
      current?.close();
    };
  }, [file]);
  return bitmap;
}
