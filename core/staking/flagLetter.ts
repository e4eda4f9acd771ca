/** 'a' for the first flag, 'z' for the twenty-sixth, then 'aa': as lines are told apart in a field book. */
export function flagLetter(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : flagLetter(Math.floor(place / 26) - 1) + last;
}
