import { STEPS, type Step } from '../../grading/steps';
import { texts } from '../../texts/speech';
import { useSettings } from '../stores';

/** Grains as coarse as the step, in a row: the scale is read without words. */
function Grains({ place }: { place: number }) {
  const radius = 4.4 - 0.85 * place;
  const count = 2 + 2 * place;
  const centers = Array.from(
    { length: count },
    (_, index) => 22 + (index - (count - 1) / 2) * (2 * radius + 1.2),
  );
  return (
    <svg className="step-grains" viewBox="0 0 44 12" aria-hidden="true" focusable="false">
      {centers.map((center) => (
        <circle key={center} cx={center} cy="6" r={radius} />
      ))}
    </svg>
  );
}

/** Which step the stones come from; changing it grades them anew at once. */
export function StepChoice() {
  const step = useSettings((state) => state.step);
  const words = texts().setup;
  const change = useSettings((state) => state.change);
  return (
    <fieldset>
      <legend>{words.outOf}</legend>
      <div className="steps">
        {STEPS.map((choice: Step, place: number) => (
          <label key={choice} className="step">
            <input
              type="radio"
              name="step"
              value={choice}
              checked={choice === step}
              onChange={() => change({ step: choice })}
            />
            <Grains place={place} />
            {words.shortSteps[choice]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
