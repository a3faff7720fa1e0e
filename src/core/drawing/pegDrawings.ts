import type { Drawing, Lettering } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, holeAt, withName } from './headPiece.ts';
import { figure, mm, straightChain, textBlock } from './neckPiece.ts';

/** mm on a head of 107 mm: the strip of the sight, its hook at the nut, and how far it goes on beyond the last hole. */
const STRIP_MM = 13;
const HOOK_MM = 4;
const HOOK_LONG_MM = 7;
const BEYOND_MM = 7;
/** mm. A pencil point or a scriber goes through. */
const SIGHT_MM = 1;
/** No unit. */
const SMALL = 0.75;

/** mm. Arms of the taper gauge beside the slot, what it takes over and under the pegs, and its end beyond the slot. */
const ARM_MM = 11;
const OVER_MM = 0.8;
const END_MM = 9;
const STEP_MM = 0.5;
const TICK_MM = 2.5;
const LETTER_MM = 2;

/** The sight for the peg holes and the gauge of the pegs' taper. */
export function pegDrawings(plan: HeadPlan): readonly Drawing[] {
  return [sight(plan), taperGauge(plan)];
}

/** A strip that hooks on the front of the pegbox at the nut, with a hole at each peg's distance. */
function sight({ head, plan }: HeadPlan): Drawing {
  const { pegs, strings } = head;
  const scale = headScale(head);
  const half = (STRIP_MM * scale) / 2;
  const endMm = (pegs.at(-1)?.fromNutMm ?? 0) + BEYOND_MM * scale;
  const hook = HOOK_LONG_MM * scale;
  const body = straightChain(true, [
    [-hook, -half - HOOK_MM * scale],
    [0, -half - HOOK_MM * scale],
    [0, -half],
    [endMm, -half],
    [endMm, half],
    [-hook, half],
  ]);
  const labels = pegs.map(({ number, fromNutMm }): Lettering => {
    const letter = strings.find(({ peg }) => peg === number)?.letter ?? '';
    return {
      text: `${letter} ${figure(fromNutMm)}`,
      at: { x: fromNutMm, y: -half + 1.4 * scale },
      heightMm: LETTER_MM * Math.min(1, scale),
      turnRad: 0,
      anchor: 'middle',
    };
  });
  const heads = strings.map(({ letter, side }) => `${letter} ${side < 0 ? 'left' : 'right'}`);
  return headPiece('peg-sight', 'Peg holes, sight', body, {
    windows: pegs.map(({ fromNutMm }) => holeAt({ x: fromNutMm, y: 0 }, SIGHT_MM)),
    lettering: [
      ...labels,
      ...textBlock(
        [
          withName(plan.name, 3.4 * SMALL * scale, endMm - 4 * scale, {
            before: 'PEG HOLES · ',
            after: ' · hook at the nut',
          }),
        ],
        { x: 2 * scale, y: half - 1.4 * scale },
        endMm - 4 * scale,
        { scale: SMALL * scale },
      ),
    ],
    notes: [
      `Hook it on the front edge at the nut, lay it on the outside of the wall and swing it until a hole lies over the height that the side template pricked: middle of each hole from the nut, straight. Heads of the pegs: ${heads.join(', ')}, looking at the front with the scroll up. Drill small and square to the middle of the head from both sides, then ream.`,
    ],
  });
}

/** A plate with a slot that narrows as the pegs do. */
function taperGauge({ head, plan }: HeadPlan): Drawing {
  const { pegs } = head;
  const [first] = pegs;
  const large = (first?.largeMm ?? 0) + OVER_MM;
  const small = Math.min(...pegs.map(({ smallMm }) => smallMm)) - OVER_MM;
  const { taper } = head.pegSizes;
  const longMm = (large - small) * taper;
  const half = large / 2 + ARM_MM;
  const endMm = longMm + END_MM;
  // Open on the left, where the slot is widest.
  const body = straightChain(true, [
    [0, -half],
    [endMm, -half],
    [endMm, half],
    [0, half],
    [0, large / 2],
    [longMm, small / 2],
    [longMm, -small / 2],
    [0, -large / 2],
  ]);
  const steps = diameters(small, large).map((diameterMm) => ({
    diameterMm,
    x: (large - diameterMm) * taper,
  }));
  return headPiece('peg-taper', 'Pegs, taper', body, {
    scored: steps.map(({ diameterMm, x }) =>
      straightChain(false, [
        [x, diameterMm / 2],
        [x, diameterMm / 2 + TICK_MM],
      ]),
    ),
    lettering: [
      ...steps.map(
        ({ diameterMm, x }): Lettering => ({
          text: diameterMm.toFixed(1),
          at: { x, y: diameterMm / 2 + TICK_MM + 1 },
          heightMm: LETTER_MM,
          turnRad: 0,
          anchor: 'middle',
        }),
      ),
      ...textBlock(
        [`PEGS · taper 1 in ${figure(taper)}`, withName(plan.name, 2.8 * SMALL, endMm - 8)],
        { x: 4, y: -large / 2 - 1.5 },
        endMm - 8,
        { scale: SMALL },
      ),
    ],
    notes: [
      `A finished peg pushed in sideways touches both edges all along: its taper is 1 in ${figure(taper)}, the same as the reamer’s. The figures are diameters. At the outside of the wall on the side of its head each peg measures ${mm(first?.largeMm ?? 0)}; at the other wall ${pegs.map(({ smallMm }) => figure(smallMm)).join(', ')} mm, from the nut on.`,
      'Read it against the reamer that you own: pegs, reamer and shaper must have one taper.',
    ],
  });
}

function diameters(small: number, large: number): readonly number[] {
  const first = Math.ceil(small / STEP_MM + 0.2);
  const last = Math.floor(large / STEP_MM - 0.2);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * STEP_MM);
}
