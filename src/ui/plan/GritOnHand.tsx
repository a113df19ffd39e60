import { type FormEvent, useId, useState } from 'react';
import type { Day } from '../../journal/records';
import type { GritStock, OnHand } from '../../recipes/gritOnHand';
import { KG_PER_LB } from '../../recipes/spoons';
import { SUPPLIES, type Supply, supplyName } from '../../recipes/supplies';
import type { Units } from '../../recipes/units';
import { capitalized } from '../../texts/capitalized';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { typedNumber } from '../../texts/typedNumber';
import { NumberInput } from '../parts/NumberInput';
import { dayWords, stockWords } from './planWords';
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
  const words = texts().plan;
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
      {onHand.length === 0 && <p>{words.gritEmpty}</p>}
      <ul className="grit-rows">
        {onHand.map((one) => (
          <GritRow key={one.supply} one={one} units={units} />
        ))}
      </ul>
      {isSaying ? (
        <GritForm units={units} onSay={say} onCancel={() => setSaying(false)} />
      ) : (
        <button type="button" className="button" onClick={open} ref={takeFocus(hasSaid)}>
          {words.gritSay}
        </button>
      )}
      {onHand.length > 0 && <p className="fine plan-how">{words.gritHow}</p>}
    </>
  );
}

function GritRow({ one, units }: { one: OnHand; units: Units }) {
  const words = texts().plan;
  const { supply, grams, enough, charges, assumed, countedOn } = one;
  return (
    <li className="grit-row" data-low={enough !== null && enough.charges < 2}>
      <strong>{capitalized(supplyName(supply))}</strong>
      <span className="grit-left">{stockWords(grams, units)}</span>
      {enough !== null && (
        <span className="grit-enough">{words.enough(enough.charges, ownWords(enough.machine.name))}</span>
      )}
      <span className="fine grit-since">{words.counted(dayWords(countedOn), charges, assumed)}</span>
    </li>
  );
}

interface GritFormProps {
  readonly units: Units;
  readonly onSay: (supply: Supply, grams: number) => void;
  readonly onCancel: () => void;
}

function GritForm({ units, onSay, onCancel }: GritFormProps) {
  const words = texts().plan;
  const [supply, setSupply] = useState<Supply>('coarse');
  const [amount, setAmount] = useState('');
  const ids = { supply: useId(), amount: useId() };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const number = typedNumber(amount);
    if (number !== null) onSay(supply, number * (units.weight === 'kg' ? 1 : 1000 * KG_PER_LB));
  };
  return (
    <form className="said" onSubmit={submit} tabIndex={-1} ref={takeFocus(true)}>
      <div className="field">
        <label className="field-label" htmlFor={ids.supply}>
          {words.gritSupply}
        </label>
        <select id={ids.supply} value={supply} onChange={(event) => setSupply(event.target.value as Supply)}>
          {SUPPLIES.map((one) => (
            <option key={one} value={one}>
              {supplyName(one)}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.amount}>
          {units.weight === 'kg' ? words.grams : words.pounds}
        </label>
        <NumberInput id={ids.amount} required value={amount} onValue={setAmount} />
      </div>
      <div className="plan-buttons">
        <button type="submit" className="button button-strong">
          {words.gritSave}
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}
