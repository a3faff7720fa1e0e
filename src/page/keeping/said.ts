import type { Family } from '../../core/index.ts';

/** A mark that the maker put on a photograph: places in pixels of the upright picture. */
export interface HandMark {
  readonly kind: MarkKind;
  /** Which photograph it lies on, by name. */
  readonly on: string;
  readonly places: readonly (readonly [number, number])[];
}

/** On the body · beside it · the edge runs here · not to be believed (drawn round). */
export const MARK_KINDS = ['inside', 'outside', 'edge', 'excluded'] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

/** What gives the scale: the printed sheet, a scan or life-size print, or lengths that are known. */
export const SCALES = ['sheet', 'scan', 'known'] as const;
export type ScaleFrom = (typeof SCALES)[number];

/** What a maker rules about a stretch of wear, heights above the lower end in mm. */
export interface Ruling {
  readonly side: 'bass' | 'treble';
  readonly fromMm: number;
  readonly toMm: number;
  readonly section: string;
  readonly take: 'as-found' | 'other' | 'mean' | 'outer';
}

/** Everything that a maker says of the photographs in hand: lengths as typed, empty where nothing is known. */
export interface Said {
  readonly family: Family;
  readonly face: 'top' | 'back';
  readonly scaleFrom: ScaleFrom;
  readonly sheetBar: string;
  readonly edgeHeight: string;
  /** Pixels an inch; or the length between two places of a scale bar in the first photograph. */
  readonly resolution: string;
  readonly barLength: string;
  readonly barEnds: readonly (readonly [number, number])[];
  readonly bodyLength: string;
  readonly bodyLengthTaken: 'straight' | 'over-arch';
  readonly lowerBout: string;
  readonly lowerBoutTaken: 'edge' | 'purfling';
  /** Widths across the ends of the corners. */
  readonly lowerCorner: string;
  readonly upperCorner: string;
  /** Further lengths, each in the words of the command line. */
  readonly alsoKnown: readonly string[];
  /** Which of several bodies; null while there is one, or nobody chose. */
  readonly body: number | null;
  readonly marks: readonly HandMark[];
  readonly rulings: readonly Ruling[];
  readonly keepAsymmetry: boolean;
  readonly follow: 'average' | 'bass' | 'treble';
}

export const NOTHING_SAID: Said = {
  family: 'violin',
  face: 'top',
  scaleFrom: 'sheet',
  sheetBar: '',
  edgeHeight: '',
  resolution: '',
  barLength: '',
  barEnds: [],
  bodyLength: '',
  bodyLengthTaken: 'straight',
  lowerBout: '',
  lowerBoutTaken: 'edge',
  lowerCorner: '',
  upperCorner: '',
  alsoKnown: [],
  body: null,
  marks: [],
  rulings: [],
  keepAsymmetry: false,
  follow: 'average',
};

/** What was said, whole: a sitting may have been kept before there was so much to say. */
export function wholeSaid(kept: Partial<Said>): Said {
  return { ...NOTHING_SAID, ...kept };
}
