import { DEFAULT_LIMITS, LIMIT_NOTES, type StepLimits } from '../../grading/limits';
import { STEP_FACTS } from '../../grading/steps';
import { useSettings } from '../stores';

const NAMES = Object.keys(LIMIT_NOTES) as (keyof StepLimits)[];

/** What is let pass at the present step: the owner's to set, and graded anew with every change. */
export function LimitsChoice() {
  const step = useSettings((state) => state.step);
  const limits = useSettings((state) => state.limits);
  const change = useSettings((state) => state.change);
  const set = (name: keyof StepLimits, value: number) => {
    if (value >= 0) change({ limits: { ...limits, [step]: { ...limits[step], [name]: value } } });
  };
  return (
    <section className="choices">
      <h3>Limits at the {STEP_FACTS[step].title.toLowerCase()} step</h3>
      {NAMES.filter((name) => limits[step][name] !== null).map((name) => (
        <label key={`${step} ${name}`} className="limit">
          <span>
            {LIMIT_NOTES[name].label}
            {LIMIT_NOTES[name].unit !== '' && `, ${LIMIT_NOTES[name].unit}`}
          </span>
          <input
            type="number"
            inputMode="decimal"
            min="0"
            step="any"
            value={limits[step][name] ?? ''}
            onChange={(event) => set(name, event.target.valueAsNumber)}
          />
        </label>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => change({ limits: { ...limits, [step]: DEFAULT_LIMITS[step] } })}
      >
        Back to the usual limits
      </button>
    </section>
  );
}
