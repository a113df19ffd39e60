import { type FormEvent, useId, useState } from 'react';
import type { Day } from '../../journal/records';
import type { GritStock, OnHand } from '../../recipes/gritOnHand';
import { KG_PER_LB } from '../../recipes/spoons';
import { SUPPLIES, SUPPLY_FACTS, type Supply } from '../../recipes/supplies';
import type { Units } from '../../recipes/units';
import { capitalized, dayWords, enoughWords, PLAN_WORDS, stockWords, usedWords } from './planWords';
import { takeFocus } from './takeFocus';

interface GritOnHandProps {
  readonly onHand: readonly OnHand[];
  readonly stock: GritStock;
  readonly today: Day;
  readonly units: Units;
  readonly onStock: (stock: GritStock) => void;
}

/** What is left of each grit, and for how many charges. */
export function GritOnHand({ onHand, stock, today, units, onStock }: GritOnHandProps) {
  const [isSaying, setSaying] = useState(false);
  const [hasSaid, setHasSaid] = useState(false);
  const open = () => {
    setSaying(true);
    setHasSaid(true);
  };
  const say = (supply: Supply, grams: number) => {
    onStock({ ...stock, [supply]: { grams, day: today, atMs: Date.now() } });
    setSaying(false);
  };
  return (
    <>
      {onHand.length === 0 && <p>{PLAN_WORDS.gritEmpty}</p>}
      <ul className="grit-rows">
        {onHand.map((one) => (
          <GritRow key={one.supply} one={one} units={units} />
        ))}
      </ul>
      {isSaying ? (
        <GritForm units={units} onSay={say} onCancel={() => setSaying(false)} />
      ) : (
        <button type="button" className="button" onClick={open} ref={takeFocus(hasSaid)}>
          {PLAN_WORDS.gritSay}
        </button>
      )}
      {onHand.length > 0 && <p className="fine plan-how">{PLAN_WORDS.gritHow}</p>}
    </>
  );
}

function GritRow({ one, units }: { one: OnHand; units: Units }) {
  const { supply, grams, enough, charges, assumed, countedOn } = one;
  return (
    <li className="grit-row" data-low={enough !== null && enough.charges < 2}>
      <strong>{capitalized(SUPPLY_FACTS[supply].name)}</strong>
      <span className="grit-left">{stockWords(grams, units)}</span>
      {enough !== null && (
        <span className="grit-enough">{enoughWords(enough.charges, enough.machine.name)}</span>
      )}
      <span className="fine grit-since">
        Counted {dayWords(countedOn)}, {usedWords(charges, assumed)}
      </span>
    </li>
  );
}

interface GritFormProps {
  readonly units: Units;
  readonly onSay: (supply: Supply, grams: number) => void;
  readonly onCancel: () => void;
}

function GritForm({ units, onSay, onCancel }: GritFormProps) {
  const [supply, setSupply] = useState<Supply>('coarse');
  const [amount, setAmount] = useState('');
  const ids = { supply: useId(), amount: useId() };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const grams = Number(amount) * (units.weight === 'kg' ? 1 : 1000 * KG_PER_LB);
    if (amount.trim() !== '' && grams >= 0) onSay(supply, grams);
  };
  return (
    <form className="said" onSubmit={submit} tabIndex={-1} ref={takeFocus(true)}>
      <div className="field">
        <label className="field-label" htmlFor={ids.supply}>
          {PLAN_WORDS.gritSupply}
        </label>
        <select id={ids.supply} value={supply} onChange={(event) => setSupply(event.target.value as Supply)}>
          {SUPPLIES.map((one) => (
            <option key={one} value={one}>
              {SUPPLY_FACTS[one].name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.amount}>
          {units.weight === 'kg' ? 'Grams' : 'Pounds'}
        </label>
        <input
          id={ids.amount}
          type="number"
          inputMode="decimal"
          min="0"
          step="any"
          required
          value={amount}
          onChange={(event) => setAmount(event.target.value)}
        />
      </div>
      <div className="plan-buttons">
        <button type="submit" className="button button-strong">
          {PLAN_WORDS.gritSave}
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          {PLAN_WORDS.cancel}
        </button>
      </div>
    </form>
  );
}
