import { accept, type Checked } from '../../base/index.ts';
import { type HalfOutline, nearestOn } from '../../curve/index.ts';
import type { RibChoice } from '../../design/index.ts';
import { broughtTogether } from '../outline/bentCorner.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import { type SectionLines, sectionLines } from '../outline/sectionLines.ts';
import type { PlanValues } from '../planValues.ts';

/** Both faces of the garland in plan. Body frame, mm. */
export interface GarlandLines {
  readonly outer: SectionLines;
  readonly inner: SectionLines;
  /** How far the plate stands out beside the end of the rib corner, square to its sides; the mean of both. */
  readonly besideCornerMm: { readonly lower: number; readonly upper: number };
}

/** The end of ribs that are drawn together, in rib thicknesses: some 2 mm on a violin, from memory. */
const END_IN_THICKNESSES = 1.85;

/** Of one half: lower and upper. */
const CORNERS = 2;

/** Ribs leave their parallels so many widths of the plate's corner end before the corner: within the faces of the block; ours. */
const DRAWN_OVER_ENDS = 2;

/**
 * The faces of the ribs.
 *
 * Parallels of a corner of usual width would meet beyond its end: there the block would show between the ribs. A maker pares
 * the block to an edge and draws the ribs together over it, so that the plate's corner stands out more beside the rib
 * corner than along the bouts. Drawn so: the last stretch of each outer face is an arc, tangent to the parallel, that ends
 * where the end of both ribs is as wide as it looks well; the inner faces stay one rib thickness inside them and meet on the
 * tip of the block. Corners where the parallels meet are left as they are.
 * Faults: those of {@link sectionLines}.
 */
export function garlandLines(
  outline: BodyOutline,
  values: Pick<PlanValues, 'overhang' | 'cornerOverhang' | 'ribThickness'>,
  corners: NonNullable<RibChoice['corners']>,
): Checked<GarlandLines> {
  const { overhang, cornerOverhang, ribThickness } = values;
  const { half } = outline;
  const parallels = sectionLines(half, overhang, cornerOverhang);
  const parallelInner = sectionLines(half, overhang + ribThickness, cornerOverhang);
  if (!parallels.ok) return parallels;
  if (!parallelInner.ok) return parallelInner;
  const closed = (['lower', 'upper'] as const).filter(
    (which) => parallelInner.value[`${which}Corner`].kind === 'pointed',
  );
  if (corners === 'parallel' || closed.length === CORNERS)
    return accept(measured(half, parallels.value, parallelInner.value));
  const outer = broughtTogether(half, parallels.value, {
    depthMm: cornerOverhang,
    overMm: DRAWN_OVER_ENDS * Math.max(outline.lowerCorner.endWidthMm, outline.upperCorner.endWidthMm),
    apartMm: END_IN_THICKNESSES * ribThickness,
    except: closed,
  });
  const inner = sectionLines(outer.sections, ribThickness, cornerOverhang, half);
  if (!inner.ok) return inner;
  return accept(measured(half, outer, { ...inner.value, insetMm: overhang + ribThickness }));
}

function measured(half: HalfOutline, outer: SectionLines, inner: SectionLines): GarlandLines {
  const beside = (which: 'lower' | 'upper'): number => {
    const { from, to } = outer[`${which}Corner`];
    const [arriving, leaving] =
      which === 'lower' ? [half.lowerBout, half.cBout] : [half.cBout, half.upperBout];
    return (nearestOn(arriving, from).distanceMm + nearestOn(leaving, to).distanceMm) / 2;
  };
  return { outer, inner, besideCornerMm: { lower: beside('lower'), upper: beside('upper') } };
}
