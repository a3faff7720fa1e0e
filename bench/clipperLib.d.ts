declare module 'clipper-lib' {
  interface IntegerPoint {
    X: number;
    Y: number;
  }
  class ClipperOffset {
    constructor(mitreLimit: number, arcTolerance: number);
    AddPath(path: readonly IntegerPoint[], join: number, end: number): void;
    Execute(found: IntegerPoint[][], distance: number): void;
  }
  const library: {
    ClipperOffset: typeof ClipperOffset;
    Clipper: { Area(path: readonly IntegerPoint[]): number };
    Paths: new () => IntegerPoint[][];
    JoinType: { jtRound: number };
    EndType: { etClosedPolygon: number };
  };
  export default library;
}
