import { createRequire } from 'node:module';
import { Polyline } from 'cavalier-contours-js';
import clipperLib from 'clipper-lib';
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import type { MainModule } from 'clipper2-wasm/dist/clipper2z.js';
import { areaOf, type Chain, offsetChain, sampleChain } from '../../src/core/index.ts';

/** A way to offset one outline, and the area that it finds, mm², for the check that all do the same work. */
export interface OffsetPeer {
  readonly name: string;
  readonly offset: (distanceMm: number) => unknown;
  readonly areaMm2: (distanceMm: number) => number;
}

const UNITS_PER_MM = 1e4;

/** Exact arcs, ours first. */
export function arcPeers(chain: Chain<'body'>): readonly OffsetPeer[] {
  const ours = (distanceMm: number) => offsetChain(chain, distanceMm, { join: 'round' });
  const polyline = new Polyline({ isClosed: true });
  for (const { x, y, bulge } of chain.vertices) polyline.add(x, y, bulge);
  const cavalier = (distanceMm: number) => polyline.parallelOffset(-distanceMm);
  return [
    {
      name: 'ours, exact arcs',
      offset: ours,
      areaMm2: (distanceMm) => ours(distanceMm).reduce((sum, loop) => sum + areaOf(loop), 0),
    },
    {
      name: 'cavalier-contours-js 0.1.1, exact arcs',
      offset: cavalier,
      areaMm2: (distanceMm) => cavalier(distanceMm).reduce((sum, loop) => sum + loop.area(), 0),
    },
  ];
}

/** Polygon programs on points of the outline, equal steps along each arc, chords within the error. */
export async function polygonPeers(
  chain: Chain<'body'>,
  chordErrorMm: number,
): Promise<readonly OffsetPeer[]> {
  const points = sampleChain(chain, chordErrorMm);
  const within = `points within ${chordErrorMm} mm`;
  return [
    clipperOne(points, chordErrorMm, within),
    clipperTwo(points, chordErrorMm, within),
    await clipperTwoCompiled(points, chordErrorMm, within),
  ];
}

type Points = readonly { readonly x: number; readonly y: number }[];

function clipperOne(points: Points, errorMm: number, within: string): OffsetPeer {
  const path = points.map(({ x, y }) => ({
    X: Math.round(x * UNITS_PER_MM),
    Y: Math.round(y * UNITS_PER_MM),
  }));
  const offset = (distanceMm: number) => {
    const program = new clipperLib.ClipperOffset(2, errorMm * UNITS_PER_MM);
    program.AddPath(path, clipperLib.JoinType.jtRound, clipperLib.EndType.etClosedPolygon);
    const found = new clipperLib.Paths();
    program.Execute(found, distanceMm * UNITS_PER_MM);
    return found;
  };
  const areaMm2 = (distanceMm: number) =>
    offset(distanceMm).reduce((sum, each) => sum + clipperLib.Clipper.Area(each), 0) / UNITS_PER_MM ** 2;
  return { name: `clipper-lib 6.4.2, ${within}`, offset, areaMm2 };
}

function clipperTwo(points: Points, errorMm: number, within: string): OffsetPeer {
  const path = points.map(({ x, y }) => ({
    x: Math.round(x * UNITS_PER_MM),
    y: Math.round(y * UNITS_PER_MM),
  }));
  const offset = (distanceMm: number) =>
    Clipper.inflatePaths(
      [path],
      distanceMm * UNITS_PER_MM,
      JoinType.Round,
      EndType.Polygon,
      2,
      errorMm * UNITS_PER_MM,
    );
  const areaMm2 = (distanceMm: number) => Clipper.areaPaths(offset(distanceMm)) / UNITS_PER_MM ** 2;
  return { name: `clipper2-ts 2.0.1, ${within}`, offset, areaMm2 };
}

async function clipperTwoCompiled(points: Points, errorMm: number, within: string): Promise<OffsetPeer> {
  const load: () => Promise<MainModule> = createRequire(import.meta.url)('clipper2-wasm');
  const program = await load();
  const paths = new program.PathsD();
  paths.push_back(program.MakePathD(points.flatMap(({ x, y }) => [x, y])));
  const inflate = (distanceMm: number) =>
    program.InflatePathsD(paths, distanceMm, program.JoinType.Round, program.EndType.Polygon, 2, 4, errorMm);
  return {
    name: `clipper2-wasm 0.4.0, ${within}`,
    offset: (distanceMm) => inflate(distanceMm).delete(),
    areaMm2: (distanceMm) => program.AreaPathsD(inflate(distanceMm)),
  };
}
