/** 'A' for the first zone, 'B' for the second, 'AA' after 'Z': as columns of a sheet are named. */
export function zoneLetter(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : zoneLetter(Math.floor(place / 26) - 1) + last;
}
