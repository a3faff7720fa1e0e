import { accept, type Checked, type Finding, type Point, refuse } from '../../base/index.ts';
import { type Chain, chainThrough, type HalfOutline } from '../../curve/index.ts';
import type { PlanValues } from '../planValues.ts';
import { broughtTogether, depthInCorner } from './bentCorner.ts';
import { type PurflingCorner, purflingCorner, type StingSizes, stingFaults } from './purflingSting.ts';
import { type CornerTip, type SectionLines, sectionLines } from './sectionLines.ts';

/** Both lines of the purfling groove; at every corner they run to a mitre. Body frame, mm. */
export interface PurflingLines {
  readonly outer: SectionLines;
  readonly inner: SectionLines;
  /** The middle of the groove. */
  readonly centre: SectionLines;
  /** The mitres of the treble corners and the points that run on from them. */
  readonly corners: { readonly lower: PurflingCorner; readonly upper: PurflingCorner };
  /** On the centre joint, in the middle of the groove: where strips meet, under the fingerboard and the saddle. */
  readonly joints: { readonly upper: Point<'body'>; readonly lower: Point<'body'> };
  readonly findings: readonly Finding[];
}

/** No purfling line comes nearer to a corner end than this share of its distance from the edge; from memory. */
const LEAST_DEPTH_SHARE = 0.25;

/** Lines that are bent to meet do so this deep, as a share of their distance from the edge; from memory. */
const BENT_DEPTH_SHARE = 0.4;

/** They leave their parallels this far before the corner, in distances from the edge: 9 to 10 mm on a violin; from memory. */
const BENT_OVER = 2.5;

/**
 * The purfling lines: parallels of each section, prolonged and trimmed to the mitre in each corner.
 *
 * Where the parallels of a wide corner would meet beyond its end, their last stretch is bent to meet inside it, as arcs
 * tangent to the parallels, and the finding `purfling.bent` says so; both lines and the middle stay parallel to each
 * other. Finding: `purfling.sting`, where a corner has no room for its point. Faults: those of {@link sectionLines} and {@link stingFaults}.
 */
export function purflingLines(
  half: HalfOutline,
  bodyLengthMm: number,
  values: Pick<PlanValues, 'purflingToEdge' | 'purflingWidth'>,
  sting: StingSizes,
): Checked<PurflingLines> {
  const { purflingToEdge: toEdgeMm, purflingWidth: widthMm } = values;
  const unfit = stingFaults(sting);
  if (unfit.length > 0) return refuse(...unfit);
  const parallels = sectionLines(half, toEdgeMm, LEAST_DEPTH_SHARE * toEdgeMm);
  if (!parallels.ok) return parallels;
  const outer = broughtTogether(half, parallels.value, {
    depthMm: BENT_DEPTH_SHARE * toEdgeMm,
    overMm: BENT_OVER * toEdgeMm,
  });
  const inner = within(half, outer, widthMm);
  const centre = within(half, outer, widthMm / 2);
  if (!inner.ok || !centre.ok)
    return refuse(...[inner, centre].flatMap((each) => (each.ok ? [] : each.faults)));
  const corner = cornerMaker(half, outer, values, sting);
  const corners = { lower: corner('lower'), upper: corner('upper') };
  const middleMm = toEdgeMm + widthMm / 2;
  return accept({
    outer,
    inner: inner.value,
    centre: centre.value,
    corners,
    joints: { upper: { x: 0, y: bodyLengthMm - middleMm }, lower: { x: 0, y: middleMm } },
    findings: [...bent(parallels.value, toEdgeMm), ...withoutRoom(corners, sting)],
  });
}

/** A line parallel to the outer one, farther in, with the depth of its mitres counted from the plate's corner ends. */
function within(half: HalfOutline, outer: SectionLines, furtherMm: number): Checked<SectionLines> {
  const lines = sectionLines(outer.sections, furtherMm, 0);
  if (!lines.ok) return lines;
  const deep = (tip: CornerTip, arriving: Chain<'body'>, leaving: Chain<'body'>): CornerTip => ({
    ...tip,
    depthMm: depthInCorner(arriving, leaving, tip.from),
  });
  return accept({
    ...lines.value,
    insetMm: outer.insetMm + furtherMm,
    lowerCorner: deep(lines.value.lowerCorner, half.lowerBout, half.cBout),
    upperCorner: deep(lines.value.upperCorner, half.cBout, half.upperBout),
  });
}

function cornerMaker(
  half: HalfOutline,
  { sections }: SectionLines,
  values: Pick<PlanValues, 'purflingToEdge' | 'purflingWidth'>,
  wished: StingSizes,
): (which: 'lower' | 'upper') => PurflingCorner {
  const end = (arriving: Chain<'body'>, leaving: Chain<'body'>): Chain<'body'> =>
    chainThrough([...arriving.vertices.slice(-1), ...leaving.vertices.slice(0, 1)], false);
  const edge = [
    half.lowerBout,
    end(half.lowerBout, half.cBout),
    half.cBout,
    end(half.cBout, half.upperBout),
    half.upperBout,
  ];
  return (which) =>
    purflingCorner({
      arriving: which === 'lower' ? sections.lowerBout : sections.cBout,
      leaving: which === 'lower' ? sections.cBout : sections.upperBout,
      waistOnLeft: which === 'lower',
      edge: edge.filter(({ vertices }) => vertices.length > 1),
      wished,
      purflingWidthMm: values.purflingWidth,
      purflingToEdgeMm: values.purflingToEdge,
    });
}

function bent(parallels: SectionLines, toEdgeMm: number): Finding[] {
  const corners = (['lower', 'upper'] as const).filter(
    (which) => parallels[`${which}Corner`].kind === 'flat',
  );
  if (corners.length === 0) return [];
  return [
    {
      code: 'purfling.bent',
      weight: 'remark',
      at: 'purflingToEdge',
      found: `parallel purfling lines ${toEdgeMm} mm from the edge would meet outside the ${corners.join(' and ')} corners`,
      need: 'a mitre inside the corner',
      remedy: `their last ${(BENT_OVER * toEdgeMm).toFixed(0)} mm are bent to meet ${(BENT_DEPTH_SHARE * toEdgeMm).toFixed(1)} mm inside the corner end; narrower corner ends or a smaller distance need no bend`,
    },
  ];
}

/** mm. A point shorter by less than this is as wished. */
const AS_WISHED_MM = 0.05;

function withoutRoom(corners: PurflingLines['corners'], { lengthMm }: StingSizes): Finding[] {
  return (['lower', 'upper'] as const)
    .filter((which) => corners[which].sting.lengthMm < lengthMm - AS_WISHED_MM)
    .map((which) => {
      const made = corners[which].sting.lengthMm;
      return {
        code: 'purfling.sting',
        weight: 'remark',
        at: 'stingLength',
        found: `no room in the ${which} corners for a point of the purfling ${lengthMm} mm long`,
        need: 'wood between its tip and the edge',
        remedy:
          made > 0
            ? `it is drawn ${made.toFixed(1)} mm long`
            : 'none is drawn: end the purfling in its mitre',
      };
    });
}
