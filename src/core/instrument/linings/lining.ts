import type { Finding } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { RibChoice } from '../../design/index.ts';
import type { DevelopedRib } from '../ribs/developedRib.ts';
import type { RibBend } from '../ribs/ribFindings.ts';
import type { EndCut } from '../ribs/ribPiece.ts';

/** The hole in a corner block that takes the end of a lining, at the back and at the top alike. Treble side, body frame. */
export interface LiningMortise {
  readonly block: 'lower' | 'upper';
  readonly side: 'waist' | 'bout';
  /** Closed, anticlockwise, along the inner face of the rib. */
  readonly plan: Chain<'body'>;
  /** The two sides that are cut, from the face of the block in. */
  readonly cut: Chain<'body'>;
  /** How far the lining is held at its full thickness. */
  readonly reachMm: number;
  /** Across, and from the edge of the ribs down into the block. */
  readonly widthMm: number;
  readonly depthMm: number;
}

/** One kind of lining: two on either side of the body, at the back and at the top. */
export interface Lining {
  readonly name: 'lower' | 'waist' | 'upper';
  /** In plan: closed, anticlockwise, between the blocks and into their mortises. Treble side, body frame. */
  readonly plan: Chain<'body'>;
  /** The face glued to the rib, running up the body. */
  readonly glueFace: Chain<'body'>;
  readonly developed: DevelopedRib;
  readonly bend: RibBend;
  /** Where its ends are cut, toward the lower end of the body and toward the neck. */
  readonly from: EndCut;
  readonly to: EndCut;
  /** From end to end laid flat, ends trimmed. */
  readonly lengthMm: number;
  readonly cutMm: number;
}

/** The linings and what is cut into the corner blocks for them. */
export interface LiningParts {
  readonly lower: Lining;
  readonly waist: Lining;
  readonly upper: Lining;
  readonly mortises: readonly LiningMortise[];
  readonly thicknessMm: number;
  /** As high as this on the rib. */
  readonly widthMm: number;
  /** Before they are planed level with the ribs. */
  readonly stripWidthMm: number;
  readonly choice: Required<Pick<RibChoice, 'linings' | 'liningsLetIn'>>;
  readonly findings: readonly Finding[];
}
