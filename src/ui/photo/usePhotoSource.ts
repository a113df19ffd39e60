import { useEffect, useState } from 'react';
import { usePictureOf } from '../stores';

/** Address under which the page can show a file; changes with the file and is given back after use. */
export function usePhotoSource(file: Blob | null): string | null {
  const pictureOf = usePictureOf();
  const [source, setSource] = useState<string | null>(null);
  useEffect(() => {
    setSource(null);
    if (file === null) return;
    let address: string | null = null;
    let gone = false;
    void pictureOf(file).then((picture) => {
      if (gone) return;
      address = URL.createObjectURL(picture);
      setSource(address);
    });
    return () => {
      gone = true;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [file, pictureOf]);
  return source;
}
