import type { TrayPhoto } from '../../state/trayPhoto';
import { usePhotos } from '../stores';
import { usePhotoSource } from './usePhotoSource';

const STATUS_WORDS: Readonly<Record<TrayPhoto['status'], string>> = {
  waiting: 'waiting',
  measuring: 'being measured',
  measured: 'measured',
  refused: 'not measured',
  failed: 'not measured',
  cancelled: 'stopped',
};

function StripPhoto({ photo }: { photo: TrayPhoto }) {
  const show = usePhotos((state) => state.show);
  const current = usePhotos((state) => state.currentId) === photo.id;
  const source = usePhotoSource(photo.file);
  const label =
    photo.status === 'measured' ? `${photo.report?.stones.length} stones` : STATUS_WORDS[photo.status];
  return (
    <li>
      <button type="button" className="strip-photo" aria-pressed={current} onClick={() => show(photo.id)}>
        {source !== null && <img src={source} alt="" />}
        <span className="strip-name">{photo.name}</span>
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
    <nav aria-label="Photos">
      <ul className="strip">
        {photos.map((photo) => (
          <StripPhoto key={photo.id} photo={photo} />
        ))}
      </ul>
    </nav>
  );
}
