import type { Units } from '../../recipes/units';
import { useSettings } from '../stores';

const CHOICES = [
  {
    unit: 'length',
    legend: 'Lengths in',
    options: [
      ['mm', 'millimeters'],
      ['inch', 'inches'],
    ],
  },
  {
    unit: 'amount',
    legend: 'Grit by',
    options: [
      ['spoons', 'the spoon'],
      ['grams', 'the gram'],
    ],
  },
  {
    unit: 'weight',
    legend: 'Weights in',
    options: [
      ['kg', 'kilograms'],
      ['lb', 'pounds'],
    ],
  },
] as const;

/** Units of recipes and of the plan. */
export function UnitsChoice() {
  const units = useSettings((state) => state.units);
  const change = useSettings((state) => state.change);
  return (
    <section className="choices">
      <h3>Units</h3>
      {CHOICES.map(({ unit, legend, options }) => (
        <label key={unit} className="field-beside">
          <span>{legend}</span>
          <select
            value={units[unit]}
            onChange={({ target }) => change({ units: { ...units, [unit]: target.value } as Units })}
          >
            {options.map(([value, word]) => (
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
