/** One numbered step from an older yard file to a newer one. */
export interface Migration {
  /** The version the file has once this step is done. */
  readonly version: number;
  /** Statements separated by semicolons, for one transaction. */
  readonly sql: string;
}
