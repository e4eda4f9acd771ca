/** Day page or night page. Kept in this window's own storage; the system's choice until one is made. */
export type Lamp = 'day' | 'night';

const KEY = 'platpace-lamp';

export function readLamp(): Lamp {
  const kept = localStorage.getItem(KEY);
  if (kept === 'day' || kept === 'night') return kept;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day';
}

export function keepLamp(lamp: Lamp): void {
  localStorage.setItem(KEY, lamp);
}
