import { type ChangeEvent, useRef } from 'react';
import { usePhotos } from '../stores';
import { asNewPhoto } from './useDroppedPhotos';

/** Take a photo with the camera, or choose some that are there already. */
export function PhotoButtons() {
  const add = usePhotos((state) => state.add);
  const camera = useRef<HTMLInputElement>(null);
  const files = useRef<HTMLInputElement>(null);
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    add([...(event.target.files ?? [])].map(asNewPhoto));
    event.target.value = '';
  };
  return (
    <div className="photo-buttons">
      <button type="button" className="button button-strong" onClick={() => camera.current?.click()}>
        Take a photo
      </button>
      <button type="button" className="button" onClick={() => files.current?.click()}>
        Choose photos
      </button>
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        onChange={take}
        aria-label="Camera"
      />
      <input
        ref={files}
        type="file"
        accept="image/*"
        multiple
        hidden
        onChange={take}
        aria-label="Photo files"
      />
    </div>
  );
}
