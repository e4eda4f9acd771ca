/** Places walked one after the other that stay together; it is come to at one end and left at the other. */
export type Stop = readonly number[];

/** How long the way is between two places; between an end of the whole way and a place where one is null. */
export type StepM = (from: number | null, to: number | null) => number;

/** Orders are changed only for more than this: less is rounding, and would never end. */
const GAIN_M = 1e-9;
/** Pairs of stops looked at from one start, so that a thousand of them still end. */
const MOST_LOOKS = 4_000_000;
/** With no more stops than this, the search is begun at each of them. */
const MOST_STARTS = 24;

/**
 * An order of stops with little way between them, and which end each is come to. Always on to the nearest, begun
 * at every stop, then stretches turned round and stops moved while that shortens the way; the shortest stays.
 *
 * @param stepM the way from a place to a place, the same in both directions; from null: from where the walk
 *   begins; to null: to where it ends
 * Cost: stops cubed where there are few of them, else squared a round
 */
export function orderStops(stops: readonly Stop[], stepM: StepM): Stop[] {
  const starts = stops.length <= MOST_STARTS ? stops.map((_, i) => i) : [nearestTo(null, stops, stepM)];
  let best: Stop[] = [];
  let bestM = Infinity;
  for (const start of starts) {
    for (const first of [stops[start] as Stop, (stops[start] as Stop).toReversed()]) {
      const order = nearestFirst(first, stops.toSpliced(start, 1), stepM);
      for (let looks = 0; looks < MOST_LOOKS; looks += stops.length ** 2) {
        const turned = turnStretches(order, stepM);
        if (!moveStops(order, stepM) && !turned) break;
      }
      const lengthM = wholeM(order, stepM);
      if (lengthM >= bestM - GAIN_M) continue;
      bestM = lengthM;
      best = order;
    }
  }
  return best;
}

/** The whole way over stops in order, from the start to the finish. */
function wholeM(order: readonly Stop[], stepM: StepM): number {
  return order.reduce(
    (sum, stop, i) => sum + stepM(leave(order[i - 1]), enter(stop)),
    stepM(leave(order.at(-1)), null),
  );
}

function nearestFirst(first: Stop, others: readonly Stop[], stepM: StepM): Stop[] {
  const left = [...others];
  const order = [first];
  while (left.length > 0) {
    const here = leave(order.at(-1));
    const [next] = left.splice(nearestTo(here, left, stepM), 1);
    if (next === undefined) break;
    order.push(stepM(here, enter(next)) <= stepM(here, leave(next)) ? next : next.toReversed());
  }
  return order;
}

function nearestTo(here: number | null, stops: readonly Stop[], stepM: StepM): number {
  let nearest = 0;
  let nearestM = Infinity;
  stops.forEach((stop, i) => {
    const wayM = Math.min(stepM(here, enter(stop)), stepM(here, leave(stop)));
    if (wayM >= nearestM) return;
    nearestM = wayM;
    nearest = i;
  });
  return nearest;
}

/** Turns round every stretch that is shorter the other way; true when any was. */
function turnStretches(order: Stop[], stepM: StepM): boolean {
  let isBetter = false;
  for (let i = 0; i < order.length; i++) {
    for (let j = i; j < order.length; j++) {
      const [before, after] = [leave(order[i - 1]), enter(order[j + 1])];
      const [first, last] = [enter(order[i]), leave(order[j])];
      const nowM = stepM(before, first) + stepM(last, after);
      if (stepM(before, last) + stepM(first, after) >= nowM - GAIN_M) continue;
      order.splice(
        i,
        j - i + 1,
        ...order
          .slice(i, j + 1)
          .toReversed()
          .map((stop) => stop.toReversed()),
      );
      isBetter = true;
    }
  }
  return isBetter;
}

/** Moves single stops to where they fit better, either way round; true when any was. */
function moveStops(order: Stop[], stepM: StepM): boolean {
  let isBetter = false;
  for (let i = 0; i < order.length; i++) {
    const stop = order[i] as Stop;
    const rest = order.toSpliced(i, 1);
    const addedM = (at: number, way: Stop): number => {
      const [before, after] = [leave(rest[at - 1]), enter(rest[at])];
      return stepM(before, enter(way)) + stepM(leave(way), after) - stepM(before, after);
    };
    let bestM = addedM(i, stop) - GAIN_M;
    let best: { at: number; way: Stop } | undefined;
    for (let at = 0; at <= rest.length; at++) {
      for (const way of [stop, stop.toReversed()]) {
        if (addedM(at, way) >= bestM) continue;
        bestM = addedM(at, way);
        best = { at, way };
      }
    }
    if (best === undefined) continue;
    order.splice(0, order.length, ...rest.toSpliced(best.at, 0, best.way));
    isBetter = true;
  }
  return isBetter;
}

function enter(stop: Stop | undefined): number | null {
  return stop?.[0] ?? null;
}

function leave(stop: Stop | undefined): number | null {
  return stop?.at(-1) ?? null;
}
