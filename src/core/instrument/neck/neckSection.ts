import { atan2, cos, sin } from '../../base/index.ts';
import { bulgeOfSweep, type Chain } from '../../curve/index.ts';

/** A cut across the neck: x across, y over the gluing face of the board. */
export interface NeckSection {
  readonly name: 'nut' | 'middle' | 'heel';
  /** From the nut along the gluing face. */
  readonly alongMm: number;
  readonly widthMm: number;
  /** Of the neck alone, and with the board, in the middle. */
  readonly woodMm: number;
  readonly withBoardMm: number;
  /** The rounded wood, from one edge of the gluing face to the other round the back; runs treble to bass. */
  readonly round: Chain<'section'>;
  readonly sideRadiusMm: number;
  readonly backRadiusMm: number;
}

/** No unit. Radius of the sides over the depth that is rounded. Chosen by us: it fills a hand. */
const SIDE_TO_DEPTH = 0.75;

/** No unit. Over the width: deeper wood than this is upright at the sides first, and rounded below. A little less than half round. */
const ROUNDED_TO_WIDTH = 0.48;

/** mm. Shorter upright sides are not drawn. */
const LEAST_UPRIGHT_MM = 0.2;

/**
 * The round of a neck as three tangent arcs: upright at the edges of the gluing face, level in the middle of the back. The
 * radius of the sides is chosen, that of the back follows.
 */
export function neckRound(
  widthMm: number,
  woodMm: number,
): Pick<NeckSection, 'round' | 'sideRadiusMm' | 'backRadiusMm'> {
  const overMm = woodMm - ROUNDED_TO_WIDTH * widthMm;
  const uprightMm = overMm > LEAST_UPRIGHT_MM ? overMm : 0;
  const depthMm = woodMm - uprightMm;
  const sideRadiusMm = SIDE_TO_DEPTH * depthMm;
  const inMm = widthMm / 2 - sideRadiusMm;
  const backRadiusMm = (depthMm ** 2 + inMm ** 2 - sideRadiusMm ** 2) / (2 * (depthMm - sideRadiusMm));
  // From the back's centre to the side's: both arcs meet on that line.
  const meetRad = atan2(backRadiusMm - depthMm, inMm);
  const meet = {
    x: inMm + sideRadiusMm * cos(meetRad),
    y: -uprightMm - sideRadiusMm * sin(meetRad),
  };
  const half = widthMm / 2;
  const corner = (x: number) => (uprightMm > 0 ? [{ x, y: 0, bulge: 0 }] : []);
  const round: Chain<'section'> = {
    closed: false,
    vertices: [
      ...corner(half),
      { x: half, y: -uprightMm, bulge: bulgeOfSweep(-meetRad) },
      { x: meet.x, y: meet.y, bulge: bulgeOfSweep(2 * meetRad - Math.PI) },
      { x: -meet.x, y: meet.y, bulge: bulgeOfSweep(-meetRad) },
      { x: -half, y: -uprightMm, bulge: 0 },
      ...corner(-half),
    ],
  };
  return { round, sideRadiusMm, backRadiusMm };
}
