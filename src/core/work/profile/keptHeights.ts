import { accept, type Checked, cos, type Point, sin } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { ArchReading, Design, MeasuredHeights } from '../../design/index.ts';
import { type Plate, plateGround, type StationName } from '../../instrument/index.ts';
import type { Estimate } from '../../surface/index.ts';

/** A fit to readings, as far as it says where they lay. */
interface PlacedFit {
  readonly baseMm: Estimate;
  readonly tiltRad: Estimate;
  readonly deviations: readonly { readonly fromMm: number; readonly toMm: number }[];
}

/** Readings across or along a plate, with the fit that says where they lay. */
export interface KeptReading {
  /** Where across the body they were taken; along the centre line where it is null. */
  readonly station: ArchReading['station'] | null;
  readonly points: readonly Point<'section'>[];
  /** Where along the reading the centre line or, of a long arch, the crest lies; about it a reading may be tilted. */
  readonly originMm: number;
  readonly fit: PlacedFit;
}

/** Readings of one plate that its surface is to be drawn to. */
export interface KeptReadings {
  readonly plate: Plate;
  readonly readings: readonly KeptReading[];
  readonly base: 'given' | 'free';
  readonly leaveOut: boolean;
  readonly plusMinusMm?: number;
  readonly source: string;
}

/**
 * The heights over a plate that readings give, each at its place: stations by name stand where the drafted body has them;
 * heights that do not count from the gluing face are lifted to the design's channel; stretches that the maker leaves out
 * of the fit draw nothing. Faults: those of the ground.
 */
export function keptHeights(
  design: Design,
  half: HalfOutline,
  kept: KeptReadings,
): Checked<MeasuredHeights | null> {
  const ground = plateGround(design.values, half);
  if (!ground.ok) return ground;
  const yOf = (name: StationName): number =>
    ground.value.places.find((place) => place.name === name)?.yMm ?? Number.NaN;
  const heights = kept.readings.flatMap((reading) => {
    const { station, originMm } = reading;
    const channelMm = kept.base === 'given' ? null : channelZMm(design, kept.plate);
    return reading.points
      .filter(({ x }) => !kept.leaveOut || !isMoved(reading, x))
      .map((at): readonly [number, number, number] => {
        const { along, z } = levelled(reading, at, channelMm);
        if (station === null) return [0, originMm + along, z];
        return [along, typeof station === 'string' ? yOf(station) : station.yMm, z];
      });
  });
  if (heights.length === 0) return accept(null);
  return accept({
    heights: heights.map(([x, y, z]) => [rounded(x), rounded(y), rounded(z)] as const),
    ...(kept.plusMinusMm !== undefined && { plusMinus: kept.plusMinusMm }),
    source: kept.source,
  });
}

/** A reading's place from its origin and its height over the gluing face; `channelMm`: what its own channel is to be. */
function levelled({ fit, originMm }: KeptReading, at: Point<'section'>, channelMm: number | null) {
  const across = at.x - originMm;
  if (channelMm === null) return { along: across, z: at.y };
  const over = at.y - fit.baseMm.value;
  const [c, s] = [cos(fit.tiltRad.value), sin(fit.tiltRad.value)];
  return { along: across * c + over * s, z: channelMm + over * c - across * s };
}

function isMoved({ fit }: KeptReading, x: number): boolean {
  return fit.deviations.some(({ fromMm, toMm }) => x >= fromMm && x <= toMm);
}

function channelZMm({ values }: Design, plate: Plate): number {
  const [edge, scoop] =
    plate === 'back'
      ? [values.edgeHeightBack, values.scoopDepthBack]
      : [values.edgeHeightTop, values.scoopDepthTop];
  return (edge?.value ?? Number.NaN) - (scoop?.value ?? Number.NaN);
}

/** A reading is known to tenths; thousandths keep what it is lifted by. */
function rounded(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
