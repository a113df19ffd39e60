import { useState } from 'react';
import type { Step } from '../../grading/steps';
import type { MachineRecord } from '../../journal/records';
import { type OwnRecipe, type OwnRecipes, recipeFor, sayOwn } from '../../recipes/ownRecipes';
import { type Amount, type Recipe, type SaidBy, usualRecipe } from '../../recipes/recipe';
import { supplyName } from '../../recipes/supplies';
import { amountWords, type Units } from '../../recipes/units';
import { texts } from '../../texts/speech';
import { loadWords, roomAndWater, spanWords } from './planWords';
import { RecipeEditor } from './RecipeEditor';
import { takeFocus } from './takeFocus';

interface RecipeCardProps {
  readonly step: Step;
  /** Null when the owner has none: then the usual amounts are shown unscaled. */
  readonly machine: MachineRecord | null;
  readonly units: Units;
  readonly own: OwnRecipes;
  readonly onOwn: (own: OwnRecipes) => void;
}

/** What goes into a machine for a step, and for how long. */
export function RecipeCard({ step, machine, units, own, onOwn }: RecipeCardProps) {
  const words = texts().plan;
  const [isChanging, setChanging] = useState(false);
  const [wasChanging, setWasChanging] = useState(false);
  const [dropped, setDropped] = useState<OwnRecipe | null>(null);
  const recipe =
    machine === null
      ? usualRecipe({ type: step === 'coarse' ? 'rotary' : 'vibratory', capacityKg: null }, step)
      : recipeFor(machine, step, own);
  const say = (said: OwnRecipe | null) => {
    if (machine === null) return;
    setDropped(said === null ? (own[machine.id]?.[step] ?? null) : null);
    onOwn(sayOwn(own, machine.id, step, said));
    setChanging(false);
  };
  const open = () => {
    setChanging(true);
    setWasChanging(true);
  };
  return (
    <div className="recipe">
      <p className="recipe-for">
        <strong>{texts().verdicts.steps[step]}</strong>
        <span>{loadWords(recipe, units)}</span>
      </p>
      {recipe.amounts.length === 0 && recipe.days === null && <p>{words.noUsual}</p>}
      <RecipeLines recipe={recipe} units={units} />
      {recipe.note !== '' && <p className="recipe-note">{recipe.note}</p>}
      {machine === null && <p>{words.noMachine}</p>}
      {machine !== null && isChanging && (
        <RecipeEditor
          recipe={recipe}
          said={own[machine.id]?.[step] ?? {}}
          units={units}
          onSave={say}
          onCancel={() => setChanging(false)}
        />
      )}
      {machine !== null && !isChanging && (
        <p className="plan-buttons">
          <button type="button" className="button" onClick={open} ref={takeFocus(wasChanging)}>
            {words.change}
          </button>
          {dropped !== null && (
            <button type="button" className="button button-quiet" onClick={() => say(dropped)}>
              {words.undo}
            </button>
          )}
        </p>
      )}
      <p className="fine plan-how">{words.common}</p>
    </div>
  );
}

function RecipeLines({ recipe, units }: { recipe: Recipe; units: Units }) {
  const words = texts().plan;
  return (
    <ul className="recipe-lines">
      {recipe.amounts.map((amount) => (
        <AmountLine key={amount.supply} amount={amount} units={units} />
      ))}
      {recipe.days !== null && (
        <li>
          <span className="recipe-much">{spanWords(recipe.days)}</span>
          <span>{recipe.step === 'coarse' ? words.thenCheckAndCharge : words.thenCheck}</span>
          <SaidByMark saidBy={recipe.days.saidBy} />
        </li>
      )}
      {roomAndWater(recipe).map(({ text, saidBy }) => (
        <li key={text} className="recipe-room">
          <span>{text}</span>
          <SaidByMark saidBy={saidBy} />
        </li>
      ))}
    </ul>
  );
}

function AmountLine({ amount, units }: { amount: Amount; units: Units }) {
  const { first, second } = amountWords(amount.supply, amount.tablespoons, units);
  return (
    <li>
      <span className="recipe-much">{first}</span>
      <span>
        {supplyName(amount.supply)} <span className="fine">({second})</span>
      </span>
      <SaidByMark saidBy={amount.saidBy} />
    </li>
  );
}

/** Who says so, where it is not common practice. */
function SaidByMark({ saidBy }: { saidBy: SaidBy }) {
  return saidBy === 'common-practice' ? null : (
    <span className="fine recipe-mark">{texts().plan.saidBy[saidBy]}</span>
  );
}
