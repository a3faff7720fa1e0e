import { type Chain, chainThrough, containsPoint, nearestOn } from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import type { DrawnLine } from './drawing.ts';
import { type Covers, drawnLine, LETTERED_FOR_MM } from './outlineDrawingsMarks.ts';

/**
 * At a body length of 355 mm, mm: half length, width, distances from the pins towards the ends in the order they are
 * tried (the last ones lie between the pins), room kept for the name on a station line, and screws.
 */
const BATTEN = {
  halfLengthMm: 38,
  widthMm: 16,
  beyondPinsMm: [26, 24, 28, 22, 30, 20, 32, 18, -14, -16, -18, -20],
  nameMm: 4.5,
  screwsAtMm: [18, 30],
  crossMm: 2,
  clearMm: 1,
} as const;

/**
 * Two battens that hold the halves of a form together: their edges for reference and the screws to be marked. Each lies
 * at the first of its places where it covers no clamp hole and no station line; without such a place it is left out.
 */
export function battenMarks(
  parts: PlanParts,
  edge: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
  covers: Covers,
): DrawnLine[] {
  const scale = parts.outline.bodyLengthMm / LETTERED_FOR_MM;
  const side = covers === 'bass half' ? -1 : 1;
  const [lowerPin, upperPin] = parts.form.pins;
  if (lowerPin === undefined || upperPin === undefined) return [];
  const isFree = (stationMm: number): boolean =>
    battenEdges(stationMm, scale, side).vertices.every(
      ({ x, y }) => x === 0 || containsPoint(edge, { x, y }),
    ) &&
    parts.stations.every((station) => !meetsStation(stationMm, station.stationMm, scale)) &&
    holes.every((hole) => isClear(hole, stationMm, scale, side));
  const ends = [
    { pin: lowerPin.centre.y, outwards: -1 },
    { pin: upperPin.centre.y, outwards: 1 },
  ];
  return ends.flatMap(({ pin, outwards }) => {
    const stationMm = BATTEN.beyondPinsMm.map((mm) => pin + outwards * mm * scale).find(isFree);
    if (stationMm === undefined) return [];
    return [
      drawnLine('draw', battenEdges(stationMm, scale, side)),
      ...BATTEN.screwsAtMm.flatMap((xMm) => cross(side * xMm * scale, stationMm, scale)),
    ];
  });
}

/** Whether a batten would lie over a station line or over the name above it. */
function meetsStation(battenMm: number, lineMm: number, scale: number): boolean {
  const half = (BATTEN.widthMm / 2) * scale;
  return lineMm > battenMm - half - BATTEN.nameMm * scale && lineMm < battenMm + half;
}

function battenEdges(stationMm: number, scale: number, side: number): Chain<'drawing'> {
  const reach = side * BATTEN.halfLengthMm * scale;
  const half = (BATTEN.widthMm / 2) * scale;
  return chainThrough(
    [
      { x: 0, y: stationMm - half },
      { x: reach, y: stationMm - half },
      { x: reach, y: stationMm + half },
      { x: 0, y: stationMm + half },
    ],
    false,
  );
}

/** Whether a hole, round and small, stays clear of the batten: its nearest point to every corner and side. */
function isClear(hole: Chain<'drawing'>, stationMm: number, scale: number, side: number): boolean {
  const reach = BATTEN.halfLengthMm * scale;
  const half = (BATTEN.widthMm / 2) * scale;
  const [right, left] = hole.vertices;
  if (right === undefined || left === undefined) return true;
  const centre = { x: (right.x + left.x) / 2, y: right.y };
  const within = {
    x: side * Math.min(Math.max(side * centre.x, 0), reach),
    y: Math.min(Math.max(centre.y, stationMm - half), stationMm + half),
  };
  const covered = within.x === centre.x && within.y === centre.y;
  return (
    !covered &&
    nearestOn(hole, within).side !== -1 &&
    nearestOn(hole, within).distanceMm >= BATTEN.clearMm * scale
  );
}

function cross(xMm: number, yMm: number, scale: number): DrawnLine[] {
  const arm = BATTEN.crossMm * scale;
  return [
    chainThrough<'drawing'>(
      [
        { x: xMm - arm, y: yMm },
        { x: xMm + arm, y: yMm },
      ],
      false,
    ),
    chainThrough<'drawing'>(
      [
        { x: xMm, y: yMm - arm },
        { x: xMm, y: yMm + arm },
      ],
      false,
    ),
  ].map((chain) => drawnLine('score', chain));
}
