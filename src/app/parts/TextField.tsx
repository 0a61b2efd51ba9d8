import { useId, useState } from 'react';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Throws with the words to show when the text cannot be. */
  readonly check: (text: string) => void;
  readonly onChange: (text: string) => void;
  readonly suggestions?: readonly string[];
}

/** A line of text that must make sense; takes effect on Enter or when left. */
export function TextField({ label, value, check, onChange, suggestions }: TextFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState('');
  const id = useId();
  const take = () => {
    if (typed === null) return;
    try {
      check(typed);
      setWrong('');
      setTyped(null);
      if (typed !== value) onChange(typed);
    } catch (thrown) {
      const { message, hint } = thrown as Error & { hint?: string };
      setWrong(hint ? `${message}: ${hint}` : message);
    }
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={typed ?? value}
        list={suggestions ? `${id}-list` : undefined}
        autoComplete="off"
        aria-invalid={wrong !== ''}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={take}
        onKeyDown={({ key }) => {
          if (key === 'Enter') take();
        }}
      />
      {suggestions && (
        <datalist id={`${id}-list`}>
          {suggestions.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      {wrong && (
        <span className="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </span>
      )}
    </div>
  );
}
