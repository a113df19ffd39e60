import { type ChangeEvent, lazy, Suspense, useRef, useState } from 'react';
import { texts } from '../../texts/speech';
import type { CameraProps } from '../camera/CameraScreen';
import { useOpenPreview, usePhotos, useSettings } from '../stores';
import { asNewPhoto } from './useDroppedPhotos';

/** Loaded with the first photo taken: whoever chooses photos does without. */
const CameraScreen = lazy(() =>
  import('../camera/CameraScreen').then(({ CameraScreen: screen }) => ({ default: screen })),
);

/** Take a photo with the camera, or choose some that are there already. */
export function PhotoButtons({ guide }: Pick<CameraProps, 'guide'>) {
  const add = usePhotos((state) => state.add);
  const { ballMm, noBall, rig } = useSettings((state) => state);
  const words = texts().tray;
  const openPreview = useOpenPreview();
  const [isFraming, setFraming] = useState(false);
  const camera = useRef<HTMLInputElement>(null);
  const files = useRef<HTMLInputElement>(null);
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    add([...(event.target.files ?? [])].map(asNewPhoto));
    event.target.value = '';
  };
  // Where a page may not use the camera, as without https, the device's own camera is asked for at once.
  const canFrame = typeof navigator.mediaDevices?.getUserMedia === 'function';
  const close = () => setFraming(false);
  return (
    <div className="photo-buttons">
      <button
        type="button"
        className="button button-strong"
        onClick={() => (canFrame ? setFraming(true) : camera.current?.click())}
      >
        {words.takePhoto}
      </button>
      <button type="button" className="button" onClick={() => files.current?.click()}>
        {words.choosePhotos}
      </button>
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        onChange={take}
        aria-label={words.camera}
      />
      <input
        ref={files}
        type="file"
        accept="image/*"
        multiple
        hidden
        onChange={take}
        aria-label={words.photoFiles}
      />
      {isFraming && (
        <Suspense>
          <CameraScreen
            ballMm={noBall ? null : ballMm}
            rig={rig}
            openPreview={openPreview}
            guide={guide}
            onShot={(file) => {
              close();
              add([asNewPhoto(file)]);
            }}
            onClose={close}
            onFallback={() => {
              close();
              camera.current?.click();
            }}
          />
        </Suspense>
      )}
    </div>
  );
}
