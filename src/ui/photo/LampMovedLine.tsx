import { type ChangeEvent, useRef } from 'react';
import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { useStoreActions } from '../stores';
import { lampMovedSentence } from './lampMovedSentence';

/** Adds a second photo of the tray with the lamp elsewhere, or says what it was good for and takes it away again. */
export function LampMovedLine({ photo: { report, lampMoved } }: { photo: TrayPhoto }) {
  const { setLampMoved } = useStoreActions();
  const words = texts().tray;
  const file = useRef<HTMLInputElement>(null);
  const take = (event: ChangeEvent<HTMLInputElement>) => setLampMoved(event.target.files?.[0] ?? null);
  return (
    <div className="shots-line">
      <p>{lampMovedSentence(lampMoved !== null, report?.lampMoved)}</p>
      {lampMoved !== null && (
        <button type="button" className="button button-quiet" onClick={() => setLampMoved(null)}>
          {words.takeAway}
        </button>
      )}
      {lampMoved === null && (
        <button type="button" className="button button-quiet" onClick={() => file.current?.click()}>
          {words.lampMoved.add}
        </button>
      )}
      <input
        ref={file}
        type="file"
        accept="image/*"
        hidden
        onChange={take}
        aria-label={words.lampMoved.file}
      />
    </div>
  );
}
