import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import { problemText } from '../../core/problemText.ts';
import type { Result } from '../../core/result.ts';
import type { UnitSystem } from '../../core/yard.ts';

interface FigureFieldProps<T> {
  readonly label: string;
  /** The value as text, in the person's units. */
  readonly shown: string;
  readonly unit?: string | undefined;
  readonly note?: string | undefined;
  readonly units: UnitSystem;
  readonly parse: (typed: string) => Result<T>;
  readonly onCommit: (value: T) => void;
  readonly readOnly?: boolean | undefined;
  /** Wide fields hold words, a place its degrees, a day its ten signs, the others figures. */
  readonly size?: 'wide' | 'place' | 'day' | undefined;
}

/**
 * A figure on a ruled line: the words left, the value underlined, its unit beside it. Enter or leaving the
 * field commits; Escape puts the old value back; what cannot be read is said under the line and not committed.
 */
export function FigureField<T>(props: FigureFieldProps<T>) {
  const id = useId();
  const [typed, setTyped] = useState(props.shown);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    setTyped(props.shown);
    setWrong(null);
  }, [props.shown]);

  function commit(): void {
    if (typed.trim() === props.shown.trim()) {
      setWrong(null);
      return;
    }
    const read = props.parse(typed);
    if (read.ok) {
      setWrong(null);
      props.onCommit(read.value);
    } else {
      const words = problemText(read.problems[0], props.units);
      setWrong(`${words.what} ${words.mend}`);
    }
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') {
      setTyped(props.shown);
      setWrong(null);
    }
  }

  return (
    <div className="line">
      <label htmlFor={id}>{props.label}</label>
      <span className="line-value">
        <input
          id={id}
          className={props.size ? `figure figure-${props.size}` : 'figure'}
          value={typed}
          readOnly={props.readOnly}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        {props.unit && <span className="unit">{props.unit}</span>}
        {props.note && <span className="note">{props.note}</span>}
      </span>
      {wrong !== null && (
        <span className="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </span>
      )}
    </div>
  );
}
