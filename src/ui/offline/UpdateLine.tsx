import { useState, useSyncExternalStore } from 'react';
import type { Offline } from '../../offline/openOffline';
import { usePhotos } from '../stores';

/** Says that a newer version is here, and opens it when asked; never while a photo is measured. */
export function UpdateLine({ offline }: { readonly offline: Offline }) {
  const { hasUpdate } = useSyncExternalStore(offline.subscribe, offline.state);
  const isMeasuring = usePhotos(({ photos }) =>
    photos.some(({ status }) => status === 'measuring' || status === 'waiting'),
  );
  const [isPutOff, putOff] = useState(false);
  if (!hasUpdate || isPutOff) return null;
  return (
    <div className="update-line" role="status">
      <p>
        A new version is here.
        {isMeasuring
          ? ' It can be opened once the photos are measured.'
          : ' Photos not kept in the journal close.'}
      </p>
      <div>
        <button type="button" className="button" disabled={isMeasuring} onClick={offline.update}>
          Open it
        </button>
        <button type="button" className="button button-quiet" onClick={() => putOff(true)}>
          Later
        </button>
      </div>
    </div>
  );
}
