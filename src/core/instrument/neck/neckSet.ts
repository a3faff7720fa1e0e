import {
  accept,
  acos,
  atan,
  atan2,
  type Checked,
  cos,
  type Fault,
  hypot,
  refuse,
  SETTLED,
  sin,
} from '../../base/index.ts';
import { type BoardSizes, boardThickness, boardWidth } from './boardSection.ts';

/**
 * What the set of a neck follows from. Heights of arch and overstand count from the upper face of the top's
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
  /** The same over the plane of the edge. */
  readonly bridgeOverEdgeMm: number;
  /** From nut to bridge along the strings. */
  readonly stringLengthMm: number;
  /** How far the strings slope down from the bridge toward the nut. */
  readonly frontAngleRad: number;
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
    const alongMm = (bodyStopMm + (thicknessMm || 0) * sin(neckAngleRad)) / cos(neckAngleRad);
    const nextMm = boardThickness(board, neckStopMm + alongMm);
    const settled = Math.abs(nextMm - thicknessMm) < SETTLED * bodyStopMm;
    thicknessMm = nextMm;
    neckAngleRad = acos(nextMm / hypot(riseMm, bodyStopMm)) - atan2(bodyStopMm, riseMm);
    if (settled) return strung(sizes, neckAngleRad);
    if (!Number.isFinite(neckAngleRad)) break;
  }
  return refuse(unreached(projectionMm));
}

/**
 * Where a place of the neck lies over the plane of the edge: from one `alongMm` from the nut along the gluing face and
 * `upMm` over it, to x from the upper end of the top toward the tail and z over the edge.
 */
export function neckPlace(
  { neckStopMm, overstandMm }: Pick<NeckSetSizes, 'neckStopMm' | 'overstandMm'>,
  neckAngleRad: number,
  alongMm: number,
  upMm: number,
): { readonly xMm: number; readonly zMm: number } {
  const [sine, cosine] = [sin(neckAngleRad), cos(neckAngleRad)];
  return {
    xMm: (alongMm - neckStopMm) * cosine - upMm * sine,
    zMm: overstandMm + (alongMm - neckStopMm) * sine + upMm * cosine,
  };
}

/** The other way round: a place over the plane of the edge, from the nut along the gluing face and over it. */
export function alongNeck(
  { neckStopMm, overstandMm }: Pick<NeckSetSizes, 'neckStopMm' | 'overstandMm'>,
  neckAngleRad: number,
  xMm: number,
  zMm: number,
): { readonly alongMm: number; readonly upMm: number } {
  const [sine, cosine] = [sin(neckAngleRad), cos(neckAngleRad)];
  return {
    alongMm: neckStopMm + xMm * cosine + (zMm - overstandMm) * sine,
    upMm: -xMm * sine + (zMm - overstandMm) * cosine,
  };
}

function strung(sizes: NeckSetSizes, neckAngleRad: number): Checked<NeckSet> {
  const { bodyStopMm, archAtBridgeMm, board } = sizes;
  const place = (alongMm: number, upMm: number) => neckPlace(sizes, neckAngleRad, alongMm, upMm);
  const crownAtEndMm = boardThickness(board, board.lengthMm);
  const boardEnd = place(board.lengthMm, crownAtEndMm);
  const nut = place(0, boardThickness(board, 0) + sizes.stringsAtNutMm);
  const overEnd = place(board.lengthMm, crownAtEndMm + sizes.stringsAtBoardEndMm);
  const slope = (overEnd.zMm - nut.zMm) / (overEnd.xMm - nut.xMm);
  const bridgeOverEdgeMm = nut.zMm + slope * (bodyStopMm - nut.xMm);
  const overTopMm = boardEnd.zMm - sizes.archAtBoardEndMm;
  if (!(overTopMm > 0 && boardEnd.xMm < bodyStopMm)) return refuse(boardAstray(overTopMm, boardEnd.xMm));
  if (!(slope > 0 && bridgeOverEdgeMm > archAtBridgeMm)) return refuse(stringsAstray());
  return accept({
    neckAngleRad,
    boardEndOverTopMm: overTopMm,
    boardEndOverEdgeMm: boardEnd.zMm,
    boardEndFromTopEndMm: boardEnd.xMm,
    bridgeHeightMm: bridgeOverEdgeMm - archAtBridgeMm,
    bridgeOverEdgeMm,
    stringLengthMm: hypot(bodyStopMm - nut.xMm, bridgeOverEdgeMm - nut.zMm),
    frontAngleRad: atan(slope),
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
      at: 'boardRadius',
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
    at: 'boardLength',
    found: `a board whose end lies ${overTopMm.toFixed(1)} mm over the top, ${endMm.toFixed(0)} mm from its upper end`,
    need: 'an end above the top and before the bridge',
    remedy: 'check the length of the board, the projection and the arch under the end of the board',
  };
}

function stringsAstray(): Fault {
  return {
    code: 'neck.strings',
    at: 'projection',
    found: 'strings that do not rise from the nut to the bridge',
    need: 'strings that rise over the fingerboard and pass over the top at the bridge',
    remedy: 'check the projection, the overstand and the heights of the strings',
  };
}
