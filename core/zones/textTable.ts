/** Rows as lines of text: the first column left, the others right, `gap` between. The first row is the heads. */
export function textTable(rows: readonly (readonly string[])[], gap = '  '): readonly string[] {
  const widths = columnWidths(rows);
  return rows.map((row) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join(gap)
      .trimEnd(),
  );
}

/** How many characters the widest cell of each column of the heads has. */
export function columnWidths(rows: readonly (readonly string[])[]): readonly number[] {
  return (rows[0] ?? []).map((_, column) =>
    rows.reduce((widest, row) => Math.max(widest, (row[column] ?? '').length), 0),
  );
}
