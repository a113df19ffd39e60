import { texts } from '../../texts/speech';

interface Props {
  readonly zoomed: boolean;
  readonly onEnlarge: (factor: number) => void;
  readonly onFit: () => void;
}

/** Enlarge, reduce, and see the whole tray, for a thumb or a key. */
export function ZoomButtons({ zoomed, onEnlarge, onFit }: Props) {
  const words = texts().tray;
  return (
    <div className="zoom-buttons">
      <button type="button" className="pebble" aria-label={words.enlarge} onClick={() => onEnlarge(1.6)}>
        +
      </button>
      {zoomed && (
        <>
          <button
            type="button"
            className="pebble"
            aria-label={words.reduce}
            onClick={() => onEnlarge(1 / 1.6)}
          >
            −
          </button>
          <button type="button" className="pebble pebble-wide" onClick={onFit}>
            {words.wholeTray}
          </button>
        </>
      )}
    </div>
  );
}
