import { useId } from 'react';

export interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  /** Value and its words, in order. */
  readonly options: readonly (readonly [T, string])[];
  readonly onChange: (value: T) => void;
}

/** One of a few, by name. */
export function Choice<T extends string>({ label, value, options, onChange }: ChoiceProps<T>) {
  const id = useId();
  const isLong = options.some(([, words]) => words.length > 12);
  return (
    <div className={`field${isLong ? ' wide' : ''}`}>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={({ target }) => onChange(target.value as T)}>
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
