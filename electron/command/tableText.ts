import { columnWidths, textTable } from '../../core/zones/index.ts';

const GAP = '   ';

/** Columns of text in line, the first to the left and the others to the right; the last row is a sum. */
export function tableText(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const table = [head, ...rows];
  const [heads = '', ...lines] = textTable(table, GAP);
  const rule = columnWidths(table)
    .map((width) => '-'.repeat(width))
    .join(GAP);
  return `${[heads, rule, ...lines.slice(0, -1), rule, ...lines.slice(-1)].join('\n')}\n`;
}
