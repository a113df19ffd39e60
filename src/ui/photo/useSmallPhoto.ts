import { useEffect, useState } from 'react';
import { usePictureOf } from '../stores';
import { type SmallPhoto, smallPhoto } from './smallPhoto';

/** What is made once for all places that show a photo, for as long as it is held. */
const known = new WeakMap<Blob, Promise<SmallPhoto>>();

/** A photo brought to the screen's size; null while it is, and when it cannot be shown. */
export function useSmallPhoto(file: Blob | null): SmallPhoto | null {
  const pictureOf = usePictureOf();
  const [small, setSmall] = useState<{ readonly of: Blob; readonly is: SmallPhoto } | null>(null);
  useEffect(() => {
    if (file === null) return;
    let gone = false;
    const made = known.get(file) ?? pictureOf(file).then(smallPhoto);
    known.set(file, made);
    made.then(
      (is) => {
        if (!gone) setSmall({ of: file, is });
      },
      () => known.delete(file),
    );
    return () => {
      gone = true;
    };
  }, [file, pictureOf]);
  return small?.of === file ? small.is : null;
}
