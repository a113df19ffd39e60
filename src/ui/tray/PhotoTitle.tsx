import type { TrayPhoto } from '../../state/trayPhoto';

interface Props {
  readonly photo: TrayPhoto;
  readonly pointing: boolean;
  readonly onPointing: (pointing: boolean) => void;
}

/** What photo this is, and what to know before trusting it. */
export function PhotoTitle({ photo, pointing, onPointing }: Props) {
  if (pointing) {
    return (
      <div className="title title-pointing" role="status">
        <p>Tap the dark glass ball in the photo.</p>
        <button type="button" className="button" onClick={() => onPointing(false)}>
          Never mind
        </button>
      </div>
    );
  }
  const warnings = photo.report?.warnings ?? [];
  return (
    <div className="title">
      <p className="title-name">
        <strong>{photo.sample ? 'Sample tray.' : photo.name}</strong>
        {photo.sample && ' A rendered picture, measured here like any photo.'}
      </p>
      {warnings.length > 0 && (
        <ul className="warnings" aria-label="Warnings about this photo">
          {warnings.map(({ code, message }) => (
            <li key={code}>{message}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
