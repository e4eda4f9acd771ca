const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** '2026-05-12' as '12 May 2026', whatever follows the day; text that is no ISO date stays as it is. */
export function formatDay(isoDate: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(isoDate);
  const month = parts === null ? undefined : MONTHS[Number(parts[2]) - 1];
  return parts === null || month === undefined ? isoDate : `${Number(parts[3])} ${month} ${parts[1]}`;
}
