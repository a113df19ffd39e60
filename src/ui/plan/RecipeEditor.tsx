import { type FormEvent, useId, useState } from 'react';
import type { OwnRecipe } from '../../recipes/ownRecipes';
import type { Recipe } from '../../recipes/recipe';
import { atTheBench, inTablespoons } from '../../recipes/spoons';
import { gramsOf, onTheScale, type Supply, supplyName, tablespoonsOf } from '../../recipes/supplies';
import type { Units } from '../../recipes/units';
import { capitalized } from '../../texts/capitalized';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { typedNumber } from '../../texts/typedNumber';
import { NumberInput } from '../parts/NumberInput';
import { takeFocus } from './takeFocus';

interface RecipeEditorProps {
  /** As it counts now. */
  readonly recipe: Recipe;
  /** What of it the owner said. */
  readonly said: OwnRecipe;
  readonly units: Units;
  /** Null takes the owner's own back. */
  readonly onSave: (said: OwnRecipe | null) => void;
  readonly onCancel: () => void;
}

/** The owner's own amounts, days and remark; what is left as it is stays as it was said before. */
export function RecipeEditor({ recipe, said, units, onSave, onCancel }: RecipeEditorProps) {
  const words = texts().plan;
  const amountLabel = units.amount === 'spoons' ? words.inTablespoons : words.inGrams;
  const supplies: readonly Supply[] = [recipe.step, 'borax'];
  const shown = Object.fromEntries(supplies.map((supply) => [supply, shownAmount(recipe, supply, units)]));
  const [amounts, setAmounts] = useState<Readonly<Record<string, string>>>(shown);
  const [from, setFrom] = useState(`${recipe.days?.from ?? ''}`);
  const [to, setTo] = useState(`${recipe.days?.to ?? ''}`);
  const [note, setNote] = useState(recipe.note);
  const noteId = useId();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const changed = supplies.filter((supply) => amounts[supply] !== shown[supply]);
    const own = changed.map((supply) => [supply, tablespoonsIn(amounts[supply] ?? '', supply, units)]);
    const areDaysNew = from !== `${recipe.days?.from ?? ''}` || to !== `${recipe.days?.to ?? ''}`;
    const days = [typedNumber(from), typedNumber(to)].flatMap((one) => one ?? []).sort((a, b) => a - b);
    const [least, most] = days;
    onSave({
      ...said,
      ...(own.length > 0 ? { tablespoons: { ...said.tablespoons, ...Object.fromEntries(own) } } : {}),
      ...(areDaysNew && least !== undefined && most !== undefined ? { days: { from: least, to: most } } : {}),
      ...(note === recipe.note ? {} : { note: note.trim() }),
    });
  };
  return (
    <form className="said recipe-editor" onSubmit={submit} tabIndex={-1} ref={takeFocus(true)}>
      {supplies.map((supply) => (
        <NumberField
          key={supply}
          label={amountLabel(capitalized(supplyName(supply)))}
          value={amounts[supply] ?? ''}
          onValue={(value) => setAmounts({ ...amounts, [supply]: value })}
        />
      ))}
      <div className="recipe-days">
        <NumberField label={words.daysFrom} value={from} onValue={setFrom} />
        <NumberField label={words.daysTo} value={to} onValue={setTo} />
      </div>
      <div className="field">
        <label className="field-label" htmlFor={noteId}>
          {words.note}
        </label>
        <input
          id={noteId}
          type="text"
          maxLength={300}
          value={note}
          onChange={(event) => setNote(event.target.value)}
        />
      </div>
      <div className="plan-buttons">
        <button type="submit" className="button button-strong">
          {words.save}
        </button>
        {Object.keys(said).length > 0 && (
          <button type="button" className="button" onClick={() => onSave(null)}>
            {words.asUsual}
          </button>
        )}
        <button type="button" className="button button-quiet" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
}

function NumberField({ label, value, onValue }: NumberFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <NumberInput id={id} value={value} onValue={onValue} />
    </div>
  );
}

/** As it is measured out, as a number in a field; "0" for what does not go in. */
function shownAmount({ amounts }: Recipe, supply: Supply, { amount }: Units): string {
  const exact = amounts.find((one) => one.supply === supply)?.tablespoons ?? 0;
  const spoons = atTheBench(exact);
  if (spoons === null) return '0';
  return amount === 'spoons'
    ? withDecimalMark(String(Number(inTablespoons(spoons).toFixed(2))))
    : withDecimalMark(String(onTheScale(gramsOf(supply, exact))));
}

function tablespoonsIn(value: string, supply: Supply, { amount }: Units): number {
  const number = typedNumber(value) ?? 0;
  return amount === 'spoons' ? number : tablespoonsOf(supply, number);
}
