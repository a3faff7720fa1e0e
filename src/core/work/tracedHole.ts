import type { Finding } from '../base/index.ts';
import { nearestOn } from '../curve/index.ts';
import type { FittedHoleShape, ValueName } from '../design/index.ts';
import type { HoleDocument, TraceDocument } from '../files/index.ts';
import {
  type BodyOutline,
  type FittedHole,
  fitHole,
  type HoleMisfit,
  type TracedHole,
} from '../instrument/index.ts';
import { type Origin, type Quantity } from '../quantity/index.ts';

/** What a traced sound hole gives a design. */
export interface HoleOfTrace {
  readonly values: Readonly<Partial<Record<ValueName, Quantity>>>;
  readonly holeShape?: FittedHoleShape;
  readonly findings: readonly Finding[];
}

/** mm rms. A stretch of a traced hole that lies farther off the one drafted like it is told of. */
const NEAR_MM = 0.2;
/** mm rms. What lies farther off any drafted hole is no hole that was seen. Chosen by us. */
const FAR_MM = 1;
/** mm, k = 2. For a hole that does not say how well its height is known (chosen by us: a careful photograph). */
const UNTOLD_MM = 0.5;
/** No unit. What differs between both holes counts so much less than what is alike. Chosen by us. */
const DOUBTFUL_WEIGHT = 0.25;

/**
 * The sound hole of a trace, drafted again by the numbers that every hole is drafted by. Of two holes the clearer one; a bass hole
 * is mirrored. The stop comes from the inner nick unless it is given; then the nick lies so far above it.
 *
 * Findings: `draft.hole-misfit` (stretches that lie farther off than 0.2 mm rms), `draft.hole-not-drafted` (farther off than
 * a millimetre: nothing is taken from it).
 */
export function holeOfTrace(
  { soundHoles, name }: TraceDocument,
  { bodyLengthMm, chain }: Pick<BodyOutline, 'bodyLengthMm' | 'chain'>,
  stopMm: number | undefined,
): HoleOfTrace {
  const side = soundHoles?.drawnFrom ?? (soundHoles?.bass ? 'bass' : 'treble');
  const document = soundHoles?.[side];
  if (!document) return { values: {}, findings: [] };
  const traced = tracedHole(document, side);
  const fitted = fitHole(traced);
  const at = `sound hole, ${side} side`;
  if (!fitted || fitted.rmsMm > FAR_MM) return { values: {}, findings: [notDrafted(at)] };
  const from =
    name === undefined ? `${side} sound hole of a trace` : `${side} sound hole of the trace of ${name}`;
  const origin: Origin = { kind: 'measured', from };
  const plusMinus = document.plusMinus ?? UNTOLD_MM;
  const of = (value: number): Quantity => ({ value, unit: 'mm', origin, plusMinus });
  const { sizes, shape, lowerEye, nickLineMm, rmsMm, mostMm, misfits } = fitted;
  const nickFromTopMm = bodyLengthMm - nickLineMm;
  return {
    values: {
      holeLength: of(sizes.lengthMm),
      upperEyesApart: of(sizes.upperEyesApartMm),
      upperEyeDiameter: of(sizes.upperEyeMm),
      lowerEyeDiameter: of(sizes.lowerEyeMm),
      holeStemWidth: of(sizes.stemMm),
      holeTipGap: of(sizes.tipGapMm),
      lowerEyeToEdge: of(nearestOn(chain, lowerEye.centre).distanceMm - lowerEye.radiusMm),
      ...(traced.innerNick &&
        (stopMm === undefined ? { stop: of(nickFromTopMm) } : { nickAboveStop: of(stopMm - nickFromTopMm) })),
    },
    holeShape: {
      from,
      fitRmsMm: rounded(rmsMm),
      fitMaxMm: rounded(mostMm),
      misfits: misfits.map((one) => ({ ...one, rmsMm: rounded(one.rmsMm), mostMm: rounded(one.mostMm) })),
      shape,
    },
    findings: misfits.some((one) => one.rmsMm > NEAR_MM) ? [misfit(at, fitted)] : [],
  };
}

/** In the place of the treble hole. */
function tracedHole(document: HoleDocument, side: 'bass' | 'treble'): TracedHole {
  const way = side === 'bass' ? -1 : 1;
  const spot = ([x, y]: readonly [number, number]) => ({ x: way * x, y });
  const [bridged, doubtful] = [new Set(document.bridged), new Set(document.doubtful)];
  return {
    contour: document.contour.map((at, index) => ({
      ...spot(at),
      weight: bridged.has(index) ? 0 : doubtful.has(index) ? DOUBTFUL_WEIGHT : 1,
    })),
    ...(document.innerNick && { innerNick: spot(document.innerNick) }),
    ...(document.outerNick && { outerNick: spot(document.outerNick) }),
  };
}

function misfit(at: string, { rmsMm, mostMm, misfits }: FittedHole): Finding {
  const far = misfits.filter((one) => one.rmsMm > NEAR_MM).toSorted((a, b) => b.rmsMm - a.rmsMm);
  const words = ({ place, rmsMm: rms, mostMm: most }: HoleMisfit): string =>
    `${place} ${rms.toFixed(2)} rms, ${most.toFixed(1)} at most`;
  return {
    weight: 'caution',
    code: 'draft.hole-misfit',
    at,
    found: `a traced hole that lies ${rmsMm.toFixed(2)} mm rms off the one drafted like it, ${mostMm.toFixed(1)} mm at most: ${far.map(words).join('; ')}`,
    need: `${NEAR_MM} mm rms or less on every stretch`,
    remedy:
      'look at these stretches in the photograph: something may lie over them; or correct the numbers by hand',
  };
}

function notDrafted(at: string): Finding {
  return {
    weight: 'caution',
    code: 'draft.hole-not-drafted',
    at,
    found: 'a traced hole that no drafted one comes near',
    need: 'a hole with two eyes, a stem and two wings',
    remedy: 'the family’s hole is used; photograph the top without strings, or measure the hole by hand',
  };
}

/** Thousandths of a millimetre. */
function rounded(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
