import { describe, expect, test } from 'vitest';
import { makeProjector } from '../../../core/crs/index.ts';
import { lonLatToYard } from '../../../core/earth/index.ts';
import type { LonLat, YardPoint } from '../../../core/spaces.ts';
import { pictureToQuad, projected, type Quad, type Xy } from '../../../renderer/drawing/index.ts';
import { Lens } from '../../../renderer/map/lens.ts';
import { pictureMatrix } from '../../../renderer/map/pictureMatrix.ts';
import { YardOnMap } from '../../../renderer/map/yardOnMap.ts';
import { expectNear } from '../../support/expectNear.ts';

/** What a browser does with matrix3d: multiply (x, y, 0, 1) by the columns, divide by w (CSS Transforms 2, 13). */
function byBrowser(css: string, { x, y }: Xy): Xy {
  const m = css.slice('matrix3d('.length, -1).split(',').map(Number);
  const row = (i: number): number => (m[i] ?? 0) * x + (m[4 + i] ?? 0) * y + (m[12 + i] ?? 0);
  return { x: row(0) / row(3), y: row(1) / row(3) };
}

const SIDE_PX = 2000;

/** Furthest that any pixel of a picture lies from where it belongs, in screen pixels. */
function worstPx(lens: Lens, place: (across: number, down: number) => YardPoint): number {
  const quad = [place(0, 0), place(1, 0), place(1, 1), place(0, 1)].map((at) =>
    lens.toLayer(at),
  ) as unknown as Quad;
  const css = pictureMatrix(SIDE_PX, SIDE_PX, quad);
  let worst = 0;
  for (let i = 0; i <= 20; i += 1) {
    for (let j = 0; j <= 20; j += 1) {
      const shown = byBrowser(css, { x: (SIDE_PX * i) / 20, y: (SIDE_PX * j) / 20 });
      const belongs = lens.toLayer(place(i / 20, j / 20));
      worst = Math.max(worst, Math.hypot(shown.x - belongs.x, shown.y - belongs.y));
    }
  }
  return worst;
}

/** The lens at the zoom where one pixel is about so much ground. */
function lensAt(origin: LonLat, metresPerPx: number): Lens {
  const map = new YardOnMap({ kind: 'placed', origin });
  const zoom = Math.log2(map.metresPerPx(0) / metresPerPx);
  const { x, y } = map.toWorld({ xM: 0, yM: 0 });
  return new Lens(map, zoom, { x: Math.round(x * 2 ** zoom), y: Math.round(y * 2 ** zoom) });
}

describe('a picture laid down by its four corners', () => {
  test('the CSS matrix does what the projective map says', () => {
    const quad: Quad = [
      { x: 10, y: 20 },
      { x: 110, y: 0 },
      { x: 140, y: 90 },
      { x: 0, y: 70 },
    ];
    const css = pictureMatrix(800, 600, quad);
    const at = byBrowser(css, { x: 123, y: 456 });
    const expected = projected(pictureToQuad(800, 600, quad), { x: 123, y: 456 });
    expectNear(at.x, expected.x, 1e-9, 'px');
    expectNear(at.y, expected.y, 1e-9, 'px');
  });

  // The law: every pixel of a picture that is scaled in the yard's own frame lies where its ground is drawn.
  test.each([0, 35, 60, 70])(
    'a scaled picture of a 200 m yard is true to a twentieth of a pixel at latitude %d',
    (latDeg) => {
      const lens = lensAt({ lonDeg: 10, latDeg }, 0.1);
      const worst = worstPx(lens, (across, down) => ({ xM: 200 * (across - 0.5), yM: 200 * (0.5 - down) }));
      expect(worst).toBeLessThan(0.05);
      expect(worst).toBeGreaterThan(0);
    },
  );

  // The law again, the picture's inside now being straight in UTM, not in the yard's frame.
  test.each([33, 47, 60])(
    'an image in UTM over 200 m is true to a twentieth of a pixel at latitude %d',
    (latDeg) => {
      const utm = makeProjector('EPSG:32632', 'test.tif');
      if (!utm.ok) throw new Error('no UTM');
      const origin = { lonDeg: 11.5, latDeg };
      const [east, north] = utm.value.fromLonLat(origin);
      const worst = worstPx(lensAt(origin, 0.1), (across, down) =>
        lonLatToYard(origin, utm.value.toLonLat(east + 200 * (across - 0.5), north + 200 * (0.5 - down))),
      );
      expect(worst).toBeLessThan(0.05);
    },
  );
});
