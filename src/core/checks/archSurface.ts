import { atan, type Finding, hypot } from '../base/index.ts';
import { type PlateArch, type SurfaceProbe, surfaceProbes } from '../instrument/index.ts';
import { principalCurvatures } from '../surface/index.ts';
import { largestPatch } from './archPatch.ts';
import { archPlace } from './archPlace.ts';
import { mostRippled } from './archRipple.ts';
import { USUAL_LENGTH_MM } from './usualLength.ts';

/** mm. Limits below are for the usual length; lengths grow with it, areas with its square. All are our judgement from trial surfaces. */
const STEP_MM = 2;
/** mm: flatter than this radius both ways is a flat spot, if it lies within this share of the half width. */
const FLAT_RADIUS_MM = 2000;
const FLAT_SHARE = 0.8;
const FLAT_AREA_MM2 = 100;
/** mm inside the channel from where on an arch must not be dished. */
const HOLLOW_INSIDE_MM = 14;
const HOLLOW_AREA_MM2 = { caution: 60, contradiction: 200 };
/** Of the arch's height there; looked at between these shares of the half width. */
const SAG_SHARE = 0.05;
const SAG_BETWEEN = { from: 0.28, to: 0.52 };
const STEEP_DEG = { caution: 27, contradiction: 33 };
/** Degrees by which a slope must turn round to be seen under a low lamp, and how often it may along the body (sound plates: 7). */
const RIPPLE = { leastDeg: 0.5, most: 9 };
/** mm. A tighter bend inside the channel looks like a crease (sound plates: 12). */
const CREASE = { radiusMm: 9.5, insideMm: 2 };
/** mm that an arch may lie below its channel. */
const BELOW_MM = 0.02;
/** mm that the highest place may lie above the crest as stated. */
const ABOVE_CREST_MM = 0.02;

/**
 * What is wrong with the finished surface of an arch, place by place in words: flat spots, hollows, sag between stations,
 * ripples, creases, steepness, places below the channel and places above the crest. Nothing on a sound arch.
 */
export function archSurfaceFindings(arch: PlateArch): readonly Finding[] {
  const size = arch.bodyLengthMm / USUAL_LENGTH_MM;
  const probes = surfaceProbes(arch, STEP_MM * size);
  return [...surfaceTrouble(arch, probes), ...rippleFindings(arch)];
}

/** {@link archSurfaceFindings} of places that were probed already. */
export function surfaceTrouble(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  return [
    ...flatFindings(arch, probes),
    ...hollowFindings(arch, probes),
    ...sagFindings(arch, probes),
    ...creaseFindings(arch, probes),
    ...steepFindings(arch, probes),
    ...heightFindings(arch, probes),
  ];
}

function told(
  arch: PlateArch,
  weight: Finding['weight'],
  code: string,
  words: { readonly found: string; readonly need: string; readonly remedy: string },
): Finding {
  const at = arch.plate === 'back' ? 'archHeightBack' : 'archHeightTop';
  return { weight, code, at, ...words, found: `${arch.plate}: ${words.found}` };
}

/** Area of the largest patch of probes, mm² on a body of the usual length: both halves have it, one is counted. */
function patchOf(arch: PlateArch, probes: readonly SurfaceProbe[]) {
  const patch = largestPatch(probes);
  const middle = patch[Math.floor(patch.length / 2)];
  const ownStepMm = (STEP_MM * arch.bodyLengthMm) / USUAL_LENGTH_MM;
  return middle && { areaMm2: patch.length * STEP_MM ** 2, ownMm2: patch.length * ownStepMm ** 2, middle };
}

function flatFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const least = USUAL_LENGTH_MM / (FLAT_RADIUS_MM * arch.bodyLengthMm);
  const flat = probes.filter(
    ({ share, shape }) =>
      share < FLAT_SHARE && principalCurvatures(shape).every((bend) => Math.abs(bend) < least),
  );
  const patch = patchOf(arch, flat);
  if (!patch || patch.areaMm2 <= FLAT_AREA_MM2) return [];
  return [
    told(arch, 'caution', 'check.arch-flat', {
      found: `a flat spot of ${patch.ownMm2.toFixed(0)} mm² ${archPlace(arch, patch.middle.xMm, patch.middle.yMm)}`,
      need: 'an arch that is bent everywhere, at least one way',
      remedy: 'change the fullness at the nearest stations, or the long arch',
    }),
  ];
}

function hollowFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const insideMm = (HOLLOW_INSIDE_MM * arch.bodyLengthMm) / USUAL_LENGTH_MM;
  const dished = probes.filter(
    (probe) => probe.insideMm > insideMm && principalCurvatures(probe.shape).every((bend) => bend > 0),
  );
  const patch = patchOf(arch, dished);
  if (!patch || patch.areaMm2 <= HOLLOW_AREA_MM2.caution) return [];
  const weight = patch.areaMm2 > HOLLOW_AREA_MM2.contradiction ? 'contradiction' : 'caution';
  return [
    told(arch, weight, 'check.arch-hollow', {
      found: `a hollow of ${patch.ownMm2.toFixed(0)} mm², dished both ways, ${archPlace(arch, patch.middle.xMm, patch.middle.yMm)}`,
      need: `no dish greater than ${((patch.ownMm2 * HOLLOW_AREA_MM2.caution) / patch.areaMm2).toFixed(0)} mm² away from the channel`,
      remedy: 'make the arch fuller at the nearest station',
    }),
  ];
}

function sagFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const [lowest, highest] = [arch.stations[0]?.yMm ?? 0, arch.stations.at(-1)?.yMm ?? 0];
  const between = probes.filter(
    ({ share, yMm }) => share > SAG_BETWEEN.from && share < SAG_BETWEEN.to && yMm > lowest && yMm < highest,
  );
  const worst = largestOf(between, ({ correctionMm, riseMm }) => Math.abs(correctionMm) / riseMm);
  if (!worst || Math.abs(worst.correctionMm) <= SAG_SHARE * worst.riseMm) return [];
  const off = worst.correctionMm;
  return [
    told(arch, 'caution', 'check.arch-sag', {
      found: `the arch ${off < 0 ? 'sags' : 'stands out'} by ${Math.abs(off).toFixed(2)} mm between its stations ${archPlace(arch, worst.xMm, worst.yMm)}`,
      need: `at most ${(SAG_SHARE * worst.riseMm).toFixed(2)} mm there`,
      remedy: 'bring the fullness of neighbouring stations nearer to each other, or lower it at the corners',
    }),
  ];
}

function creaseFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const size = arch.bodyLengthMm / USUAL_LENGTH_MM;
  const bend = ({ shape }: SurfaceProbe): number => Math.max(...principalCurvatures(shape).map(Math.abs));
  const worst = largestOf(
    probes.filter(({ insideMm }) => insideMm > CREASE.insideMm * size),
    bend,
  );
  if (!worst || bend(worst) * CREASE.radiusMm * size <= 1) return [];
  return [
    told(arch, 'caution', 'check.arch-crease', {
      found: `the arch bends with a radius of only ${(1 / bend(worst)).toFixed(1)} mm ${archPlace(arch, worst.xMm, worst.yMm)}, which looks like a crease`,
      need: `${(CREASE.radiusMm * size).toFixed(1)} mm or more inside the channel`,
      remedy:
        'bring the fullness of neighbouring stations nearer to each other, or leave out measured heights that stand off',
    }),
  ];
}

function rippleFindings(arch: PlateArch): readonly Finding[] {
  const { swings, xMm, yMm } = mostRippled(arch, RIPPLE.leastDeg);
  if (swings <= RIPPLE.most) return [];
  return [
    told(arch, 'caution', 'check.arch-ripple', {
      found: `the slope along the body turns round ${swings} times by half a degree or more, quickest ${archPlace(arch, xMm, yMm)}: ripples under a low lamp`,
      need: `${RIPPLE.most} times or fewer`,
      remedy: arch.pull
        ? 'say a larger plusMinus for the measured heights, or leave out those that stand off'
        : 'bring the fullness of neighbouring stations nearer to each other',
    }),
  ];
}

function steepFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const slope = ({ shape }: SurfaceProbe): number => hypot(shape.slopeX, shape.slopeY);
  const worst = largestOf(probes, slope);
  if (!worst) return [];
  const steepDeg = (atan(slope(worst)) * 180) / Math.PI;
  const isTold = arch.findings.some(({ code }) => code === 'arch.steep');
  if (!(steepDeg > (isTold ? STEEP_DEG.contradiction : STEEP_DEG.caution))) return [];
  return [
    told(arch, steepDeg > STEEP_DEG.contradiction ? 'contradiction' : 'caution', 'check.arch-steep', {
      found: `the arch falls at ${steepDeg.toFixed(1)} degrees ${archPlace(arch, worst.xMm, worst.yMm)}`,
      need: `at most ${STEEP_DEG.caution} degrees`,
      remedy: 'lower the arch, or bring the channel nearer to the edge there',
    }),
  ];
}

function heightFindings(arch: PlateArch, probes: readonly SurfaceProbe[]): readonly Finding[] {
  const findings: Finding[] = [];
  const lowest = largestOf(probes, ({ shape }) => -shape.zMm);
  if (lowest && lowest.shape.zMm < arch.channelZMm - BELOW_MM)
    findings.push(
      told(arch, 'contradiction', 'check.arch-below-channel', {
        found: `the arch lies ${(arch.channelZMm - lowest.shape.zMm).toFixed(2)} mm below its channel ${archPlace(arch, lowest.xMm, lowest.yMm)}`,
        need: 'the channel as the lowest line of the arch',
        remedy: 'make the arch fuller at the nearest station, or the channel narrower there',
      }),
    );
  const highest = largestOf(probes, ({ shape }) => shape.zMm);
  const { crestMm } = arch.longArch;
  if (highest && highest.shape.zMm > arch.numbers.archHeightMm + ABOVE_CREST_MM)
    findings.push(
      told(arch, arch.pull ? 'caution' : 'contradiction', 'check.arch-crest', {
        found: `the highest place is ${highest.shape.zMm.toFixed(2)} mm high, ${archPlace(arch, highest.xMm, highest.yMm)}`,
        need: `${arch.numbers.archHeightMm.toFixed(2)} mm on the centre line, ${crestMm.toFixed(0)} mm from the lower end`,
        remedy: arch.pull
          ? `give ${arch.plate === 'back' ? 'archHeightBack' : 'archHeightTop'} as the measured heights have it`
          : 'make the arch less full beside the crest',
      }),
    );
  return findings;
}

function largestOf(
  probes: readonly SurfaceProbe[],
  of: (probe: SurfaceProbe) => number,
): SurfaceProbe | undefined {
  return probes.reduce<SurfaceProbe | undefined>(
    (best, probe) => (best && of(best) >= of(probe) ? best : probe),
    undefined,
  );
}
