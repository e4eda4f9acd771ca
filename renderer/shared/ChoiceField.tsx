import { useId } from 'react';

interface ChoiceFieldProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [T, string])[];
  readonly onChoose: (value: T) => void;
  readonly note?: string | undefined;
}

/** One of a few, on a ruled line. */
export function ChoiceField<T extends string>(props: ChoiceFieldProps<T>) {
  const id = useId();
  return (
    <div className="line">
      <label htmlFor={id}>{props.label}</label>
      <span className="line-value">
        <select
          id={id}
          className="choice"
          value={props.value}
          onChange={(event) => props.onChoose(event.target.value as T)}
        >
          {props.choices.map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
        {props.note && <span className="note">{props.note}</span>}
      </span>
    </div>
  );
}
