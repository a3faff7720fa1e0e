import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { fitHalfOutline, type HalfOutline, nearestOn, outlineChain, sampleChain } from '../../curve/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import { bodyOutline, deriveInstrument } from '../../instrument/index.ts';
import { outlineHabit } from '../../knowledge/index.ts';
import { measured, type Quantity } from '../../quantity/index.ts';
import type { CheckedBuilt } from './checkBuilt.ts';
import { garlandOutlinePoints } from './garlandOutline.ts';

/** A design whose outline follows the garland that was built, and how far that is from the outline before. */
export interface GarlandOutline {
  readonly design: Design;
  /** Outside the old outline +, inside −, at the place that moved most. */
  readonly movedMostMm: number;
  readonly movedMostAtMm: number;
  readonly movedRmsMm: number;
  readonly fitRmsMm: number;
  readonly findings: readonly Finding[];
}

/**
 * The design with the outline that the real garland asks for: the ribs as built plus the overhang, corners by the
 * design's own rule, drawn again in tangent arcs. The sizes of the outline become measured ones.
 * Faults: `built.not-a-garland`, those of fitting and of the outline.
 */
export function outlineFromGarland(design: Design, built: CheckedBuilt): Checked<GarlandOutline> {
  if (built.request.part !== 'garland') return refuse(notAGarland(built.request.part));
  const points = garlandOutlinePoints(built.plan, built.traced.places);
  const fitted = fitHalfOutline(points, outlineHabit(design.family));
  if (!fitted.ok) return refuse(...fitted.faults.map((fault) => ({ ...fault, at: 'garland' })));
  const { half, rmsMm, maxMm, lowerEndMm } = fitted.value;
  const values = measuredValues(design, half, built);
  if (!values.ok) return values;
  const next: Design = {
    ...design,
    values: values.value,
    outline: {
      kind: 'traced',
      half,
      fitRmsMm: rmsMm,
      fitMaxMm: maxMm,
      plusMinusMm: built.report.plusMinusMm,
    },
  };
  const derived = deriveInstrument(next);
  if (!derived.ok) return derived;
  return accept({
    design: next,
    ...moved(half, lowerEndMm, built),
    fitRmsMm: rmsMm,
    findings: sidesFindings(built),
  });
}

function measuredValues(
  design: Design,
  half: HalfOutline,
  { request, report }: CheckedBuilt,
): Checked<Design['values']> {
  const outline = bodyOutline(half);
  if (!outline.ok) return outline;
  const { bodyLengthMm, lowerBout, waist, upperBout, lowerCorner, upperCorner } = outline.value;
  const origin = measured(`the garland as built, photograph ${request.name}, overhang added`);
  const of = (value: number): Quantity => ({ value, unit: 'mm', origin, plusMinus: 2 * report.plusMinusMm });
  const taken = {
    bodyLength: of(bodyLengthMm),
    lowerBout: of(lowerBout.widthMm),
    waist: of(waist.widthMm),
    upperBout: of(upperBout.widthMm),
    lowerCornerEnd: of(lowerCorner.endWidthMm),
    upperCornerEnd: of(upperCorner.endWidthMm),
  } satisfies Partial<Record<ValueName, Quantity>>;
  return accept({ ...design.values, ...taken });
}

/** mm. Chords of the new outline, and the step at which it is held against the old one. */
const CHORD_MM = 0.02;

function moved(half: HalfOutline, lowerEndMm: number, { plan }: CheckedBuilt) {
  const misses = sampleChain(outlineChain(half), CHORD_MM).map((place) => {
    const near = nearestOn(plan.outline.chain, { x: place.x, y: place.y + lowerEndMm });
    return { y: place.y, byMm: near.side > 0 ? -near.distanceMm : near.distanceMm };
  });
  const most = misses.reduce((a, b) => (Math.abs(b.byMm) > Math.abs(a.byMm) ? b : a));
  return {
    movedMostMm: most.byMm,
    movedMostAtMm: most.y,
    movedRmsMm: Math.sqrt(misses.reduce((sum, { byMm }) => sum + byMm * byMm, 0) / misses.length),
  };
}

function sidesFindings({ report }: CheckedBuilt): readonly Finding[] {
  const { sides, toleranceMm } = report;
  if (!sides || sides.maxMm <= toleranceMm) return [];
  return [
    {
      code: 'built.sides-averaged',
      weight: 'caution',
      at: 'garland',
      found: `its sides differ by up to ${sides.maxMm.toFixed(2)} mm at the ${sides.name}; the new outline is their mean`,
      need: 'ribs that are alike on both sides for an overhang that is the same all round',
      remedy: 'true the ribs first, or let the overhang differ by half of that',
    },
  ];
}

/** The fault of asking another part than the garland for an outline. */
export function notAGarland(part: string): Fault {
  return {
    code: 'built.not-a-garland',
    at: '--take-outline',
    found: `a check of the ${part}`,
    need: '--part garland: only the real ribs say what outline the plates need',
    remedy: 'leave --take-outline out, or photograph the garland',
  };
}
