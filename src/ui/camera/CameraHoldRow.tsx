import { heldSentence, holdWishes } from '../../camera/cameraHold';
import { useSpeech } from '../useSpeech';
import { settingsOf } from './holdCamera';
import type { LiveCamera } from './useCamera';
import type { Hold } from './useHold';

/** Says what is locked; locks it or lets it go; makes the picture darker or lighter where the camera can. */
export function CameraHoldRow({ camera, hold }: { camera: LiveCamera; hold: Hold }) {
  const words = useSpeech().texts.camera;
  const wished = holdWishes(camera.abilities, settingsOf(camera.track)).map(({ what }) => what);
  const isHeld = hold.held.length > 0;
  return (
    <div className="camera-hold">
      <p data-held={isHeld}>{heldSentence(hold.held, wished)}</p>
      {(hold.darker !== null || hold.lighter !== null) && (
        <div className="camera-stops">
          <StepButton word={words.darker} run={hold.darker} />
          <StepButton word={words.lighter} run={hold.lighter} />
        </div>
      )}
      {wished.length > 0 && (
        <button
          type="button"
          className="button button-quiet"
          onClick={() => void (isHeld ? hold.letGo() : hold.hold())}
        >
          {isHeld ? words.unlock : words.lock}
        </button>
      )}
    </div>
  );
}

/** Stays in place at the end of the range, so that nothing moves under a thumb. */
function StepButton({ word, run }: { word: string; run: (() => void) | null }) {
  return (
    <button type="button" className="button" aria-disabled={run === null} onClick={() => run?.()}>
      {word}
    </button>
  );
}
