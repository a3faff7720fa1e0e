import { accept, type Checked, type Fault, refuse, SETTLED } from '../../base/index.ts';
import { type BoardSizes, boardThickness, boardWidth } from './boardSection.ts';

/**
 * What the set of a neck follows from. Heights of arch, overstand and saddle count from the upper face of the top's
 * edge; stops run along the centre line from the upper end of the top.
 */
export interface NeckSetSizes {
  readonly neckStopMm: number;
  readonly bodyStopMm: number;
  /** Gluing face of the board over the edge, at the edge. */
  readonly overstandMm: number;
  /** The board's crown carried on to the bridge, over the top there. */
  readonly projectionMm: number;
  readonly archAtBridgeMm: number;
  readonly archAtBoardEndMm: number;
  readonly board: BoardSizes;
  /** The strings' crown over the middle of the board, at the nut and at the board's end. */
  readonly stringsAtNutMm: number;
  readonly stringsAtBoardEndMm: number;
  /** From the bridge to where the tailgut leaves the saddle, along the body. */
  readonly saddleFromBridgeMm: number;
  readonly saddleHeightMm: number;
}

/** A neck as it must be set, and what comes of it. Angles in radians. */
export interface NeckSet {
  /** Between the board's gluing face and the plane of the edge. */
  readonly neckAngleRad: number;
  /** The board's crown at its end, over the top there, and over the plane of the edge. */
  readonly boardEndOverTopMm: number;
  readonly boardEndOverEdgeMm: number;
  /** From the upper end of the top, along the body. */
  readonly boardEndFromTopEndMm: number;
  /** The strings' crown over the top at the stop: what a bridge measures in its middle. */
  readonly bridgeHeightMm: number;
  /** From nut to bridge along the strings. */
  readonly stringLengthMm: number;
  /** How far the strings slope down from the bridge before it and behind it. */
  readonly frontAngleRad: number;
  readonly rearAngleRad: number;
  /** Between both parts of the strings over the bridge. */
  readonly breakAngleRad: number;
  /** How far the bridge must lean toward the tail to halve the break angle. */
  readonly halvingLeanRad: number;
}

/** Rounds within which the board's thickness over the bridge settles: each leaves a thousandth of what was off. */
const MOST_ROUNDS = 20;

/**
 * The set of a neck in closed form: gluing face through the overstand, board's crown through the projection.
 *
 * Faults: `neck.size` (a size that is no length above 0), `neck.board-round` (a board wider than its round),
 * `neck.projection` (no angle of the neck reaches it), `neck.board-end` (the board runs into the top, or past the
 * bridge), `neck.strings` (the strings do not rise to the bridge).
 */
export function neckSet(sizes: NeckSetSizes): Checked<NeckSet> {
  const faults = sizeFaults(sizes);
  if (faults.length > 0) return refuse(...faults);
  const { neckStopMm, bodyStopMm, overstandMm, projectionMm, archAtBridgeMm, board } = sizes;
  const riseMm = projectionMm + archAtBridgeMm - overstandMm;
  let neckAngleRad = 0;
  let thicknessMm = Number.NaN;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const alongMm = (bodyStopMm + (thicknessMm || 0) * Math.sin(neckAngleRad)) / Math.cos(neckAngleRad);
    const nextMm = boardThickness(board, neckStopMm + alongMm);
    const settled = Math.abs(nextMm - thicknessMm) < SETTLED * bodyStopMm;
    thicknessMm = nextMm;
    neckAngleRad = Math.acos(nextMm / Math.hypot(riseMm, bodyStopMm)) - Math.atan2(bodyStopMm, riseMm);
    if (settled) return strung(sizes, neckAngleRad);
    if (!Number.isFinite(neckAngleRad)) break;
  }
  return refuse(unreached(projectionMm));
}

function strung(sizes: NeckSetSizes, neckAngleRad: number): Checked<NeckSet> {
  const { neckStopMm, bodyStopMm, overstandMm, archAtBridgeMm, board } = sizes;
  const [sin, cos] = [Math.sin(neckAngleRad), Math.cos(neckAngleRad)];
  /** A place `up` over the gluing face and `along` it from the nut, toward the tail from the top's end and over the edge. */
  const place = (along: number, up: number) => ({
    x: (along - neckStopMm) * cos - up * sin,
    z: overstandMm + (along - neckStopMm) * sin + up * cos,
  });
  const crownAtEndMm = boardThickness(board, board.lengthMm);
  const boardEnd = place(board.lengthMm, crownAtEndMm);
  const nut = place(0, boardThickness(board, 0) + sizes.stringsAtNutMm);
  const overEnd = place(board.lengthMm, crownAtEndMm + sizes.stringsAtBoardEndMm);
  const slope = (overEnd.z - nut.z) / (overEnd.x - nut.x);
  const bridgeTopMm = nut.z + slope * (bodyStopMm - nut.x);
  const overTopMm = boardEnd.z - sizes.archAtBoardEndMm;
  if (!(overTopMm > 0 && boardEnd.x < bodyStopMm)) return refuse(boardAstray(overTopMm, boardEnd.x));
  if (!(bridgeTopMm > sizes.saddleHeightMm && slope > 0)) return refuse(stringsAstray(slope));
  const frontAngleRad = Math.atan(slope);
  const rearAngleRad = Math.atan((bridgeTopMm - sizes.saddleHeightMm) / sizes.saddleFromBridgeMm);
  return accept({
    neckAngleRad,
    boardEndOverTopMm: overTopMm,
    boardEndOverEdgeMm: boardEnd.z,
    boardEndFromTopEndMm: boardEnd.x,
    bridgeHeightMm: bridgeTopMm - archAtBridgeMm,
    stringLengthMm: Math.hypot(bodyStopMm - nut.x, bridgeTopMm - nut.z),
    frontAngleRad,
    rearAngleRad,
    breakAngleRad: Math.PI - frontAngleRad - rearAngleRad,
    halvingLeanRad: (rearAngleRad - frontAngleRad) / 2,
  });
}

function sizeFaults(sizes: NeckSetSizes): readonly Fault[] {
  const { board, ...rest } = sizes;
  const faults: Fault[] = [];
  for (const [name, value] of [...Object.entries(rest), ...Object.entries(board)])
    if (!(value > 0 && Number.isFinite(value)))
      faults.push({
        code: 'neck.size',
        at: name.replace(/Mm$/, ''),
        found: `${value} mm`,
        need: 'a length above 0 mm',
        remedy: 'measure it again',
      });
  const widestMm = boardWidth(board, sizes.neckStopMm + sizes.bodyStopMm);
  if (faults.length === 0 && !(widestMm < 2 * board.radiusMm))
    faults.push({
      code: 'neck.board-round',
      at: 'radius',
      found: `a round of ${board.radiusMm} mm under a board that would be ${widestMm.toFixed(1)} mm wide at the bridge`,
      need: `a radius above ${(widestMm / 2).toFixed(1)} mm`,
      remedy: 'measure the round of the board again; it is a radius, not a diameter',
    });
  return faults;
}

function unreached(projectionMm: number): Fault {
  return {
    code: 'neck.projection',
    at: 'projection',
    found: `${projectionMm} mm`,
    need: 'a height that a straight board over this stop can reach',
    remedy: 'check projection, overstand and body stop',
  };
}

function boardAstray(overTopMm: number, endMm: number): Fault {
  return {
    code: 'neck.board-end',
    at: 'board',
    found: `a board whose end lies ${overTopMm.toFixed(1)} mm over the top, ${endMm.toFixed(0)} mm from its upper end`,
    need: 'an end above the top and before the bridge',
    remedy: 'check the length of the board, the projection and the arch under the end of the board',
  };
}

function stringsAstray(slope: number): Fault {
  return {
    code: 'neck.strings',
    at: 'projection',
    found: slope > 0 ? 'strings that do not come down to the saddle' : 'strings that fall toward the bridge',
    need: 'strings that rise from the nut to the bridge and fall from there to the saddle',
    remedy: 'check the projection, the heights of the strings and the height of the saddle',
  };
}
