import { compassTable } from '../../curve/index.ts';
import { type TraceDocument, toFile } from '../../files/index.ts';
import type { RestoredOutline } from '../../photo/index.ts';

type MeantPart = Pick<TraceDocument, 'wearMap' | 'leanMap' | 'arcFit' | 'corners' | 'compass'>;

/** How the outline as meant was made, as a trace's document holds it: place by place, arc by arc, corner by corner. */
export function meantDocument({ wearMap, lean, arcs, corners, half }: RestoredOutline): MeantPart {
  return {
    wearMap: wearMap.map(({ side, at, restoredMm, from }) => ({
      side,
      at: pair(at),
      restored: toFile(restoredMm),
      from,
    })),
    leanMap: lean.map(({ at, mm }) => ({ at: pair(at), lean: toFile(mm) })),
    arcFit: {
      kind: arcs.kind,
      count: arcs.count,
      misfits: arcs.misfits.map(({ section, fromMm, toMm, mm }) => ({
        section,
        from: toFile(fromMm),
        to: toFile(toMm),
        misfit: toFile(mm),
      })),
    },
    corners: {
      ...(corners.lower && { lower: corner(corners.lower) }),
      ...(corners.upper && { upper: corner(corners.upper) }),
    },
    compass: compassTable(half).map(({ section, radiusMm, centre, kind, from, to, onCentreLine }) => ({
      section,
      kind,
      radius: radiusMm,
      centre: centre && pair(centre),
      from: pair(from),
      to: pair(to),
      onCentreLine,
    })),
  };
}

function corner({
  widthMm,
  from,
  plusMinusMm,
  boutTip,
  waistTip,
}: NonNullable<RestoredOutline['corners']['lower']>) {
  return {
    width: toFile(widthMm),
    from,
    plusMinus: toFile(plusMinusMm),
    boutTip: pair(boutTip),
    waistTip: pair(waistTip),
  };
}

function pair({ x, y }: { readonly x: number; readonly y: number }): [number, number] {
  return [toFile(x), toFile(y)];
}
