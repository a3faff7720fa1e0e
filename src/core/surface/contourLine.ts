/**
 * A line of one height, x and y in turn, millimetres. It runs with the higher side on its left: round a hill
 * anticlockwise, round a hollow clockwise. A closed line does not repeat its first place; an open one ends where the
 * field has no more heights.
 */
export interface ContourLine {
  readonly levelMm: number;
  readonly closed: boolean;
  readonly xyMm: Float64Array;
}
