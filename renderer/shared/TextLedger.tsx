import { Ledger } from './Ledger.tsx';

interface TextLedgerProps {
  readonly caption: string;
  /** The first row is the heads; nothing is shown without rows under it. */
  readonly table: readonly (readonly string[])[];
}

/** A table that is worked out as words, for screen and copy alike. */
export function TextLedger({ caption, table }: TextLedgerProps) {
  const [heads, ...rows] = table;
  if (heads === undefined || rows.length === 0) return null;
  return (
    <Ledger
      caption={caption}
      columns={heads.map((head, i) => ({ head, align: i === 0 ? 'left' : 'right' }))}
      rows={rows.map((cells, i) => ({ key: `${i}`, cells }))}
    />
  );
}
