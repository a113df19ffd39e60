import { useEffect, useState } from 'react';
import { texts } from '../../texts/speech';
import { useJournal } from '../stores';

/** The thumbnail of a kept photo; while it is read, room for it. */
export function Thumbnail({ photo, day }: { photo: string; day: string }) {
  const photoOf = useJournal((state) => state.photoOf);
  const [address, setAddress] = useState<string | null>();
  useEffect(() => {
    let made: string | null = null;
    let isStale = false;
    photoOf(photo).then((found) => {
      if (isStale) return;
      if (found === null) return setAddress(null);
      made = URL.createObjectURL(found.thumbnail);
      setAddress(made);
    });
    return () => {
      isStale = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [photo, photoOf]);
  if (address === undefined) return <div className="check-photo-place" />;
  return address === null ? null : (
    <img className="check-photo" loading="lazy" src={address} alt={texts().journal.trayOn(day)} />
  );
}
