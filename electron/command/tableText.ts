/** Columns of text in line, the first to the left and the others to the right; the last row is a sum. */
export function tableText(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((title, at) =>
    Math.max(title.length, ...rows.map((row) => (row[at] ?? '').length)),
  );
  const lineOf = (row: readonly string[]): string =>
    row
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join('   ')
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width)).join('   ');
  const body = rows.slice(0, -1).map(lineOf);
  const sum = rows.slice(-1).map(lineOf);
  return `${[lineOf(head), rule, ...body, rule, ...sum].join('\n')}\n`;
}
