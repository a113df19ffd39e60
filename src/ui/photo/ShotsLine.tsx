import { type ChangeEvent, useRef } from 'react';
import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { useStoreActions } from '../stores';
import { shotsSentence } from './shotsSentence';

/** Adds a darker shot of the same scene to a measured photo, or says that one was merged and takes it away again. */
export function ShotsLine({ photo: { report } }: { photo: TrayPhoto }) {
  const { addShots, dropShots } = useStoreActions();
  const words = texts().tray;
  const files = useRef<HTMLInputElement>(null);
  const ratios = report?.exposureRatios ?? [];
  const isClipped = report?.warnings.some(({ code }) => code === 'ball-clipped') ?? false;
  const take = (event: ChangeEvent<HTMLInputElement>) => addShots([...(event.target.files ?? [])]);
  return (
    <div className="shots-line">
      {ratios.length > 1 && <p>{shotsSentence(ratios)}</p>}
      {ratios.length > 1 && (
        <button type="button" className="button button-quiet" onClick={dropShots}>
          {words.takeAway}
        </button>
      )}
      {(ratios.length < 2 || isClipped) && (
        <button
          type="button"
          className={isClipped ? 'button' : 'button button-quiet'}
          onClick={() => files.current?.click()}
        >
          {words.addShot}
        </button>
      )}
      <input
        ref={files}
        type="file"
        accept="image/*"
        multiple
        hidden
        onChange={take}
        aria-label={words.darkerShots}
      />
    </div>
  );
}
