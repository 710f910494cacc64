/** What the lightning clock is made of. `miles` null: nobody counted from flash to bang. */
export type LightningFacts = {
  readonly agoS: number;
  readonly leftS: number;
  readonly miles: number | null;
  readonly stopMiles: number;
  readonly withinStop: boolean;
  /** When the quiet time is over, on the site's clock. */
  readonly quietAt: string;
};
