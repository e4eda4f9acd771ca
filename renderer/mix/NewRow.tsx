import { useState } from 'react';
import type { Result } from '../../core/result.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { problemText } from '../../core/problemText.ts';

/** One thing that has to be typed before a new row can be made: nothing is filled in for the person. */
export interface NewField {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly example: string;
  readonly parse: (typed: string) => Result<unknown>;
}

interface NewRowProps {
  readonly fields: readonly NewField[];
  readonly units: UnitSystem;
  readonly addWords: string;
  /** Called with every field's typed text once all of them can be read. */
  readonly onAdd: (typed: Readonly<Record<string, string>>) => void;
}

/** A few ruled lines that together make a new product or sprayer. */
export function NewRow({ fields, units, addWords, onAdd }: NewRowProps) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [wrong, setWrong] = useState<Readonly<Record<string, string>>>({});

  function add(): void {
    const problems: Record<string, string> = {};
    for (const field of fields) {
      const read = field.parse(typed[field.key] ?? '');
      if (read.ok) continue;
      const words = problemText(read.problems[0], units);
      problems[field.key] = `${words.what} ${words.mend}`;
    }
    setWrong(problems);
    if (Object.keys(problems).length === 0) onAdd(typed);
  }

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      {fields.map((field) => (
        <div className="line" key={field.key}>
          <label htmlFor={`new-${field.key}`}>{field.label}</label>
          <span className="line-value">
            <input
              id={`new-${field.key}`}
              className={field.unit === '' ? 'figure figure-wide' : 'figure'}
              placeholder={field.example}
              value={typed[field.key] ?? ''}
              aria-invalid={field.key in wrong}
              aria-describedby={field.key in wrong ? `new-${field.key}-wrong` : undefined}
              autoComplete="off"
              onChange={(event) => setTyped({ ...typed, [field.key]: event.target.value })}
            />
            {field.unit !== '' && <span className="unit">{field.unit}</span>}
          </span>
          {field.key in wrong && (
            <span className="wrong" id={`new-${field.key}-wrong`} role="alert">
              {wrong[field.key]}
            </span>
          )}
        </div>
      ))}
      <div className="do-row">
        <button type="submit" className="do">
          {addWords}
        </button>
      </div>
    </form>
  );
}
