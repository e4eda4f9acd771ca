import type { ReactNode } from 'react';

export interface LedgerColumn {
  readonly head: string;
  readonly align: 'left' | 'right';
}

export interface LedgerRow {
  readonly key: string;
  readonly cells: readonly ReactNode[];
  readonly selected?: boolean | undefined;
  readonly onSelect?: (() => void) | undefined;
}

interface LedgerProps {
  readonly caption: string;
  readonly columns: readonly LedgerColumn[];
  readonly rows: readonly LedgerRow[];
  /** The sum, under a single rule and over a double one. */
  readonly sum?: readonly ReactNode[] | undefined;
}

/** Ruled columns of figures. A row that can be selected holds a button in its first cell. */
export function Ledger({ caption, columns, rows, sum }: LedgerProps) {
  return (
    <table className="ledger">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column.head} scope="col" className={`align-${column.align}`}>
              {column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key} className={row.selected ? 'selected' : undefined} onClick={row.onSelect}>
            {row.cells.map((cell, i) => (
              <td key={columns[i]?.head} className={`align-${columns[i]?.align}`}>
                {i === 0 && row.onSelect ? (
                  <button type="button" className="row-name" aria-pressed={row.selected === true}>
                    {cell}
                  </button>
                ) : (
                  cell
                )}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
      {sum && (
        <tfoot>
          <tr>
            {sum.map((cell, i) => (
              <td key={columns[i]?.head} className={`align-${columns[i]?.align}`}>
                {cell}
              </td>
            ))}
          </tr>
        </tfoot>
      )}
    </table>
  );
}
