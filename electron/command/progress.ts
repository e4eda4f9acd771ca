import type { Voice } from './outcome.ts';

/** A quick plan says nothing; a slow one a line a second. */
const QUIET_MS = 1000;
const STEP_MS = 1000;

/** Tells how far a plan has come, once it takes longer than a second. */
export function slowProgress(voice: Voice, what: string): (fraction: number) => void {
  const startedMs = performance.now();
  let saidMs = startedMs + QUIET_MS - STEP_MS;
  return (fraction) => {
    const nowMs = performance.now();
    if (nowMs - saidMs < STEP_MS || fraction >= 1) return;
    saidMs = nowMs;
    voice.err(`${what}: ${Math.floor(fraction * 100)}%\n`);
  };
}
