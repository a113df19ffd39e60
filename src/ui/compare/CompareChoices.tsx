import { useId } from 'react';
import { COMPARE_BY, COMPARE_WHAT, type CompareBy, type CompareWhat } from '../../compare/compareBy';
import { texts } from '../../texts/speech';

interface Props {
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly onBy: (by: CompareBy) => void;
  readonly onWhat: (what: CompareWhat) => void;
}

/** What to compare, and what to put stones together by. */
export function CompareChoices({ by, what, onBy, onWhat }: Props) {
  const words = texts().compare;
  return (
    <div className="compare-choices">
      <Choice
        legend={words.chooseWhat}
        all={COMPARE_WHAT}
        terms={words.what}
        chosen={what}
        onChoose={onWhat}
      />
      <Choice legend={words.chooseBy} all={COMPARE_BY} terms={words.by} chosen={by} onChoose={onBy} />
    </div>
  );
}

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly all: readonly T[];
  readonly terms: Readonly<Record<T, string>>;
  readonly chosen: T;
  readonly onChoose: (one: T) => void;
}

function Choice<T extends string>({ legend, all, terms, chosen, onChoose }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset className="compare-choice">
      <legend>{legend}</legend>
      <div className="steps compare-ways">
        {all.map((one) => (
          <label key={one} className="step">
            <input
              type="radio"
              name={name}
              value={one}
              checked={one === chosen}
              onChange={() => onChoose(one)}
            />
            {terms[one]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
