import type { CheckState, FrameChecks } from '../../camera/frameChecks';
import { useSpeech } from '../useSpeech';

const ORDER: readonly (keyof FrameChecks)[] = ['ball', 'exposure', 'focus', 'scale'];

/** Each sign has a shape of its own, so that none needs its color. */
const SIGNS: Readonly<Record<CheckState, string>> = {
  good: 'M4 11l5 5L18 5',
  bad: 'M11 3v10M11 17.4v.2',
  unknown: 'M5 11h.2M11 11h.2M17 11h.2',
};

/** Ball, light, focus and size: what is good already and what is not. */
export function CameraChecks({ checks }: { checks: FrameChecks | null }) {
  const words = useSpeech().texts.camera;
  return (
    <ul className="camera-checks" aria-label={words.checks}>
      {ORDER.map((key) => {
        const state = checks === null ? 'unknown' : checks[key];
        if (state === null) return null;
        return (
          <li key={key} data-state={state}>
            <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
              <path d={SIGNS[state]} />
            </svg>
            {words.checkNames[key]}
            <span className="camera-unseen">: {words.checkStates[state]}</span>
          </li>
        );
      })}
    </ul>
  );
}
