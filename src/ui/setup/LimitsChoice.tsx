import { useId } from 'react';
import { DEFAULT_LIMITS, LIMIT_NOTES, type StepLimits } from '../../grading/limits';
import { densityUnit, lengthUnit, limitOfTyped, typedLimit } from '../../texts/measures';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { KeptNumberInput } from '../parts/NumberInput';
import { useSettings } from '../stores';

type LimitName = keyof StepLimits;

const NAMES = Object.keys(LIMIT_NOTES) as LimitName[];

/** What a limit is called, with the unit in which its field is filled in. */
function labelOf(name: LimitName): string {
  const { limits, labelIn } = texts().setup;
  const { unit } = LIMIT_NOTES[name];
  return unit === '' ? limits[name] : labelIn(limits[name], unit === 'mm' ? lengthUnit() : densityUnit());
}

function shownLimit(name: LimitName, kept: number | null): string {
  const { unit } = LIMIT_NOTES[name];
  return kept === null ? '' : withDecimalMark(String(unit === '' ? kept : typedLimit(kept, unit)));
}

function keptLimit(name: LimitName, typed: number): number {
  const { unit } = LIMIT_NOTES[name];
  return unit === '' ? typed : limitOfTyped(typed, unit);
}

/** What is let pass at the present step: the owner's to set, and graded anew with every change. */
export function LimitsChoice() {
  const step = useSettings((state) => state.step);
  const limits = useSettings((state) => state.limits);
  const change = useSettings((state) => state.change);
  const words = texts().setup;
  const id = useId();
  const set = (name: LimitName, typed: number) => {
    change({ limits: { ...limits, [step]: { ...limits[step], [name]: keptLimit(name, typed) } } });
  };
  return (
    <section className="choices">
      <h3>{words.limitsAt(texts().verdicts.stepsWithin[step])}</h3>
      {NAMES.filter((name) => limits[step][name] !== null).map((name) => (
        <label key={`${step} ${name}`} className="limit" htmlFor={`${id} ${name}`}>
          <span>{labelOf(name)}</span>
          <KeptNumberInput
            id={`${id} ${name}`}
            kept={shownLimit(name, limits[step][name])}
            onNumber={(typed) => set(name, typed)}
          />
        </label>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => change({ limits: { ...limits, [step]: DEFAULT_LIMITS[step] } })}
      >
        {words.usualLimits}
      </button>
    </section>
  );
}
