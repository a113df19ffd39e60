import { useSpeech } from '../useSpeech';
import { BURST } from './takeBurst';

interface Props {
  readonly hasTrouble: boolean;
  readonly isBusy: boolean;
  /** Photo of the burst being taken; 0 while none is. */
  readonly number: number;
  readonly onShoot: () => void;
  readonly onAgain: () => void;
  readonly onFallback: () => void;
}

/** The shutter, or after trouble a new attempt; and the device's own camera. */
export function CameraWays({ hasTrouble, isBusy, number, onShoot, onAgain, onFallback }: Props) {
  const words = useSpeech().texts.camera;
  return (
    <div className="camera-ways">
      {hasTrouble ? (
        <button type="button" className="button" onClick={onAgain}>
          {words.again}
        </button>
      ) : (
        <button
          type="button"
          className="button button-strong camera-shutter"
          aria-disabled={isBusy}
          onClick={onShoot}
        >
          {number > 0 ? words.taking(number, BURST) : words.take}
        </button>
      )}
      <button
        type="button"
        className={hasTrouble ? 'button button-strong' : 'button button-quiet'}
        onClick={onFallback}
      >
        {words.ownCamera}
      </button>
    </div>
  );
}
