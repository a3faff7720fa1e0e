import { type Chain, mirrorChain, placeChain, reverseChain } from '../curve/index.ts';
import { wrapEdge } from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, withName } from './headPiece.ts';
import { mm, straightChain, textBlock, upToLast } from './neckPiece.ts';

/** mm on a head of 107 mm. */
const TICK_MM = 1.6;
const NUMBER_MM = 1.7;
const GAP_MM = 0.9;
const TEXT_FROM_MM = 5;
/** No unit. Of the length from chin to top that the lettering may take. */
const TEXT_SHARE = 0.42;
/** No unit. Lettering on a band is small. */
const SMALL = 0.7;
/** mm. First line of a text block. */
const TITLE_MM = 3.4;
/** mm. What a laser can burn and an eye can read. */
const LEAST_MM = 1.25;

/**
 * The width of the head as a flexible band, laid flat: from the tip of the chin up the back, over the top and down the front of
 * the scroll to the throat. Drawing frame: x along it from the chin, y across.
 */
export function headWrapDrawing({ head, plan }: HeadPlan): Drawing {
  const { widths } = head;
  const scale = headScale(head);
  const upper = placeChain<'drawing', 'section'>(wrapEdge(widths), { turnRad: 0, shift: [0, 0] });
  const lower = acrossMirror(upper);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...upToLast(lower),
      { ...(lower.vertices.at(-1) as Chain<'drawing'>['vertices'][number]), bulge: 0 },
      ...reverseChain(upper).vertices,
    ],
  };
  const stations = widths.stations.filter(({ alongMm }) => alongMm > 0 && alongMm < widths.bottomMm);
  const lengthMm = widths.bottomMm;
  const heightMm = Math.max(LEAST_MM, NUMBER_MM * scale);
  const numbers = stations.map(
    ({ number, alongMm, widthMm }): Lettering => ({
      text: `${number}`,
      at: { x: alongMm + GAP_MM * scale, y: widthMm / 2 - TICK_MM * scale - heightMm },
      heightMm,
      turnRad: 0,
      anchor: 'start',
    }),
  );
  const roomMm = TEXT_SHARE * widths.topMm;
  const lettered = (text: string, y: number): readonly Lettering[] =>
    textBlock([text], { x: TEXT_FROM_MM * scale, y }, roomMm, { scale: SMALL * scale });
  return headPiece('head-wrap', 'Head, wrap', body, {
    scored: [
      straightChain(false, [
        [0, 0],
        [lengthMm, 0],
      ]),
      ...stations.flatMap(({ alongMm, widthMm }) =>
        [-1, 1].map((side) =>
          straightChain(false, [
            [alongMm, (side * widthMm) / 2],
            [alongMm, side * (widthMm / 2 - TICK_MM * scale)],
          ]),
        ),
      ),
    ],
    lettering: [
      ...lettered(
        withName(plan.name, TITLE_MM * SMALL * scale, roomMm, { before: 'HEAD WRAP · ' }),
        4 * scale,
      ),
      ...lettered(`chin at this end, ${mm(lengthMm)} to the throat`, -1.4 * scale),
      ...numbers,
    ],
    notes: [
      `Cut it from thin card or drawing film and bend it round the sawn head, its line on the centre line of the block: this end at the tip of the chin, up the back, over the top and down the front of the scroll to the throat, ${mm(lengthMm)} in all. At every numbered mark it must meet that of the side template; where it creeps, card of 0.2 mm gains about 0.7 mm on the way, shift it back to the marks. Draw along both edges.`,
      'What lies farther in along the spiral is set off with the width comb, from the table of widths.',
    ],
  });
}

/** The mirror image in y = 0, run the same way. */
function acrossMirror(chain: Chain<'drawing'>): Chain<'drawing'> {
  const turned = placeChain<'drawing', 'drawing'>(mirrorChain(chain), { turnRad: Math.PI, shift: [0, 0] });
  return turned;
}
