import type { WidthStation } from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, withName } from './headPiece.ts';
import { figure, straightChain, textBlock } from './neckPiece.ts';

/** mm on a head of 107 mm: depth of a slot, wood between slots, middle of the card between both rows. */
const SLOT_MM = 7;
const TOOTH_MM = 5;
const MIDDLE_MM = 21;
/** mm. */
const NUMBER_MM = 2;
const GAP_MM = 1.2;
const MARGIN_MM = 4;
/** No unit. Lettering on a comb against that on a card. */
const SMALL = 0.9;

/** Combs with a slot as wide as the head at each station: one from the chin to the throat, one for the inner turns. */
export function headCombDrawings({ head, plan }: HeadPlan): readonly Drawing[] {
  const { stations, bottomMm } = head.widths;
  const scale = headScale(head);
  const outer = stations.filter(({ alongMm }) => alongMm <= bottomMm);
  const inner = stations.filter(({ alongMm }) => alongMm > bottomMm);
  return [
    comb('head-comb-outer', 'Width comb, chin to throat', outer, plan.name, scale),
    ...(inner.length > 0
      ? [comb('head-comb-inner', 'Width comb, inner turns', inner, plan.name, scale)]
      : []),
  ];
}

function comb(
  name: string,
  title: string,
  stations: readonly WidthStation[],
  instrumentName: string,
  scale: number,
): Drawing {
  const [lower, upper] = inTwoRows(stations);
  const tooth = TOOTH_MM * scale;
  const rowMm = (row: readonly WidthStation[]): number =>
    row.reduce((sum, { widthMm }) => sum + widthMm + tooth, tooth);
  const longMm = Math.max(rowMm(lower), rowMm(upper));
  const highMm = (2 * SLOT_MM + MIDDLE_MM) * scale;
  const under = slotsOf(lower, tooth, 0, SLOT_MM * scale);
  const over = slotsOf(upper, tooth, highMm, highMm - SLOT_MM * scale);
  const body = straightChain(true, [
    [0, 0],
    ...under.flatMap(({ corners }) => corners),
    [longMm, 0],
    [longMm, highMm],
    ...over.toReversed().flatMap(({ corners }) => corners.toReversed()),
    [0, highMm],
  ]);
  const number = NUMBER_MM * Math.max(1, scale);
  const label = ({ station, middle }: Slot, y: number): Lettering => ({
    text: `${station.number}`,
    at: { x: middle, y },
    heightMm: number,
    turnRad: 0,
    anchor: 'middle',
  });
  return headPiece(name, title, body, {
    lettering: [
      ...under.map((slot) => label(slot, SLOT_MM * scale + GAP_MM)),
      ...over.map((slot) => label(slot, highMm - SLOT_MM * scale - GAP_MM - number)),
      ...textBlock(
        [title.toUpperCase(), withName(instrumentName, 2.8 * SMALL * scale, longMm - 2 * MARGIN_MM * scale)],
        { x: MARGIN_MM * scale, y: highMm / 2 + 4 * scale },
        longMm - 2 * MARGIN_MM * scale,
        { scale: SMALL * scale },
      ),
    ],
    notes: [
      `Each slot is as wide as the finished head at the station of its number: ${stations.map(({ number: n, widthMm }) => `${n}: ${figure(widthMm)}`).join(', ')} mm. Where it slips over with no play the wood is right; where it does not go on, wood is still to go.`,
    ],
  });
}

interface Slot {
  readonly station: WidthStation;
  readonly middle: number;
  readonly corners: readonly (readonly [x: number, y: number])[];
}

function slotsOf(
  row: readonly WidthStation[],
  tooth: number,
  edgeMm: number,
  bottomMm: number,
): readonly Slot[] {
  let x = tooth;
  return row.map((station) => {
    const from = x;
    const to = from + station.widthMm;
    x = to + tooth;
    return {
      station,
      middle: (from + to) / 2,
      corners: [
        [from, edgeMm],
        [from, bottomMm],
        [to, bottomMm],
        [to, edgeMm],
      ],
    };
  });
}

/** The stations in two rows, in order, about as long as each other. */
function inTwoRows(
  stations: readonly WidthStation[],
): readonly [readonly WidthStation[], readonly WidthStation[]] {
  const whole = stations.reduce((sum, { widthMm }) => sum + widthMm, 0);
  let sum = 0;
  const split = stations.findIndex(({ widthMm }) => {
    sum += widthMm;
    return sum > whole / 2;
  });
  return [stations.slice(0, split + 1), stations.slice(split + 1)];
}
