import { accept, type Checked, type Finding } from '../../base/index.ts';
import { type Chain, chainThrough, lengthOf, segments } from '../../curve/index.ts';
import type { RibChoice } from '../../design/index.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import type { SectionLines } from '../outline/sectionLines.ts';
import type { PlanValues } from '../planValues.ts';
import { type CornerJoint, cornerJoint } from './cornerJoint.ts';
import { type DevelopedRib, developedRib } from './developedRib.ts';
import { type GarlandLines, garlandLines } from './garlandLines.ts';
import {
  bendFindings,
  blockShowsFindings,
  cornerFindings,
  drawnTogetherFindings,
  type RibBend,
  ribBend,
} from './ribFindings.ts';
import { type RibBounds, type RibPiece, ribPiece } from './ribPiece.ts';

/** One kind of rib. */
export interface RibLength {
  /** Along the outer face, from corner end to centre line; for the waist from corner end to corner end. */
  readonly lengthMm: number;
  /** One piece from corner to corner across the centre line; the waist has none. */
  readonly acrossMm?: number;
  /** What to cut: length laid flat and allowance at both ends. */
  readonly cutMm: number;
  readonly cutAcrossMm?: number;
  readonly bend: RibBend;
  /** The same rib laid flat. */
  readonly developed: DevelopedRib;
  /** The same rib in the garland, its ends trimmed. */
  readonly piece: RibPiece;
}

/** The garland in plan. Body frame, mm. */
export interface RibLines {
  /** Outer face of the ribs. */
  readonly outer: SectionLines;
  /** Inner face of the ribs: the inner outline, which form and blocks are shaped to. */
  readonly inner: SectionLines;
  readonly besideCornerMm: GarlandLines['besideCornerMm'];
  readonly lowerBout: RibLength;
  readonly cBout: RibLength;
  readonly upperBout: RibLength;
  /** Once round the outer face, corner ends not counted. */
  readonly garlandMm: number;
  /** Finished heights at both ends of the body; even between. */
  readonly heightTailMm: number;
  readonly heightNeckMm: number;
  /** Width of the strips before they are planed to height. */
  readonly stripWidthMm: number;
  readonly thicknessMm: number;
  /** How the ribs meet at the treble corners; the bass ones are their mirror images. */
  readonly joints: { readonly lower: CornerJoint; readonly upper: CornerJoint };
  readonly choice: Required<Pick<RibChoice, 'joint' | 'corners' | 'lowerRib' | 'upperRib'>>;
  /** How many ribs: six, and one less for the lower and for the upper one in one piece. */
  readonly count: 4 | 5 | 6;
  /** Height at each place along the body. */
  readonly heightAtMm: (yMm: number) => number;
  readonly findings: readonly Finding[];
}

/** mm at each end of a rib, to be trimmed on the block; common practice, 10 to 20 together. */
const ALLOWANCE_AT_END_MM = 10;

/** mm that strips are cut wider than the ribs are high at the end; common practice, 2 to 3. */
const STRIP_ALLOWANCE_MM = 3;

/** How the corners are made where nothing else is chosen. */
const USUAL_CORNERS = 'drawn-together';

/** Both faces of the ribs alone, as {@link ribLines} has them. Faults: those of {@link garlandLines}. */
export function ribFaces(
  outline: BodyOutline,
  values: Parameters<typeof garlandLines>[1],
  { corners = USUAL_CORNERS }: RibChoice = {},
): Checked<GarlandLines> {
  return garlandLines(outline, values, corners);
}

/**
 * The rib lines and rib lengths.
 *
 * Along the bouts the outer face lies `overhang` inside the edge and the inner face one rib thickness further; at the
 * corners both stop `cornerOverhang` inside the plate's corner end, or in their own point where that lies deeper; how they come
 * there is told at {@link garlandLines}.
 * Faults: those of {@link garlandLines}. Findings: `ribs.corner-feather`, `ribs.corner-stubby`, `ribs.block-shows`,
 * `ribs.drawn-together`, `ribs.bend`.
 */
export function ribLines(
  outline: BodyOutline,
  values: Pick<
    PlanValues,
    'overhang' | 'cornerOverhang' | 'ribThickness' | 'ribHeightNeck' | 'ribHeightTail'
  >,
  {
    joint = 'bouts-over',
    corners = USUAL_CORNERS,
    lowerRib = 'two-pieces',
    upperRib = 'two-pieces',
  }: RibChoice = {},
): Checked<RibLines> {
  const lines = garlandLines(outline, values, corners);
  if (!lines.ok) return lines;
  const { outer, inner, besideCornerMm } = lines.value;
  const { lowerBout, cBout, upperBout } = outer.sections;
  const [lower, waist, upper] = [lengthOf(lowerBout), lengthOf(cBout), lengthOf(upperBout)];
  const [lowerBend, waistBend, upperBend] = [lowerBout, cBout, upperBout].map((face) =>
    ribBend(face, values.ribThickness),
  ) as [RibBend, RibBend, RibBend];
  const heightAt = heightAlong(lowerBout, upperBout, values);
  const [lowerFlat, waistFlat, upperFlat] = [lowerBout, cBout, upperBout].map((face) =>
    developedRib(face, values.ribThickness, heightAt),
  ) as [DevelopedRib, DevelopedRib, DevelopedRib];
  const joints = {
    lower: cornerJoint('lower', outer, inner, joint),
    upper: cornerJoint('upper', outer, inner, joint),
  };
  const pieces = trimmedRibs(outer, inner, joints, values.ribThickness);
  return accept({
    outer,
    inner,
    besideCornerMm,
    thicknessMm: values.ribThickness,
    joints,
    choice: { joint, corners, lowerRib, upperRib },
    count: countOf(lowerRib === 'one-piece', upperRib === 'one-piece'),
    heightAtMm: heightAt,
    lowerBout: boutRib(lower, lowerBend, lowerFlat, pieces.lowerBout),
    cBout: {
      piece: pieces.cBout,
      lengthMm: waist,
      cutMm: waistFlat.lengthMm + 2 * ALLOWANCE_AT_END_MM,
      bend: waistBend,
      developed: waistFlat,
    },
    upperBout: boutRib(upper, upperBend, upperFlat, pieces.upperBout),
    garlandMm: 2 * (lower + waist + upper),
    heightTailMm: values.ribHeightTail,
    heightNeckMm: values.ribHeightNeck,
    stripWidthMm: Math.max(values.ribHeightNeck, values.ribHeightTail) + STRIP_ALLOWANCE_MM,
    findings: [
      ...cornerFindings('lower', outer.lowerCorner, outline.lowerCorner.endWidthMm, values.ribThickness),
      ...cornerFindings('upper', outer.upperCorner, outline.upperCorner.endWidthMm, values.ribThickness),
      ...blockShowsFindings(joints, values.ribThickness),
      ...drawnTogetherFindings(besideCornerMm, values.overhang),
      ...bendFindings([
        ['lower rib', lowerBend],
        ['waist rib', waistBend],
        ['upper rib', upperBend],
      ]),
    ],
  });
}

/** The three ribs of the treble side between their faces, with the ends that the joints give them. */
function trimmedRibs(
  outer: SectionLines,
  inner: SectionLines,
  { lower, upper }: RibLines['joints'],
  thicknessMm: number,
): Readonly<Record<'lowerBout' | 'cBout' | 'upperBout', RibPiece>> {
  const start = { segment: 0, fraction: 0 };
  const endOf = (line: Chain<'body'>) => ({ segment: segments(line).length - 1, fraction: 1 });
  const atCentre = (which: 'lowerBout' | 'upperBout', end: 0 | -1): Chain<'body'> =>
    chainThrough(
      [outer, inner].flatMap(({ sections }) => sections[which].vertices.at(end) ?? []),
      false,
    );
  const piece = (
    which: 'lowerBout' | 'cBout' | 'upperBout',
    fromEnd: Chain<'body'>,
    toEnd: Chain<'body'>,
    kept: RibBounds['kept'],
  ): RibPiece =>
    ribPiece(
      { outer: outer.sections[which], inner: inner.sections[which], fromEnd, toEnd, kept },
      thicknessMm,
    );
  return {
    lowerBout: piece('lowerBout', atCentre('lowerBout', 0), lower.arrivingEnd, [start, lower.arrivingTo]),
    cBout: piece('cBout', lower.leavingEnd, upper.arrivingEnd, [lower.leavingFrom, upper.arrivingTo]),
    upperBout: piece('upperBout', upper.leavingEnd, atCentre('upperBout', -1), [
      upper.leavingFrom,
      endOf(outer.sections.upperBout),
    ]),
  };
}

/** Height of the ribs at each y: even from their lowest place on the centre line to their highest. */
function heightAlong(
  lowerBout: Chain<'body'>,
  upperBout: Chain<'body'>,
  { ribHeightTail, ribHeightNeck }: Pick<PlanValues, 'ribHeightTail' | 'ribHeightNeck'>,
): (yMm: number) => number {
  const [fromMm, toMm] = [lowerBout.vertices[0]?.y ?? 0, upperBout.vertices.at(-1)?.y ?? 1];
  return (yMm) => ribHeightTail + ((ribHeightNeck - ribHeightTail) * (yMm - fromMm)) / (toMm - fromMm);
}

function countOf(lowerAcross: boolean, upperAcross: boolean): RibLines['count'] {
  if (lowerAcross && upperAcross) return 4;
  return lowerAcross || upperAcross ? 5 : 6;
}

function boutRib(lengthMm: number, bend: RibBend, developed: DevelopedRib, piece: RibPiece): RibLength {
  const acrossMm = 2 * lengthMm;
  return {
    lengthMm,
    acrossMm,
    cutMm: developed.lengthMm + 2 * ALLOWANCE_AT_END_MM,
    cutAcrossMm: 2 * developed.lengthMm + 2 * ALLOWANCE_AT_END_MM,
    bend,
    developed,
    piece,
  };
}
