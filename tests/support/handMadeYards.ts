import type { YardPoint } from '../../core/spaces.ts';
import type { HandMadeGround } from './handMadePlan.ts';

type Corners = readonly (readonly [number, number])[];

function box(x: number, y: number, width: number, height: number): Corners {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function round(x: number, y: number, radius: number): Corners {
  return Array.from({ length: 24 }, (_, i): readonly [number, number] => [
    x + radius * Math.cos((i * Math.PI) / 12),
    y + radius * Math.sin((i * Math.PI) / 12),
  ]);
}

function mark(kind: 'spigot' | 'landmark', name: string, xM: number, yM: number) {
  const at: YardPoint = { xM, yM };
  return { id: `${kind}-${name}`, kind, name, at };
}

/** One square of 10 m: the smallest sheet there is. */
export const SMALL_SQUARE: HandMadeGround = {
  name: 'Pocket green',
  units: 'metric',
  zones: [{ name: 'Green', ring: box(0, 0, 10, 10), cutsAtXM: [] }],
};

/** A strip forty times as long as it is wide. */
export const LONG_STRIP: HandMadeGround = {
  name: 'Towpath verge',
  units: 'metric',
  placed: false,
  applicatorKind: 'tank',
  zones: [{ name: 'Verge', ring: box(0, 0, 120, 3), cutsAtXM: [40, 80] }],
  things: [
    { kind: 'water', name: 'Canal', ring: box(-2, 4.5, 124, 5) },
    { kind: 'tree', name: 'Alder', ring: round(20, -2, 1.6) },
  ],
  marks: [mark('landmark', 'milepost', 0, -0.4), mark('landmark', 'lock gate', 120, -0.4)],
};

/** An L of nine sections with beds, a pond and a tree in it. */
export const NINE_SECTIONS: HandMadeGround = {
  name: '12 Orchard Rise',
  units: 'us',
  zones: [
    {
      name: 'Back lawn',
      ring: [
        [0, 0],
        [54, 0],
        [54, 14],
        [24, 14],
        [24, 36],
        [0, 36],
      ],
      cutsAtXM: [4, 8, 12, 16, 20, 30, 38, 46],
      leftOutM2: 6,
    },
  ],
  things: [
    { kind: 'bed', name: 'roses', ring: box(9, 26, 2, 5) },
    { kind: 'water', name: 'pond', ring: round(34, 7, 2.6) },
    { kind: 'tree', name: 'oak', ring: round(50, 8, 1.8) },
    { kind: 'building', name: 'house', ring: box(26, 16, 16, 11) },
    { kind: 'hardscape', name: 'terrace', ring: box(42, 16, 8, 11) },
    { kind: 'check-plot', name: 'check plot', ring: box(13, 4, 2, 2) },
    { kind: 'keep-off', name: 'pond edge', ring: round(34, 7, 3.4) },
  ],
  marks: [mark('spigot', 'back spigot', 26, 20), mark('landmark', 'corner post', 0, 36)],
};

/** Three zones round a house, as in the field book. */
export const THREE_ZONES: HandMadeGround = {
  name: '7 Larkfield Lane',
  units: 'us',
  zones: [
    { name: 'Back lawn', ring: box(0, 20, 40, 10), cutsAtXM: [13.2, 26.4] },
    { name: 'West side', ring: box(0, 0, 12, 20), cutsAtXM: [] },
    { name: 'Front lawn', ring: box(12, 0, 14, 8), cutsAtXM: [] },
  ],
  things: [
    { kind: 'building', name: 'house', ring: box(12, 12, 20, 8) },
    { kind: 'hardscape', name: 'drive', ring: box(26.5, 0, 5, 11.5) },
    { kind: 'hardscape', name: 'patio', ring: box(15, 20.5, 6, 3.4) },
    { kind: 'bed', name: 'border', ring: box(32, 12, 1.2, 8) },
    { kind: 'bed', name: 'north bed', ring: box(34, 26, 5.5, 3.5) },
    { kind: 'tree', name: 'maple', ring: round(6, 5, 1.7) },
    { kind: 'check-plot', name: 'check plot', ring: box(3, 14, 2.2, 2.2) },
  ],
  marks: [mark('spigot', 'front spigot', 18.5, 12), mark('landmark', 'north-west post', 0, 30)],
};

/** Names longer than any box they go in, some beyond the Latin alphabet. */
export const LONG_NAMES: HandMadeGround = {
  name: 'The walled garden and lower paddock behind the old rectory at Little Hampstead-under-Wychwood',
  units: 'metric',
  jobName: 'Second application of the slow-release autumn feed after the verti-cutting of the whole ground',
  zones: [
    {
      name: 'Lower paddock between the old wall and the lime avenue, northern half',
      ring: box(0, 0, 30, 18),
      cutsAtXM: [15],
    },
    { name: 'Łąka przy źródle Świętej Doroty & Žofín', ring: box(32, 0, 6, 18), cutsAtXM: [] },
  ],
  things: [
    {
      kind: 'bed',
      name: 'Grandmother Wilhelmina’s collection of old-fashioned damask roses',
      ring: box(4, 8, 3, 3),
    },
    { kind: 'building', name: 'Glasshouse of the Worshipful Company', ring: box(38.4, 2, 3, 9) },
    { kind: 'tree', name: 'Дуб у ворот', ring: round(22, 9, 1.5) },
  ],
  marks: [
    mark('landmark', 'the third gatepost counted from the churchyard', 30, 18),
    mark('spigot', 'standpipe', 31, 6),
  ],
};

/** Thirty narrow sections: more than get a page each. */
export const MANY_SECTIONS: HandMadeGround = {
  name: 'Long Acre common',
  units: 'metric',
  applicatorKind: 'tank',
  zones: [
    { name: 'Common', ring: box(0, 0, 150, 20), cutsAtXM: Array.from({ length: 29 }, (_, i) => 5 * (i + 1)) },
  ],
  things: [{ kind: 'building', name: 'pavilion', ring: box(60, 22, 14, 8) }],
};

export const HAND_MADE_YARDS = {
  SMALL_SQUARE,
  LONG_STRIP,
  NINE_SECTIONS,
  THREE_ZONES,
  LONG_NAMES,
  MANY_SECTIONS,
} as const;
