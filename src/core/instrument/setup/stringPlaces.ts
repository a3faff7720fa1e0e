import { hypot } from '../../base/index.ts';
import type { StringSpread } from '../../design/index.ts';
import { boardThickness } from '../neck/boardSection.ts';
import { type NeckSetSizes, neckPlace } from '../neck/neckSet.ts';

/** What is known of a string before it lies anywhere: how thick it is, and how high it is to lie over the board. */
export interface StringHeights {
  readonly diameterMm: number;
  /** Its underside over the board, at the nut and at the board's end. */
  readonly overNutMm: number;
  readonly overEndMm: number;
}

/** Where a string lies. Across from the centre line, the side of the highest string positive; heights to its underside. */
export interface StringPlace extends StringHeights {
  readonly atNutMm: number;
  readonly atEndMm: number;
  readonly atBridgeMm: number;
  /** At the nut over the gluing face of the board. */
  readonly nutUpMm: number;
  /** At the bridge, over the top's crest there: the bottom of its slot. */
  readonly bridgeUpMm: number;
}

/** Of a string's thickness, how deep it lies in nut and bridge: a published rule for the cello's nut, from memory elsewhere. */
export const SLOT_SHARE = 1 / 3;

/**
 * Where the strings lie, from the lowest over: straight from the nut over the end of the board to the bridge.
 *
 * At nut and board's end each is as high over the round of the board as it is to be; straight on from there is its height at
 * the bridge. Between nut and bridge the strings spread evenly.
 */
export function stringPlaces(
  neck: NeckSetSizes,
  neckAngleRad: number,
  heights: readonly StringHeights[],
  spacing: { readonly nutMm: number; readonly bridgeMm: number; readonly spread: StringSpread },
): readonly StringPlace[] {
  const { board, bodyStopMm, archAtBridgeMm } = neck;
  const diameters = heights.map(({ diameterMm }) => diameterMm);
  const atNut = across(spacing.nutMm, diameters, spacing.spread);
  const atBridge = across(spacing.bridgeMm, diameters, spacing.spread);
  const place = (alongMm: number, upMm: number) => neckPlace(neck, neckAngleRad, alongMm, upMm);
  /** Top of the board at a distance from the nut and beside its middle, over its gluing face. */
  const boardUp = (alongMm: number, besideMm: number): number =>
    boardThickness(board, alongMm) - board.radiusMm + Math.sqrt(board.radiusMm ** 2 - besideMm ** 2);
  return heights.map((string, index) => {
    const [atNutMm, atBridgeMm] = [atNut[index] ?? 0, atBridge[index] ?? 0];
    const nutUpMm = boardUp(0, atNutMm) + string.overNutMm;
    const nut = place(0, nutUpMm);
    // How far out it is over the board's end depends on where that lies, which hardly depends on how high it is there.
    const endX = place(board.lengthMm, boardThickness(board, board.lengthMm)).xMm;
    const share = (endX - nut.xMm) / (bodyStopMm - nut.xMm);
    const atEndMm = atNutMm + (atBridgeMm - atNutMm) * share;
    const end = place(board.lengthMm, boardUp(board.lengthMm, atEndMm) + string.overEndMm);
    const bridgeUpMm =
      nut.zMm + ((end.zMm - nut.zMm) * (bodyStopMm - nut.xMm)) / (end.xMm - nut.xMm) - archAtBridgeMm;
    return { ...string, atNutMm, atEndMm, atBridgeMm, nutUpMm, bridgeUpMm };
  });
}

/** Centres of the strings across, from the lowest over, outermost a spacing apart. */
function across(spacingMm: number, diameters: readonly number[], spread: StringSpread): readonly number[] {
  const last = diameters.length - 1;
  if (spread === 'centres') return diameters.map((_, index) => spacingMm * (index / last - 1 / 2));
  const radii = diameters.map((diameterMm) => diameterMm / 2);
  const wood = radii.reduce((sum, radius) => sum + 2 * radius, 0) - (radii[0] ?? 0) - (radii[last] ?? 0);
  const gapMm = (spacingMm - wood) / last;
  let at = -spacingMm / 2;
  return radii.map((radius, index) => {
    const centre = at;
    at += radius + gapMm + (radii[index + 1] ?? 0);
    return centre;
  });
}

/** How high the top of each middle string stands over the line through the tops of its neighbours, from the lowest over; mm. */
export function bowingRoomsMm(strings: readonly StringPlace[]): readonly number[] {
  const tops = strings.map(({ atBridgeMm, bridgeUpMm, diameterMm }) => ({
    x: atBridgeMm,
    y: bridgeUpMm + diameterMm,
  }));
  return tops.slice(1, -1).map(({ x, y }, index) => {
    const [before, after] = [tops[index], tops[index + 2]];
    if (!before || !after) return Number.NaN;
    const slope = (after.y - before.y) / (after.x - before.x);
    return (y - before.y - slope * (x - before.x)) / hypot(1, slope);
  });
}

/**
 * How high a bow on an outer string passes over the edge of the plate, at a half width of it: the line through the tops of
 * the two outermost strings of that side, carried on. Over the crest of the top; mm.
 */
export function bowOverEdgeMm(
  strings: readonly StringPlace[],
  side: 'lowest' | 'highest',
  halfWidthMm: number,
): number {
  const ordered = side === 'lowest' ? strings.toReversed() : strings;
  const [inner, outer] = ordered.slice(-2);
  if (!inner || !outer) return Number.NaN;
  const top = ({ bridgeUpMm, diameterMm }: StringPlace): number => bridgeUpMm + diameterMm;
  const slope = (top(outer) - top(inner)) / (Math.abs(outer.atBridgeMm - inner.atBridgeMm) || Number.NaN);
  return top(outer) + slope * (halfWidthMm - Math.abs(outer.atBridgeMm));
}
