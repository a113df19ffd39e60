import type { WarningCode } from '../../image/notice';
import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { PhotoWarnings } from '../photo/PhotoWarnings';

interface Props {
  readonly photo: TrayPhoto;
  readonly pointing: boolean;
  readonly onPointing: (pointing: boolean) => void;
  /** The warning whose marks are brought out in the picture. */
  readonly lit: WarningCode | null;
  readonly onLit: (code: WarningCode | null) => void;
}

/** What photo this is, and what to know before trusting it. */
export function PhotoTitle({ photo, pointing, onPointing, lit, onLit }: Props) {
  const words = texts().tray;
  if (pointing) {
    return (
      <div className="title title-pointing" role="status">
        <p>{words.tapBall}</p>
        <button type="button" className="button" onClick={() => onPointing(false)}>
          {words.neverMind}
        </button>
      </div>
    );
  }
  return (
    <div className="title">
      <p className="title-name">
        <strong>{photo.sample ? words.sampleTray : photo.name}</strong>
        {photo.sample && ` ${words.sampleNote}`}
      </p>
      {photo.report !== null && <PhotoWarnings report={photo.report} lit={lit} onLit={onLit} />}
    </div>
  );
}
