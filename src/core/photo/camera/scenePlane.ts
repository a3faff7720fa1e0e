/** The plane that is measured: how high the edge of the plate stands over the paper. */
export interface ScenePlane {
  readonly heightMm: number;
  /** Half interval (k = 2). */
  readonly plusMinusMm: number;
  /** How the height goes with the unknowns of the camera, where the same photographs gave both. */
  readonly withCamera?: readonly number[];
}
