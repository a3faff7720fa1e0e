/** The usual value of something and how far instruments stray from it (one standard deviation). */
export interface Usual {
  readonly value: number;
  readonly spread: number;
}

/** Five arcs of a bout, from its end to the hollow before the corner. */
export interface BoutArcs {
  readonly end: Usual;
  readonly shoulder: Usual;
  readonly flank: Usual;
  readonly upperFlank: Usual;
  readonly reverse: Usual;
}

/** The four sizes that every outline has. */
export interface BodySizes {
  readonly bodyLengthMm: number;
  readonly upperBoutMm: number;
  readonly waistMm: number;
  readonly lowerBoutMm: number;
}

/** What a size may be at all, and what passes without a remark. */
export interface Limits {
  readonly least: number;
  readonly usualLeast: number;
  readonly usualMost: number;
  readonly most: number;
}

/**
 * How the bodies of one family are usually shaped: where a draft starts from and what it departs from least.
 *
 * Radii are millimetres on a body of the sizes `radiiStandFor`, their spread is that of the logarithm.
 * Headings are degrees from the line to the right, anticlockwise, each where an arc ends; the upper bout's
 * are counted in the picture turned upside down, from the upper end. Stations are shares of the body length;
 * corner widths are shares of their bout's width, with a spread that is a share of the body length
 * (of the half width).
 */
export interface OutlineHabit {
  readonly family: string;
  readonly usualSizes: BodySizes;
  readonly radiiStandFor: BodySizes;
  readonly lowerRadiiMm: BoutArcs;
  readonly upperRadiiMm: BoutArcs;
  readonly cRadiiMm: { readonly lower: Usual; readonly middle: Usual; readonly upper: Usual };
  readonly lowerHeadingsDeg: BoutArcs;
  readonly upperHeadingsDeg: BoutArcs;
  /** Dip at the lower corner's tip below level; headings after the lower and middle arc; dip at the upper tip. */
  readonly cHeadingsDeg: {
    readonly lowerHook: Usual;
    readonly lower: Usual;
    readonly middle: Usual;
    readonly upperHook: Usual;
  };
  readonly lowerCornerEndDeg: Usual;
  readonly upperCornerEndDeg: Usual;
  /** Widths of the corner ends on a body of the usual length. */
  readonly lowerCornerEndMm: number;
  readonly upperCornerEndMm: number;
  readonly stations: {
    readonly lowerBout: Usual;
    readonly waist: Usual;
    readonly upperBout: Usual;
    readonly lowerCorner: Usual;
    readonly upperCorner: Usual;
  };
  readonly lowerCornersToBout: Usual;
  readonly upperCornersToBout: Usual;
  /** How far the logarithm of a ratio of neighbouring radii strays. */
  readonly ratioSpread: {
    readonly endToShoulder: number;
    readonly shoulderToFlank: number;
    readonly flankToUpperFlank: number;
    readonly cLowerToCUpper: number;
  };
  readonly bodyLengthLimitsMm: Pick<Limits, 'least' | 'most'>;
  /** The three widths as shares of the body length. */
  readonly shareLimits: {
    readonly upperBout: Limits;
    readonly waist: Limits;
    readonly lowerBout: Limits;
  };
  readonly source: string;
}
