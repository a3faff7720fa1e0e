import { accept, type Checked, type Finding, hypot } from '../../base/index.ts';
import type { Design, HeadFit, ValueName } from '../../design/index.ts';
import {
  FITTED,
  type FittedHead,
  type FittedName,
  fitHead,
  headSizesOf,
  type ProfileSizes,
  type SilhouettePlace,
} from '../../instrument/index.ts';
import { measured, type Quantity } from '../../quantity/index.ts';
import type { ScrollReading } from './scrollReading.ts';

/** What a traced head gives to a design. */
export interface HeadOfScroll {
  readonly values: Readonly<Partial<Record<ValueName, Quantity>>>;
  readonly fit: HeadFit;
  readonly findings: readonly Finding[];
}

/** The value of a design that each fitted size is; the thickness of the neck under the chin is no measure of the head. */
const VALUE_OF: Readonly<Partial<Record<FittedName, ValueName>>> = {
  lengthMm: 'headLength',
  topMm: 'headTop',
  depthMm: 'headDepth',
  scrollHeightMm: 'scrollHeight',
  scrollFrontMm: 'scrollFront',
  leanRad: 'backLeanAngle',
  hollowRadiusMm: 'backHollow',
  chinBehindMm: 'chinBehind',
  chinRad: 'chinAngle',
  chinReachMm: 'chinReach',
  frontRad: 'pegboxFrontAngle',
  throatGapMm: 'throatGap',
};

/** mm. A drawn head that leaves its original by more is no copy of it, as a whole and at one stretch; chosen by us. */
const CLOSE_MM = 0.6;
const CLOSE_STRETCH_MM = 1;

/**
 * The side view of a design's head fitted to a traced one: the values that the photograph tells, each with its ±, and place by
 * place what is left between them. Faults: those of `headSizesOf` and `fitHead`. Findings: `head.fitted`, `head.far`.
 */
export function headFromScroll(design: Design, reading: ScrollReading): Checked<HeadOfScroll> {
  const usual = headSizesOf(design);
  if (!usual.ok) return usual;
  const start = scaledTo(reading, usual.value);
  const fitted = fitHead(inHeadFrame(reading, start), start);
  if (!fitted.ok) return fitted;
  const fit = fitOf(reading, fitted.value);
  return accept({ values: valuesOf(reading, fitted.value), fit, findings: findingsOf(fitted.value, fit) });
}

/** mm, k = 2. By so much the whole line of a silhouette may lie out or in: rims of light, the side that shows. Chosen by us. */
const EDGE_MM = 0.15;

/** Share of the distance from nut to top, from the top, over which a head is as deep as its scroll and the back behind it. */
const DEEP_SHARE = 0.4;

/** The usual sizes, brought to how large this head is from front to back. */
function scaledTo({ points }: ScrollReading, usual: ProfileSizes): ProfileSizes {
  const top = Math.max(...points.map(({ x }) => x));
  let scale = 1;
  for (let round = 0; round < 3; round++) {
    const upper = points.filter(({ x }) => x > top - DEEP_SHARE * scale * usual.topMm).map(({ y }) => y);
    scale = (Math.max(...upper) - Math.min(...upper)) / (usual.depthMm - usual.scrollFrontMm);
  }
  return Object.fromEntries(
    Object.entries(usual).map(([name, value]) => [name, name.endsWith('Mm') ? scale * value : value]),
  ) as unknown as ProfileSizes;
}

/** The silhouette laid on the start: its top and its back where those of the start are, the front to the left. */
function inHeadFrame({ points, sigmaMm }: ScrollReading, start: ProfileSizes): readonly SilhouettePlace[] {
  const top = Math.max(...points.map(({ x }) => x));
  const upper = points.filter(({ x }) => x > top - DEEP_SHARE * start.topMm);
  const back = Math.min(...upper.map(({ y }) => y));
  return points.map(({ x, y }) => ({ x: start.depthMm - (y - back), y: start.topMm - (top - x), sigmaMm }));
}

function valuesOf(reading: ScrollReading, { profile, plusMinus }: FittedHead): HeadOfScroll['values'] {
  const values: Partial<Record<ValueName, Quantity>> = {};
  const origin = measured(`side of the head in ${reading.name}`);
  for (const name of FITTED) {
    const own = VALUE_OF[name];
    if (own === undefined) continue;
    const isLength = name.endsWith('Mm');
    const value = isLength ? profile.sizes[name] : degrees(profile.sizes[name]);
    const spread = isLength
      ? hypot(plusMinus[name], EDGE_MM, reading.scaleShare * value)
      : degrees(plusMinus[name]);
    values[own] = {
      value: rounded(value),
      unit: isLength ? 'mm' : 'deg',
      origin,
      plusMinus: Math.max(0.01, rounded(spread)),
    };
  }
  return values;
}

function fitOf(reading: ScrollReading, { rmsMm, mostMm, stretches }: FittedHead): HeadFit {
  return {
    source: reading.name,
    rms: rounded(rmsMm),
    most: rounded(mostMm),
    stretches: stretches.map((one) => ({
      stretch: one.stretch,
      mean: rounded(one.meanMm),
      rms: rounded(one.rmsMm),
      most: rounded(one.mostMm),
    })),
  };
}

function findingsOf({ usedShare }: FittedHead, fit: HeadFit): readonly Finding[] {
  const told = fit.stretches.map(({ stretch, rms }) => `${stretch} ${rms.toFixed(2)}`).join(', ');
  const far = fit.stretches.filter(({ rms }) => rms > CLOSE_STRETCH_MM).map(({ stretch }) => stretch);
  const isFar = fit.rms > CLOSE_MM || far.length > 0;
  return [
    {
      code: 'head.fitted',
      weight: 'remark',
      at: 'headLength',
      found: `the side of the head follows ${fit.source} within ${fit.rms.toFixed(2)} mm (rms; most ${fit.most.toFixed(2)}): ${told}; ${Math.round(100 * usedShare)} % of the traced line was used. Eye, turns and widths are not told from the side`,
      need: 'nothing, if that is near enough',
      remedy: 'measure eye and widths on the original and give them',
    },
    ...(isFar
      ? [
          {
            code: 'head.far',
            weight: 'caution' as const,
            at: 'headLength',
            found: `the drawn head leaves the original${far.length > 0 ? ` at: ${far.join(', ')}` : ` by ${fit.rms.toFixed(2)} mm (rms)`}`,
            need: `${CLOSE_MM} mm or less as a whole and ${CLOSE_STRETCH_MM} mm at each stretch`,
            remedy: 'look whether it is worn or broken there, or was not photographed square from the side',
          },
        ]
      : []),
  ];
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
