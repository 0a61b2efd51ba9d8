import { useId, useState } from 'react';
import type { LengthUnit } from '../state/project.js';
import { readLength, writeLength } from './readLength.js';

export interface LengthFieldProps {
  readonly label: string;
  readonly mm: number | null;
  readonly unit: LengthUnit;
  readonly onChange: (mm: number) => void;
  /** Zero is a length too (no dressing); default false. */
  readonly mayBeZero?: boolean;
  /** Shown while nothing is typed; default 600 mm. */
  readonly exampleMm?: number;
}

/** A length, typed as `7 1/2`, `7-1/2 in`, `190 mm`; takes effect on Enter or when left. */
export function LengthField({
  label,
  mm,
  unit,
  onChange,
  mayBeZero = false,
  exampleMm = 600,
}: LengthFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState('');
  const id = useId();
  const take = () => {
    if (typed === null) return;
    try {
      const read = readLength(typed, unit);
      if (read === 0 && !mayBeZero) throw new Error('This length must be more than nothing.');
      setWrong('');
      setTyped(null);
      if (read !== mm) onChange(read);
    } catch (thrown) {
      setWrong((thrown as Error).message);
    }
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={typed ?? (mm === null ? '' : writeLength(mm, unit))}
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        aria-invalid={wrong !== ''}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        placeholder={writeLength(exampleMm, unit)}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') {
            setTyped(null);
            setWrong('');
          }
        }}
      />
      {wrong && (
        <span className="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </span>
      )}
    </div>
  );
}
