import { tracedRing } from '../curves/index.ts';
import { distanceM, distanceToEdgeM, ringBounds, windIn } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { HoseGround } from './hoseGround.ts';
import type { HoseBend } from './hosePlan.ts';
import type { HoseWay } from './hoseWays.ts';

/** A hose pulled round more than this drags hard against the corner. A rule of thumb of our own. */
const SNAGS_FROM_RAD = Math.PI / 4;
/** A bend lies off its corner by what the hose keeps off, and by this for rounding and arcs. */
const NEAR_CORNER_M = 0.005;

/** The bends of a way, by the outlines they go round; what turns at one corner in steps is one bend. */
export function nameBends(
  { line, bends }: Pick<HoseWay, 'line' | 'bends'>,
  { obstacles, clearanceM }: Pick<HoseGround, 'obstacles' | 'clearanceM'>,
): readonly HoseBend[] {
  const named: HoseBend[] = [];
  for (const at of bends) {
    const obstacle = nearestObstacle(obstacles, at);
    if (obstacle === undefined) continue;
    const bend = {
      at,
      outlineId: obstacle.id,
      name: nameOf(obstacle, at, clearanceM),
      turnRad: turnAt(line, at),
    };
    const last = named.at(-1);
    if (last?.name === bend.name && last.outlineId === bend.outlineId) {
      named[named.length - 1] = withSnag({ ...last, turnRad: last.turnRad + bend.turnRad });
    } else named.push(withSnag(bend));
  }
  return named;
}

function withSnag(bend: Omit<HoseBend, 'maySnag'>): HoseBend {
  return { ...bend, maySnag: bend.turnRad >= SNAGS_FROM_RAD };
}

type Obstacle = HoseGround['obstacles'][number];

function nearestObstacle(obstacles: readonly Obstacle[], at: YardPoint): Obstacle | undefined {
  let nearest: Obstacle | undefined;
  let leastM = Infinity;
  for (const obstacle of obstacles) {
    const ring = tracedRing(obstacle.outer);
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const awayM = distanceToEdgeM(ring[j] as YardPoint, ring[i] as YardPoint, at);
      if (awayM < leastM) [nearest, leastM] = [obstacle, awayM];
    }
  }
  return nearest;
}

function nameOf({ name, outer }: Obstacle, at: YardPoint, clearanceM: number): string {
  const wind = windIn(ringBounds(tracedRing(outer)), at).letters;
  const isCorner =
    outer.kind === 'corners' &&
    outer.corners.some((corner) => distanceM(corner, at) <= clearanceM + NEAR_CORNER_M);
  return `${wind} ${isCorner ? 'corner' : 'side'} of ${name}`;
}

/** How far a line turns at one of its places. */
function turnAt(line: readonly YardPoint[], at: YardPoint): number {
  const place = line.findIndex((each) => each.xM === at.xM && each.yM === at.yM);
  const [before, after] = [line[place - 1], line[place + 1]];
  if (before === undefined || after === undefined) return 0;
  const [ax, ay] = [at.xM - before.xM, at.yM - before.yM];
  const [bx, by] = [after.xM - at.xM, after.yM - at.yM];
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
}
