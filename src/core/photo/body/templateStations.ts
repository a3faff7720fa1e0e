import { cos, sin } from '../../base/index.ts';
import {
  emptyTemplate,
  type LaidTemplate,
  layTemplate,
  SHAPE_NUMBERS,
  TEMPLATE_LENGTH_MM,
  xAt,
  yAt,
} from './bodyTemplate.ts';

/** The stretches of half an outline, from the lower end upwards. */
export type OutlineSection = 'lowerBout' | 'lowerCorner' | 'cBout' | 'upperCorner' | 'upperBout';

/** A section in a maker's words. */
export const SECTION_WORDS = {
  lowerBout: 'lower bout',
  lowerCorner: 'lower corner',
  cBout: 'C bout',
  upperCorner: 'upper corner',
  upperBout: 'upper bout',
} as const;

/** Whether a section is a corner end: short, easily lost, of no use for an axis. */
export function isCornerEnd(section: OutlineSection): boolean {
  return section === 'lowerCorner' || section === 'upperCorner';
}

/**
 * Where the half template is looked at, in order from the lower end to the upper end: the piece, the
 * fraction of the way along it, and its section. A station keeps its piece and fraction while the shape changes.
 */
export interface TemplateStations {
  readonly count: number;
  readonly piece: Int16Array;
  readonly fraction: Float64Array;
  readonly section: readonly OutlineSection[];
  /** mm along the mean outline from the lower end. */
  readonly alongMm: Float64Array;
}

/** Numbers a station: x, y (mm) and outward normal x, y of the half with x ≥ 0. */
export const STATION_STRIDE = 4;

const ORDER = [0, 1, 2, 3, 4, 13, 5, 6, 7, 14, 12, 11, 10, 9, 8];
const SECTION_OF_PIECE: readonly OutlineSection[] = [
  ...Array<OutlineSection>(5).fill('lowerBout'),
  ...Array<OutlineSection>(3).fill('cBout'),
  ...Array<OutlineSection>(5).fill('upperBout'),
  'lowerCorner',
  'upperCorner',
];

/** Stations every `stepMm`, and every `tipStepMm` within `tipReachMm` of the four corner tips of the half. */
export function stationsOfTemplate(stepMm: number, tipStepMm = stepMm, tipReachMm = 0): TemplateStations {
  const laid = emptyTemplate();
  layTemplate(new Float64Array(SHAPE_NUMBERS), laid);
  const piece: number[] = [];
  const fraction: number[] = [];
  const along: number[] = [];
  let start = 0;
  for (const index of ORDER) {
    const length = pieceLength(laid, index);
    const fromTip = index === 4 || index === 7 || index === 12 || index === 5 || index >= 13;
    const step = fromTip && length <= 3 * tipReachMm ? tipStepMm : stepMm;
    const count = Math.max(1, Math.round(length / step));
    for (let i = 0; i < count; i++) {
      const share = (i + 0.5) / count;
      piece.push(index);
      fraction.push(index >= 8 && index <= 12 ? 1 - share : share);
      along.push(start + share * length);
    }
    start += length;
  }
  return {
    count: piece.length,
    piece: Int16Array.from(piece),
    fraction: Float64Array.from(fraction),
    section: piece.map((index) => SECTION_OF_PIECE[index] as OutlineSection),
    alongMm: Float64Array.from(along),
  };
}

function pieceLength(laid: LaidTemplate, index: number): number {
  const at = index * 5;
  const signed = laid.pieces[at + 2] as number;
  const out = laid.pieces[at + 4] as number;
  return index >= 13 ? out : Math.abs(signed * (out - (laid.pieces[at + 3] as number)));
}

/** Writes x, y, normal x, normal y of every station into `into` (length 4 · count), mm, half with x ≥ 0. */
export function placeStations(laid: LaidTemplate, stations: TemplateStations, into: Float64Array): void {
  const { pieces } = laid;
  for (let i = 0; i < stations.count; i++) {
    const index = stations.piece[i] as number;
    const at = index * 5;
    const share = stations.fraction[i] as number;
    const heading0 = pieces[at + 3] as number;
    const heading1 = pieces[at + 4] as number;
    const to = i * STATION_STRIDE;
    if (index >= 13) {
      into[to] = (pieces[at] as number) + heading1 * share * cos(heading0);
      into[to + 1] = (pieces[at + 1] as number) + heading1 * share * sin(heading0);
      into[to + 2] = sin(heading0);
      into[to + 3] = -cos(heading0);
      continue;
    }
    const heading = heading0 + (heading1 - heading0) * share;
    const fromTop = index >= 8;
    into[to] = xAt(pieces, at, heading);
    const y = yAt(pieces, at, heading);
    into[to + 1] = fromTop ? TEMPLATE_LENGTH_MM - y : y;
    into[to + 2] = sin(heading);
    into[to + 3] = fromTop ? cos(heading) : -cos(heading);
  }
}

/** Signed curvature (1/mm) of the outline at a station: positive where the outline is full, 0 on a corner end. */
export function curvatureAtStation(laid: LaidTemplate, stations: TemplateStations, index: number): number {
  const piece = stations.piece[index] as number;
  return piece >= 13 ? 0 : 1 / (laid.pieces[piece * 5 + 2] as number);
}
