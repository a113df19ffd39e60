import { useEffect, useState } from 'react';
import { texts } from '../../texts/speech';
import { WorkLine } from './WorkLine';

/** Reading that is over sooner shows no bar, ms. */
const SHOWN_AFTER_MS = 300;

interface Props {
  /** How much is read, 0 to 1. */
  readonly share: number;
  /** Leaves the screen that is being opened. */
  readonly onCancel: () => void;
}

/** A screen that is being opened; a journal of hundreds of checks takes a phone seconds to read. */
export function Opening({ share, onCancel }: Props) {
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    const timer = window.setTimeout(() => setLong(true), SHOWN_AFTER_MS);
    return () => window.clearTimeout(timer);
  }, []);
  const { opening } = texts().page;
  return isLong ? (
    <WorkLine words={opening} share={share} onCancel={onCancel} />
  ) : (
    <p className="empty">{opening}</p>
  );
}
