import { useState, useSyncExternalStore } from 'react';
import type { Offline } from '../../offline/openOffline';
import { usePhotos } from '../stores';
import { useSpeech } from '../useSpeech';

/** Says that a newer version is here, and opens it when asked; never while a photo is measured. */
export function UpdateLine({ offline }: { readonly offline: Offline }) {
  const words = useSpeech().texts.offline;
  const { hasUpdate } = useSyncExternalStore(offline.subscribe, offline.state);
  const isMeasuring = usePhotos(({ photos }) =>
    photos.some(({ status }) => status === 'measuring' || status === 'waiting'),
  );
  const [isPutOff, putOff] = useState(false);
  if (!hasUpdate || isPutOff) return null;
  return (
    <div className="update-line" role="status">
      <p>
        {words.newVersion} {isMeasuring ? words.waits : words.closes}
      </p>
      <div>
        <button type="button" className="button" disabled={isMeasuring} onClick={offline.update}>
          {words.open}
        </button>
        <button type="button" className="button button-quiet" onClick={() => putOff(true)}>
          {words.later}
        </button>
      </div>
    </div>
  );
}
