import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { usePhotos } from '../stores';
import { photoName } from './photoName';
import { usePhotoSource } from './usePhotoSource';
import { useSmallPhoto } from './useSmallPhoto';

function StripPhoto({ photo }: { photo: TrayPhoto }) {
  const show = usePhotos((state) => state.show);
  const current = usePhotos((state) => state.currentId) === photo.id;
  const source = usePhotoSource(useSmallPhoto(photo.file)?.picture ?? null);
  const { stoneCount, photoStates } = texts().tray;
  const label =
    photo.status === 'measured' && photo.report !== null
      ? stoneCount(photo.report.stones.length)
      : photoStates[photo.status];
  return (
    <li>
      <button type="button" className="strip-photo" aria-pressed={current} onClick={() => show(photo.id)}>
        {source !== null && <img src={source} alt="" />}
        <span className="strip-name">{photoName(photo)}</span>
        <span className="strip-status">{label}</span>
      </button>
    </li>
  );
}

/** The photos of this visit; shown as soon as there are two. */
export function PhotoStrip() {
  const photos = usePhotos((state) => state.photos);
  if (photos.length < 2) return null;
  return (
    <nav aria-label={texts().page.photos}>
      <ul className="strip">
        {photos.map((photo) => (
          <StripPhoto key={photo.id} photo={photo} />
        ))}
      </ul>
    </nav>
  );
}
