import { accept, type Checked, type Finding, hypot } from '../../base/index.ts';
import {
  BUILT_PART_WORDS,
  type BuiltMeasure,
  type BuiltReport,
  builtFindings,
  builtReport,
} from '../../checks/index.ts';
import type { Design } from '../../design/index.ts';
import { deriveInstrument, type PlanParts } from '../../instrument/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { MarkerFinder, TracedShape } from '../../photo/index.ts';
import type { BuiltRequest } from './builtRequest.ts';
import { type UpperEdge, upperEdgeOf } from './expectedShapes.ts';
import { type SeenThing, seeMadeThing } from './seeMadeThing.ts';

/** A made thing held against its design. */
export interface CheckedBuilt {
  readonly request: Pick<BuiltRequest, 'name' | 'part' | 'face'>;
  readonly plan: PlanParts;
  readonly traced: TracedShape;
  readonly upperEdge: UpperEdge;
  readonly measure: BuiltMeasure;
  readonly report: BuiltReport;
  readonly findings: readonly Finding[];
}

/**
 * What was made, photographed on the calibration sheet, against the design it was made from. Its size is measured,
 * not fitted. Faults: those of deriving the design, of the sheet, the camera and the shape.
 */
export function checkBuilt(
  design: Design,
  request: BuiltRequest,
  finder: MarkerFinder,
): Checked<CheckedBuilt> {
  const instrument = deriveInstrument(design);
  if (!instrument.ok) return instrument;
  const { plan } = instrument.value;
  const upperEdge = upperEdgeOf(design, request);
  const seen = seeMadeThing(request, plan, upperEdge, finder);
  if (!seen.ok) return seen;
  const measure = measureOf(seen.value, plan);
  const report = builtReport(plan, request.part, measure, request.toleranceMm);
  return accept({
    request,
    plan,
    traced: seen.value.traced,
    upperEdge,
    measure,
    report,
    findings: [
      ...faceFindings(seen.value.traced, request),
      ...builtFindings(report, measure),
      ...seen.value.findings,
      ...heightFindings(upperEdge),
    ],
  });
}

function measureOf({ traced, lengthPlusMinusMm }: SeenThing, plan: PlanParts): BuiltMeasure {
  const { places, size } = traced;
  const sigmas = places.filter(({ sigmaMm }) => sigmaMm > 0).map(({ sigmaMm }) => sigmaMm);
  const edgeMm = 2 * medianOf(sigmas);
  return {
    places: places.map(({ expected, missMm, state }) => ({
      at: expected,
      missMm,
      isMeasured: state === 'seen' || state === 'by-foot',
      isCorner: state === 'corner',
    })),
    // The thing is laid over the design by its middle: a wrong length shows by half at either end.
    plusMinusMm: hypot(lengthPlusMinusMm / 2, edgeMm, EDGE_MM),
    along: size.along,
    across: size.across,
    sizePlusMinus: hypot(lengthPlusMinusMm / plan.outline.bodyLengthMm, 2 * size.sigma),
    allRoundMm: size.allRoundMm,
    rmsAfterSizeMm: size.rmsAfterSizeMm,
    rmsAfterAllRoundMm: size.rmsAfterAllRoundMm,
  };
}

/** mm, k = 2. What grain, shadow and the rounding of a sharp edge do to it: measured on rendered pictures. */
const EDGE_MM = 0.1;

/** Half a template shows which face is up. */
function faceFindings({ shape }: TracedShape, { part, face }: BuiltRequest): readonly Finding[] {
  const isHalf = shape.name.endsWith('half');
  if (!isHalf || shape.mirrored === (face === 'back')) return [];
  return [
    {
      code: 'built.face-down',
      weight: 'remark',
      at: BUILT_PART_WORDS[part],
      found: `the half lies ${shape.mirrored ? 'face down' : 'face up'}: it was measured mirrored, sides named as it was drawn`,
      need: 'nothing; both faces tell the same',
      remedy: 'turn it over if its lettering should be in the picture',
    },
  ];
}

function heightFindings({ from, lowerMm, upperMm, plusMinusMm }: UpperEdge): readonly Finding[] {
  if (from.length === 0) return [];
  const height =
    lowerMm === upperMm ? `${lowerMm} mm` : `${lowerMm} mm at the lower and ${upperMm} mm at the upper end`;
  return [
    {
      code: 'built.height-from-design',
      weight: 'remark',
      at: '--thickness',
      found: `not told, so the upper edge is taken to stand ${height} over the sheet, as the design has it (± ${plusMinusMm} mm)`,
      need: 'its measured height, since an edge nearer to the camera looks larger',
      remedy: 'measure it with callipers and give --thickness',
    },
  ];
}
