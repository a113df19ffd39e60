import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Framing } from '../../camera/framing';
import type { PreviewClient } from '../../camera/preview';
import { useSpeech } from '../useSpeech';
import { CameraChecks } from './CameraChecks';
import { CameraHoldRow } from './CameraHoldRow';
import { CameraOverlay } from './CameraOverlay';
import { CameraWays } from './CameraWays';
import { cameraSentence } from './cameraSentence';
import { useBurst } from './useBurst';
import { useCamera } from './useCamera';
import { type TrayKnowledge, useFraming } from './useFraming';
import { useHold } from './useHold';

export interface CameraProps extends TrayKnowledge {
  /** Opens the worker that looks at frames; it is closed with the screen. */
  readonly openPreview: () => PreviewClient<ImageBitmap, Blob>;
  /** What is shown of each frame in place of the four checks, and what is to do before the photo, null for nothing. */
  readonly guide?:
    | ((framing: Framing, shotPx: number) => { readonly facts: ReactNode; readonly toDo: string | null })
    | undefined;
  /** Given the sharpest photo of a burst; the screen is then to be closed. */
  readonly onShot: (file: File) => void;
  readonly onClose: () => void;
  /** Asks for the device's own camera instead. */
  readonly onFallback: () => void;
}

/** The camera in the page: frames the tray, says what to do next, and takes the photo. */
export function CameraScreen(props: CameraProps) {
  const { ballMm, rig, openPreview, guide, onShot, onClose, onFallback } = props;
  const words = useSpeech().texts.camera;
  const video = useRef<HTMLVideoElement>(null);
  const { status, again } = useCamera(video);
  const camera = status.kind === 'live' ? status.camera : null;
  const client = useClient(openPreview);
  const [number, setNumber] = useState(0);
  const framing = useFraming(video, camera, client, { ballMm, rig }, number > 0);
  const guided = camera === null ? null : (guide?.(framing, camera.shutter.shotPx) ?? null);
  const toDo = framing.advice === 'ready' && number === 0 ? (guided?.toDo ?? null) : null;
  const isReady = framing.advice === 'ready' && toDo === null;
  const hold = useHold(camera, isReady && number === 0);
  const burst = useBurst(camera, client, { prepare: hold.hold, onNumber: setNumber, onShot });
  return (
    <CameraDialog onClose={onClose}>
      <div className="camera-stage" hidden={status.kind === 'trouble'}>
        <video ref={video} muted playsInline aria-label={words.live} />
        {camera !== null && <CameraOverlay framing={framing} />}
      </div>
      <div className="camera-panel">
        <p className="camera-advice" role="status" data-ready={isReady}>
          {isReady && (
            <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
              <path d="M4 11l5 5L18 5" />
            </svg>
          )}
          <span>
            {toDo ??
              cameraSentence({
                status,
                advice: framing.advice,
                number,
                ...burst,
                canDarken: hold.darker !== null,
              })}
          </span>
        </p>
        {camera !== null && (guided?.facts ?? <CameraChecks checks={framing.checks} />)}
        {camera !== null && <CameraHoldRow camera={camera} hold={hold} />}
        <CameraWays
          hasTrouble={status.kind === 'trouble'}
          isBusy={camera === null || number > 0}
          number={number}
          onShoot={burst.shoot}
          onAgain={again}
          onFallback={onFallback}
        />
      </div>
    </CameraDialog>
  );
}

/** The whole window over the page; Escape or its button closes it. */
function CameraDialog({ onClose, children }: { onClose: () => void; children: ReactNode }) {
  const words = useSpeech().texts.camera;
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const dialog = ref.current;
    if (dialog === null || dialog.open) return;
    dialog.showModal();
    dialog.querySelector<HTMLElement>('.camera-shutter')?.focus();
  }, []);
  return (
    <dialog
      ref={ref}
      className="camera"
      aria-labelledby={titleId}
      onClose={onClose}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <header className="camera-head">
        <h2 id={titleId}>{words.title}</h2>
        <button type="button" className="button button-quiet" onClick={() => ref.current?.close()}>
          {words.close}
        </button>
      </header>
      {children}
    </dialog>
  );
}

/** A worker for as long as the screen is open. */
function useClient(
  openPreview: () => PreviewClient<ImageBitmap, Blob>,
): PreviewClient<ImageBitmap, Blob> | null {
  const [client, setClient] = useState<PreviewClient<ImageBitmap, Blob> | null>(null);
  useEffect(() => {
    const opened = openPreview();
    setClient(opened);
    return () => opened.close();
  }, [openPreview]);
  return client;
}
