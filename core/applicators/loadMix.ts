/**
 * What goes into the applicator for one section. All in litres.
 * hose-end: `productL` is poured in the bottle undiluted, `carrierL` comes through the hose, `dialRatio` is
 * litres of product per litre of water. tank: `carrierL` + `productL` fill the tank, `dialRatio` is null.
 */
export interface LoadMix {
  readonly sectionId: string;
  /** The ground it is mixed for: the map's area, or the sloping surface. */
  readonly areaM2: number;
  readonly productL: number;
  readonly carrierL: number;
  readonly dialRatio: number | null;
}
