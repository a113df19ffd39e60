import type { Units } from '../../recipes/units';
import { LANGUAGES, type Language } from '../../texts/languages';
import { texts } from '../../texts/speech';
import { useSettings } from '../stores';

function unitChoices() {
  const words = texts().page;
  return [
    { unit: 'length', legend: words.lengthsIn, options: { mm: words.millimeters, inch: words.inches } },
    { unit: 'amount', legend: words.gritBy, options: { spoons: words.bySpoon, grams: words.byGram } },
    { unit: 'weight', legend: words.weightsIn, options: { kg: words.kilograms, lb: words.pounds } },
  ] as const;
}

/** How the page speaks: its language, and the units of sizes and amounts. */
export function UnitsChoice() {
  const units = useSettings((state) => state.units);
  const language = useSettings((state) => state.language);
  const change = useSettings((state) => state.change);
  const words = texts().page;
  return (
    <section className="choices">
      <h3>{words.languageAndUnits}</h3>
      <label className="field-beside">
        <span lang="en">
          {words.language === 'Language' ? words.language : `${words.language} · Language`}
        </span>
        <select
          value={language ?? ''}
          onChange={({ target }) =>
            change({ language: target.value === '' ? null : (target.value as Language) })
          }
        >
          <option value="">{words.asBrowser}</option>
          {Object.entries(LANGUAGES).map(([tag, name]) => (
            <option key={tag} value={tag} lang={tag}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {unitChoices().map(({ unit, legend, options }) => (
        <label key={unit} className="field-beside">
          <span>{legend}</span>
          <select
            value={units[unit]}
            onChange={({ target }) => change({ units: { ...units, [unit]: target.value } as Units })}
          >
            {Object.entries(options).map(([value, word]) => (
              <option key={value} value={value}>
                {word}
              </option>
            ))}
          </select>
        </label>
      ))}
    </section>
  );
}
