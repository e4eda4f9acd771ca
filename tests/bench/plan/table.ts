/** A table as DEVELOPERS.md has it, so that it can be copied there. */
export function printTable(head: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    `| ${widths.map((width, i) => (cells[i] ?? '').padEnd(width)).join(' | ')} |`;
  console.log(line(head));
  console.log(line(widths.map((width) => '-'.repeat(width))));
  for (const row of rows) console.log(line(row));
  console.log();
}

/** The value a part of all lie below: 0.5 = median, between the two in the middle where there are two. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = part * (sorted.length - 1);
  const [below, above] = [sorted[Math.floor(place)], sorted[Math.ceil(place)]] as [number, number];
  return below + (place - Math.floor(place)) * (above - below);
}

/** Processor time of this process from here on; wall clock says little where other work runs beside it. */
export function cpuClock(): () => number {
  const start = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
}
