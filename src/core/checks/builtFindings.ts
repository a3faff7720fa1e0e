import type { Finding } from '../base/index.ts';
import { BUILT_PART_WORDS, type BuiltPart } from './builtPlaceName.ts';
import type { BuiltFault, BuiltMeasure, BuiltReport } from './builtReport.ts';

/** Stretches told one by one; more of them are counted. */
const TOLD = 4;
/** Share. A smaller misfit of size is not told: it is a tenth of a millimetre on a violin. */
const LEAST_SIZE = 0.000_8;
/** A simple cause is told when it leaves no more than this share of the deviations unexplained. */
const EXPLAINED = 0.6;
/** Share of the edge that may be hidden before it is said. */
const MOST_HIDDEN = 0.03;

/**
 * What a maker should know of a made thing, the cause of the whole before the single places.
 * Codes: `built.size`, `built.all-round`, `built.deviates`, `built.uneven`, `built.unsure`, `built.hidden`.
 */
export function builtFindings(report: BuiltReport, measure: BuiltMeasure): readonly Finding[] {
  const thing = BUILT_PART_WORDS[report.part];
  const size = sizeFinding(report, measure, thing);
  const allRound = size ? null : allRoundFinding(report, measure, thing);
  return [
    ...(size ? [size] : []),
    ...(allRound ? [allRound] : []),
    ...deviationFindings(report, thing),
    ...unevenFindings(report, thing),
    ...unsureFindings(report),
    ...hiddenFindings(report),
  ];
}

/** A deviation in words: 0.6 mm short, 0.4 mm proud. */
export function missWords(missMm: number): string {
  return `${Math.abs(missMm).toFixed(2)} mm ${missMm > 0 ? 'proud' : 'short'}`;
}

function sizeFinding(report: BuiltReport, measure: BuiltMeasure, thing: string): Finding | null {
  const { along, across, sizePlusMinus, rmsAfterSizeMm, rmsAfterAllRoundMm } = measure;
  const larger = Math.max(Math.abs(along), Math.abs(across));
  if (larger < Math.max(LEAST_SIZE, sizePlusMinus)) return null;
  if (rmsAfterSizeMm > EXPLAINED * report.rmsMm || rmsAfterSizeMm > rmsAfterAllRoundMm) return null;
  const even = Math.abs(along - across) < Math.max(LEAST_SIZE, larger / 4);
  const found = even
    ? `the whole ${thing} is ${percent((along + across) / 2)}`
    : `the ${thing} is ${percent(along)} along the body, ${percent(across)} across`;
  return {
    code: 'built.size',
    weight: 'caution',
    at: thing,
    found: `${found} (± ${(100 * sizePlusMinus).toFixed(2)} %)`,
    need: 'its true size',
    remedy: printCause(report.part, even),
  };
}

function percent(share: number): string {
  const size = (100 * Math.abs(share)).toFixed(2);
  if (Math.abs(share) < LEAST_SIZE / 2) return 'of true size';
  return `${size} % ${share > 0 ? 'large' : 'small'}`;
}

function printCause(part: BuiltPart, even: boolean): string {
  const from = part === 'outline' || part === 'inner' ? 'it was' : 'what it was made from was';
  return even
    ? `see whether ${from} printed to fit the page: print at 100 %, and measure the check bars of the page`
    : `see whether ${from} printed by a printer that is not true both ways: measure both check bars of the page`;
}

function allRoundFinding(report: BuiltReport, measure: BuiltMeasure, thing: string): Finding | null {
  const { allRoundMm, rmsAfterAllRoundMm } = measure;
  if (Math.abs(allRoundMm) < Math.max(report.toleranceMm / 2, report.plusMinusMm)) return null;
  if (rmsAfterAllRoundMm > EXPLAINED * report.rmsMm) return null;
  return {
    code: 'built.all-round',
    weight: 'caution',
    at: thing,
    found: `the edge stands ${missWords(allRoundMm)} all round`,
    need: 'the line of the design',
    remedy:
      allRoundMm > 0
        ? 'file down to the line; if it should be so, see that --part and --thickness say what lies there'
        : 'see which side of the line was cut, and that --part and --thickness say what lies there',
  };
}

function deviationFindings({ faults, toleranceMm, part }: BuiltReport, thing: string): readonly Finding[] {
  const told = faults.slice(0, TOLD).map((fault) => deviation(fault, toleranceMm, part));
  const more = faults.length - told.length;
  if (more <= 0) return told;
  return [
    ...told,
    {
      code: 'built.deviates',
      weight: 'caution',
      at: thing,
      found: `${more} more ${more === 1 ? 'stretch' : 'stretches'} beyond ${toleranceMm} mm, none worse than these`,
      need: `an edge within ${toleranceMm} mm of the design`,
      remedy: 'look at the map of deviations (--map)',
    },
  ];
}

function deviation(
  { name, at, missMm, extentMm }: BuiltFault,
  toleranceMm: number,
  part: BuiltPart,
): Finding {
  const over = extentMm >= 1 ? ` over ${extentMm.toFixed(0)} mm` : '';
  return {
    code: 'built.deviates',
    weight: 'caution',
    at: name,
    found: `${missWords(missMm)}${over}, worst ${at.y.toFixed(0)} mm from the lower end`,
    need: `an edge within ${toleranceMm} mm of the design`,
    remedy: missMm > 0 ? 'take wood off there' : WOOD_MISSING[part],
  };
}

const WOOD_MISSING: Readonly<Record<BuiltPart, string>> = {
  form: 'glue wood on there and shape it again, or let the design follow the form',
  outline: 'make the template again, or let the design follow it',
  inner: 'make the template again, or let the design follow it',
  garland:
    'press the rib outwards there before the plate is drawn, or take the outline from the garland (--take-outline)',
};

function unevenFindings({ sides, toleranceMm, plusMinusMm }: BuiltReport, thing: string): readonly Finding[] {
  if (!sides || sides.maxMm <= Math.max(toleranceMm, plusMinusMm)) return [];
  return [
    {
      code: 'built.uneven',
      weight: 'caution',
      at: thing,
      found: `its two sides differ by up to ${sides.maxMm.toFixed(2)} mm, most at the ${sides.name}`,
      need: `both sides alike within ${toleranceMm} mm`,
      remedy: 'turn the half template over on it and see which side left the line',
    },
  ];
}

function unsureFindings({ plusMinusMm, toleranceMm, isSure, verdict }: BuiltReport): readonly Finding[] {
  if (isSure) return [];
  return [
    {
      code: 'built.unsure',
      weight: plusMinusMm > toleranceMm ? 'caution' : 'remark',
      at: 'photograph',
      found: `the deviations are good to ± ${plusMinusMm.toFixed(2)} mm, so that ${verdict} ${toleranceMm} mm is not certain`,
      need: 'a smaller ± to be sure',
      remedy:
        'measure both bars of the sheet (--sheet-bar), give --thickness, fill the picture with the sheet',
    },
  ];
}

function hiddenFindings({ hiddenShare }: BuiltReport): readonly Finding[] {
  if (hiddenShare < MOST_HIDDEN) return [];
  return [
    {
      code: 'built.hidden',
      weight: 'caution',
      at: 'photograph',
      found: `${(100 * hiddenShare).toFixed(0)} % of the edge is hidden or not plain enough to be measured`,
      need: 'the whole edge on bare paper',
      remedy: 'take away what lies over it, keep it off the printed squares, and photograph it again',
    },
  ];
}
