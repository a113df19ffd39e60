import { useEffect, useRef, useState } from 'react';
import { texts } from '../../texts/speech';
import { typedNumber } from '../../texts/typedNumber';

interface Props {
  /** What stands in the field. */
  readonly value: string;
  /** With every key; null while there is no number in the field. */
  readonly onValue: (typed: string, number: number | null) => void;
  readonly id: string;
  readonly required?: boolean;
  readonly disabled?: boolean;
  readonly onBlur?: () => void;
}

/** A field for a number of any language's writing; its form is not sent off while it holds something else. */
export function NumberInput({ value, onValue, ...rest }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const isUnclear = value.trim() !== '' && typedNumber(value) === null;
  useEffect(() => input.current?.setCustomValidity(isUnclear ? texts().measures.numberUnclear : ''));
  return (
    <input
      ref={input}
      type="text"
      inputMode="decimal"
      autoComplete="off"
      aria-invalid={isUnclear}
      value={value}
      onChange={({ target }) => onValue(target.value, typedNumber(target.value))}
      {...rest}
    />
  );
}

interface KeptProps {
  readonly id: string;
  /** As it is kept, written as it is to be shown. */
  readonly kept: string;
  /** With every number that is typed. */
  readonly onNumber: (number: number) => void;
  readonly disabled?: boolean;
}

/** A number that counts as soon as it is typed; what is kept is shown again when the field is left. */
export function KeptNumberInput({ id, kept, onNumber, disabled = false }: KeptProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <NumberInput
      id={id}
      value={typed ?? kept}
      disabled={disabled}
      onBlur={() => setTyped(null)}
      onValue={(text, number) => {
        setTyped(text);
        if (number !== null) onNumber(number);
      }}
    />
  );
}
