import { useEffect, useState } from 'react';
import { useJournal } from '../stores';

/** The thumbnail of a kept photo. */
export function Thumbnail({ photo, day }: { photo: string; day: string }) {
  const photoOf = useJournal((state) => state.photoOf);
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let isStale = false;
    photoOf(photo).then((found) => {
      if (isStale || found === null) return;
      made = URL.createObjectURL(found.thumbnail);
      setAddress(made);
    });
    return () => {
      isStale = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [photo, photoOf]);
  return address === null ? null : (
    <img className="check-photo" loading="lazy" src={address} alt={`Tray on ${day}`} />
  );
}
