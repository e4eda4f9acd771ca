import { describe, test } from 'vitest';
import { Lens } from '../../../renderer/map/lens.ts';
import { YardOnMap } from '../../../renderer/map/yardOnMap.ts';
import { expectNear } from '../../support/expectNear.ts';

const loose = new YardOnMap({ kind: 'loose' });
const placed = new YardOnMap({ kind: 'placed', origin: { lonDeg: -93.2, latDeg: 44.9 } });

describe('the yard on the web map', () => {
  test('longitude 0, latitude 0 is the middle of the world', () => {
    const at = loose.toWorld({ xM: 0, yM: 0 });
    expectNear(at.x, 128, 1e-9, 'px'); // half of the 256 px world
    expectNear(at.y, 128, 1e-9, 'px');
  });

  test('at the equator a pixel at zoom 0 is the circumference over 256', () => {
    expectNear(loose.metresPerPx(0), (2 * Math.PI * 6378137) / 256, 1e-2, 'm'); // WGS84 semi-major axis
  });

  test('there and back is where one began, loose and placed, to a micrometre', () => {
    for (const map of [loose, placed]) {
      for (const [xM, yM] of [
        [0, 0],
        [1500, -1500],
        [-0.37, 812.5],
      ] as const) {
        const back = map.fromWorld(map.toWorld({ xM, yM }));
        expectNear(back.xM, xM, 1e-6, 'm');
        expectNear(back.yM, yM, 1e-6, 'm');
      }
    }
  });

  test('a yard beyond the web map’s ends is drawn like a loose one, north up and true to scale', () => {
    for (const latDeg of [89.9, -89.9, 85]) {
      const polar = new YardOnMap({ kind: 'placed', origin: { lonDeg: 20, latDeg } });
      for (const at of [
        { xM: 0, yM: 0 },
        { xM: 400, yM: -250 },
      ]) {
        expectNear(polar.toWorld(at).x, loose.toWorld(at).x, 0, 'px'); // the loose yard's own place
        expectNear(polar.toWorld(at).y, loose.toWorld(at).y, 0, 'px');
      }
    }
    const northern = new YardOnMap({ kind: 'placed', origin: { lonDeg: 20, latDeg: 83.9 } });
    expectNear(northern.toWorld({ xM: 0, yM: 0 }).x, 256 * (20 / 360 + 0.5), 1e-9, 'px'); // 20° east of the middle
  });

  test('a yard across the antimeridian is drawn in one piece', () => {
    for (const lonDeg of [179.99999, -179.99999, 180]) {
      const map = new YardOnMap({ kind: 'placed', origin: { lonDeg, latDeg: -17 } });
      const west = map.toWorld({ xM: -100, yM: 0 });
      const east = map.toWorld({ xM: 100, yM: 0 });
      // 200 m on the parallel of 17° in a world of 256 px: 200 / 111,320 m a degree / cos 17° × 256 / 360
      expectNear(east.x - west.x, 0.001336, 2e-6, 'px');
      const back = map.fromWorld(east);
      expectNear(back.xM, 100, 1e-6, 'm'); // there and back
      expectNear(back.yM, 0, 1e-6, 'm');
    }
  });

  test('layer pixels keep a thousandth of a pixel at the closest zoom', () => {
    const { x, y } = placed.toWorld({ xM: 0, yM: 0 });
    const lens = new Lens(placed, 26, { x: Math.round(x * 2 ** 26), y: Math.round(y * 2 ** 26) });
    const a = lens.toLayer({ xM: 10, yM: 0 });
    const b = lens.toLayer({ xM: 10 + lens.metresPerPx, yM: 0 });
    expectNear(b.x - a.x, 1, 1e-3, 'px'); // one pixel of ground further east
  });
});
