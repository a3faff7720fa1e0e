import { BUILT_PART_WORDS, missWords } from '../../checks/index.ts';
import { type Drawing, deviationMap } from '../../drawing/index.ts';
import { documentText, toFile } from '../../files/index.ts';
import type { CheckedBuilt } from './checkBuilt.ts';

/** A check of a made thing as a document, in a few lines, and as a map. */
export interface BuiltOutcome {
  readonly text: string;
  readonly summary: readonly string[];
  readonly map: Drawing;
}

/** The document, summary and map of a check. */
export function builtOutcome(built: CheckedBuilt): BuiltOutcome {
  return { text: documentText(builtDocument(built)), summary: summary(built), map: mapOf(built) };
}

function builtDocument({ request, traced, measure, report, upperEdge, findings }: CheckedBuilt) {
  const { worst, sides } = report;
  return {
    format: 'garland-built',
    version: 1,
    units: 'mm',
    frame: 'body',
    part: report.part,
    shape: traced.shape.name,
    photograph: request.name,
    face: request.face,
    upperEdge: { lower: upperEdge.lowerMm, upper: upperEdge.upperMm, plusMinus: upperEdge.plusMinusMm },
    max: toFile(report.maxMm),
    rms: toFile(report.rmsMm),
    mean: toFile(report.meanMm),
    plusMinus: toFile(report.plusMinusMm),
    tolerance: report.toleranceMm,
    verdict: report.verdict,
    sure: report.isSure,
    worst: {
      place: worst.name,
      at: [toFile(worst.at.x), toFile(worst.at.y)],
      deviation: toFile(worst.missMm),
    },
    size: { along: measure.along, across: measure.across, plusMinus: measure.sizePlusMinus },
    ...(sides && { sides: { max: toFile(sides.maxMm), rms: toFile(sides.rmsMm), at: sides.name } }),
    beyond: report.faults.map(({ name, at, missMm, extentMm }) => ({
      place: name,
      at: [toFile(at.x), toFile(at.y)],
      deviation: toFile(missMm),
      extent: toFile(extentMm),
    })),
    hidden: report.hiddenShare,
    places: traced.places.map(({ expected, missMm, state }) => ({
      at: [toFile(expected.x), toFile(expected.y)],
      state,
      ...((state === 'seen' || state === 'by-foot') && { deviation: toFile(missMm) }),
    })),
    findings,
  };
}

function summary({ request, report, traced }: CheckedBuilt): readonly string[] {
  const { worst, sides, plusMinusMm, toleranceMm } = report;
  const sure = report.isSure ? '' : ', but not for certain';
  return [
    `${request.name}: ${traced.shape.name}, ${report.verdict} ${toleranceMm} mm of the design${sure}`,
    `  largest deviation ${missWords(worst.missMm)}: ${worst.name}, ${worst.at.y.toFixed(0)} mm from the lower end`,
    `  ${report.rmsMm.toFixed(2)} mm rms, ± ${plusMinusMm.toFixed(2)} mm (k = 2)`,
    ...(sides ? [`  its two sides differ by ${sides.maxMm.toFixed(2)} mm at most: ${sides.name}`] : []),
  ];
}

/** Figures that stand on the map at most. */
const FIGURES = 8;

function mapOf({ plan, request, traced, report }: CheckedBuilt): Drawing {
  const thing = BUILT_PART_WORDS[request.part];
  const figures = [report.worst, ...report.faults.filter(({ at }) => at !== report.worst.at)].slice(
    0,
    FIGURES,
  );
  return deviationMap({
    name: `deviations-${request.part}`,
    title: `Deviations: ${traced.shape.name}`,
    part: request.part === 'garland' ? 'ribs' : request.part === 'outline' ? 'outline' : 'form',
    expected: traced.shape.chain,
    places: traced.places.map(({ expected, normal, missMm, state }) => ({
      at: expected,
      normal,
      ...((state === 'seen' || state === 'by-foot') && { missMm }),
    })),
    figures,
    says: [
      plan.name,
      `largest ${missWords(report.worst.missMm)}, ${report.rmsMm.toFixed(2)} mm rms, ± ${report.plusMinusMm.toFixed(2)} mm (k = 2)`,
      `${report.verdict} the ${report.toleranceMm} mm allowed; seen as the outside of the top`,
      `outside the line the ${thing} stands proud, inside it wood is missing`,
      'where the line carries no comb nothing was measured: a corner, or hidden',
    ],
  });
}
