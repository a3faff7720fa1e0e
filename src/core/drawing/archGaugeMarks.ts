import { WELD_MM } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import { type GaugePlace, insideLine, type PlateArch } from '../instrument/index.ts';
import type { DrawnLine } from './drawing.ts';

/** mm that a mark reaches up from the working edge. */
const MARK_MM = 6;

/** mm that the centre line stays clear of the hole. */
const CLEAR_MM = 1.5;

/** Centre line, and marks at the edges of the plate and at the channel's lowest points. */
export function crossMarks(
  arch: PlateArch,
  place: GaugePlace,
  body: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
): readonly DrawnLine[] {
  const { edgeHalfWidthMm, halfWidthMm } = place;
  return [
    ...centreMark(0, body, holes),
    ...[-edgeHalfWidthMm, edgeHalfWidthMm].map((x) => mark(x, arch.numbers.edgeHeightMm, MARK_MM)),
    ...[-halfWidthMm, halfWidthMm].flatMap((x) => upward(x, body, MARK_MM / 2)),
  ];
}

/** Middle of the long arch, ends of the body, channel ends, stations, and the bridge when the stop is known. */
export function longMarks(
  arch: PlateArch,
  body: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
  stopMm: number | undefined,
): readonly DrawnLine[] {
  const { startMm, endMm } = arch.longArch;
  const places = arch.stations.map(({ yMm }) => yMm);
  const bridgeMm = bridgePlace(arch, stopMm);
  if (bridgeMm !== undefined) places.push(bridgeMm);
  return [
    ...centreMark((startMm + endMm) / 2, body, holes),
    ...[0, arch.bodyLengthMm].map((y) => mark(y, arch.numbers.edgeHeightMm, MARK_MM)),
    ...[startMm, endMm].flatMap((y) => upward(y, body, MARK_MM / 2)),
    ...places.flatMap((y) => upward(y, body, MARK_MM)),
  ];
}

/** Where the bridge stands over the plate, mm above the lower end; only on a top whose stop is known. */
export function bridgePlace(arch: PlateArch, stopMm: number | undefined): number | undefined {
  return stopMm !== undefined && arch.plate === 'top' ? arch.bodyLengthMm - stopMm : undefined;
}

/** The centre line of a gauge, from its working edge to its back, clear of the hole. */
export function centreMark(
  x: number,
  body: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
): readonly DrawnLine[] {
  const box = boundsOf(body);
  const pieces = insideLine<'drawing'>({ x, y: box.min.y - 1 }, { x, y: box.max.y + 1 }, body, holes);
  return pieces.flatMap((chain): readonly DrawnLine[] => {
    const [from, to] = chain.vertices;
    if (!from || !to) return [];
    // The line stops short of the hole, so that the drill or the cut does not meet a scored line.
    const startY = pieces[0] === chain ? from.y : from.y + CLEAR_MM;
    const endY = box.max.y - to.y < WELD_MM ? to.y : to.y - CLEAR_MM;
    return [{ ...mark(x, startY, endY - startY), centreLine: true }];
  });
}

/** A mark that starts on the working edge at x. */
function upward(x: number, body: Chain<'drawing'>, lengthMm: number): readonly DrawnLine[] {
  const box = boundsOf(body);
  const [inside] = insideLine<'drawing'>({ x, y: box.min.y - 1 }, { x, y: box.max.y + 1 }, body);
  const from = inside?.vertices[0];
  return from ? [mark(x, from.y, lengthMm)] : [];
}

function mark(x: number, fromY: number, lengthMm: number): DrawnLine {
  return {
    meaning: 'score',
    chain: {
      closed: false,
      vertices: [
        { x, y: fromY, bulge: 0 },
        { x, y: fromY + lengthMm, bulge: 0 },
      ],
    },
  };
}
