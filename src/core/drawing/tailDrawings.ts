import { Bug } from '../base/index.ts';
import {
  biarc,
  bulgeOfSweep,
  type Chain,
  intersections,
  type Place,
  placeChain,
  subChain,
} from '../curve/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { blockHeightMm, corners, figure, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { letter, nameInLines, type SetupSheet, setupPiece, tick } from './setupPiece.ts';

/** mm. Least width of a card, a mark, and lettering at it. */
const LEAST_MM = 60;
const MARK_MM = 6;
const LETTER_MM = 2.4;

/** What stands behind the bridge: rules for after-length and tailpiece, the saddle and its seat, the taper of the end button. */
export function tailDrawings(sheet: SetupSheet): readonly Drawing[] {
  return [
    afterLengthRule(sheet),
    tailpieceRule(sheet),
    saddleSeat(sheet),
    saddleSection(sheet),
    endpinGauge(sheet),
  ];
}

function afterLengthRule({ instrument, name }: SetupSheet): Drawing {
  const { setUp } = instrument;
  const wideMm = setUp.afterLengthMm;
  const roomMm = wideMm - 2 * MARGIN_MM;
  const texts = [`AFTER-LENGTH ${figure(wideMm)}`, ...nameInLines(name, roomMm), 'bridge to tailpiece fret'];
  const highMm = blockHeightMm(texts.length) + 2 * MARGIN_MM;
  return setupPiece('after-length', 'After-length', rectangle(0, wideMm, 0, highMm), {
    lettering: textBlock(texts, { x: MARGIN_MM, y: highMm - MARGIN_MM }, roomMm),
    notes: [
      `As long as the strings are between the back of the bridge and the fret of the tailpiece: ${instrument.design.values.afterLength ? 'as asked for' : 'a sixth of the string, common practice'}. Draw the tailgut in or let it out until it fits.`,
    ],
  });
}

function tailpieceRule({ instrument, name }: SetupSheet): Drawing {
  const { setUp, design } = instrument;
  const { afterLengthMm, bridgeToSaddleMm: wideMm, tailpieceMostMm } = setUp;
  const marks = [
    { x: afterLengthMm, text: 'fret' },
    { x: afterLengthMm + tailpieceMostMm, text: 'its end, at most' },
  ];
  const roomMm = wideMm - 2 * MARGIN_MM;
  const texts = ['TAILPIECE · bridge to the left, saddle to the right', ...nameInLines(name, roomMm)];
  const highMm = MARK_MM + LETTER_MM + 2 * MARGIN_MM + blockHeightMm(texts.length);
  const given = design.values.tailpieceLength?.value;
  const gapMm = wideMm - afterLengthMm - (given ?? tailpieceMostMm);
  return setupPiece('tailpiece-rule', 'Tailpiece', rectangle(0, wideMm, 0, highMm), {
    scored: marks.map(({ x }) => tick(x, highMm - MARK_MM, highMm)),
    lettering: [
      ...marks.map(({ x, text }, index): Lettering => {
        const y = highMm - MARK_MM - LETTER_MM - 1;
        // The end lies near the saddle: its words stand before it.
        return index === 0
          ? letter(text, x, y, LETTER_MM)
          : { text, at: { x: wideMm - MARGIN_MM, y }, heightMm: LETTER_MM, turnRad: 0, anchor: 'end' };
      }),
      ...textBlock(texts, { x: MARGIN_MM, y: MARGIN_MM + blockHeightMm(texts.length) }, roomMm),
    ],
    notes: [
      `Held beside the strings, from the back of the bridge to the crest of the saddle, ${mm(wideMm)} along the strings. From its fret to its end the tailpiece may be ${mm(tailpieceMostMm)} long${given === undefined ? '; measure the one that you have and give it as "tailpieceLength"' : `; yours is ${mm(given)}`}, which leaves ${mm(gapMm)} of gut before the saddle (3 to 8 mm on a violin, from memory).`,
    ],
  });
}

function saddleSeat({ instrument, name, scale }: SetupSheet): Drawing {
  const { plan, design } = instrument;
  const value = (of: 'saddleWidth' | 'saddleDepth' | 'saddleGap'): number => design.values[of]?.value ?? 0;
  const seatHalf = value('saddleWidth') / 2 + value('saddleGap');
  const depthMm = value('saddleDepth');
  const half = Math.max(LEAST_MM / 2, seatHalf + 12 * scale);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [
    `SADDLE · seat ${figure(2 * seatHalf)} × ${figure(depthMm)}`,
    ...nameInLines(name, roomMm),
    'lower edge of the top, from outside',
  ];
  const topY = depthMm + MARGIN_MM + blockHeightMm(texts.length) + MARGIN_MM;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...lowerEdge(plan.outline.chain, -half, -seatHalf).vertices,
      ...corners([-seatHalf, depthMm], [seatHalf, depthMm]),
      ...lowerEdge(plan.outline.chain, seatHalf, half).vertices,
      ...corners([half, topY], [-half, topY]),
    ],
  };
  return setupPiece('saddle-seat', 'Seat of the saddle', body, {
    scored: [tick(0, depthMm, depthMm + MARGIN_MM - 1)],
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: topY - MARGIN_MM }, roomMm),
    notes: [
      `Laid on the top with its lower edge on the edge of the top and the mark on the joint: the notch is what is cut out, ${mm(depthMm)} deep from the edge on the centre line, down to ribs and block. It is ${mm(value('saddleGap'))} longer at either end than a saddle of ${mm(value('saddleWidth'))}: spruce shrinks across its grain and would crack at the ends of a tight one.`,
      'Score both ends with a knife before anything is sawn; do not cut into the lower block beyond the seat.',
    ],
  });
}

/** mm. Farther than the lower edge rises over the width of a saddle. */
const REACH_MM = 30;

/** The lower edge of the body between two places across, from left to right. */
function lowerEdge(outline: Chain<'body'>, fromX: number, toX: number): Chain<'drawing'> {
  const [from, to] = [fromX, toX].map((x) => {
    const upright: Chain<'body'> = {
      closed: false,
      vertices: [-REACH_MM, REACH_MM].map((y) => ({ x, y, bulge: 0 })),
    };
    const [crossing] = intersections(outline, upright);
    if (!crossing) throw new Bug(`no lower edge ${x} mm from the centre line`);
    return crossing.a;
  }) as [Place, Place];
  return placeChain<'drawing', 'body'>(subChain(outline, from, to), { turnRad: 0, shift: [0, 0] });
}

function saddleSection({ instrument, name }: SetupSheet): Drawing {
  const { design, plates } = instrument;
  const value = (of: 'saddleWidth' | 'saddleDepth' | 'saddleHeight' | 'saddleCrest'): number =>
    design.values[of]?.value ?? 0;
  const edgeMm = plates.top.numbers.edgeHeightMm;
  const [depthMm, crestMm] = [value('saddleDepth'), value('saddleCrest')];
  const highMm = edgeMm + value('saddleHeight');
  const half = LEAST_MM / 2;
  const x0 = -depthMm / 2;
  const roundMm = Math.min(crestMm, value('saddleHeight'));
  const texts = [
    `SADDLE · ${figure(highMm)} high, ${figure(depthMm)} deep`,
    ...nameInLines(name, 2 * half - 2 * MARGIN_MM),
    'edge of the top to the right',
  ];
  const bottomY = -MARGIN_MM - blockHeightMm(texts.length) - MARGIN_MM;
  const crest = { x: x0 + depthMm - roundMm, y: highMm };
  const inward = biarc<'drawing'>(crest, Math.PI, { x: x0, y: edgeMm }, (-100 * Math.PI) / 180);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-half, bottomY], [half, bottomY], [half, 0], [x0 + depthMm, 0]),
      { x: x0 + depthMm, y: highMm - roundMm, bulge: bulgeOfSweep(Math.PI / 2) },
      ...inward.vertices,
      ...corners([x0, 0], [-half, 0]),
    ],
  };
  return setupPiece('saddle-section', 'Saddle from its end', body, {
    scored: [
      straightChain(false, [
        [x0, edgeMm],
        [x0 + depthMm, edgeMm],
      ]),
    ],
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: -MARGIN_MM }, 2 * half - 2 * MARGIN_MM),
    notes: [
      `The section through the middle of the saddle, its foot on ribs and block, level with the shoulders of the card; the line is the edge of the top. ${mm(value('saddleHeight'))} over the edge, ${mm(value('saddleWidth'))} long, its ends rounded down to the edge. The crest is polished, so that the tailgut does not cut in.`,
    ],
  });
}

/** mm. Over and under the diameter that a tapered pin is let in to, and between two marks. */
const PIN_MM = { over: 1, under: 1, mark: 0.5, tick: 4 };

function endpinGauge({ instrument, name }: SetupSheet): Drawing {
  const { design } = instrument;
  const diameterMm = design.values.endpinDiameter?.value ?? 0;
  const taper = design.values.endpinTaper?.value ?? 1;
  const [wide, narrow] = [diameterMm + PIN_MM.over, diameterMm - PIN_MM.under];
  const deepMm = (wide - narrow) * taper;
  const half = Math.max(LEAST_MM / 2, wide / 2 + 22);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [`END BUTTON · taper 1:${figure(taper)}`, ...nameInLines(name, roomMm)];
  const baseY = blockHeightMm(texts.length) + 2 * MARGIN_MM;
  const topY = baseY + deepMm;
  const body = straightChain(true, [
    [-half, 0],
    [half, 0],
    [half, topY],
    [wide / 2, topY],
    [narrow / 2, baseY],
    [-narrow / 2, baseY],
    [-wide / 2, topY],
    [-half, topY],
  ]);
  const steps = Math.round((wide - narrow) / PIN_MM.mark);
  const marks = Array.from({ length: steps - 1 }, (_, index) => narrow + (index + 1) * PIN_MM.mark).map(
    (at) => ({ at, y: baseY + (at - narrow) * taper }),
  );
  return setupPiece('end-button-taper', 'Taper of the end button', body, {
    scored: marks.map(({ at, y }) =>
      straightChain(false, [
        [at / 2, y],
        [at / 2 + PIN_MM.tick, y],
      ]),
    ),
    lettering: [
      ...marks.map(
        ({ at, y }): Lettering => ({
          text: at.toFixed(1),
          at: { x: at / 2 + PIN_MM.tick + 1.5, y: y - LETTER_MM / 2 },
          heightMm: LETTER_MM,
          turnRad: 0,
          anchor: 'start',
        }),
      ),
      ...textBlock(texts, { x: -half + MARGIN_MM, y: baseY - MARGIN_MM }, roomMm),
    ],
    notes: [
      `The pin goes into the slot with its thin end first; where no light shows along both sides, its taper is 1:${figure(taper)}, and the marks read its diameter. At the ribs it is to be ${mm(diameterMm)}. Ream the hole from outside, turning only forward, and try often.`,
    ],
  });
}

function rectangle(fromX: number, toX: number, fromY: number, toY: number): Chain<'drawing'> {
  return straightChain(true, [
    [fromX, fromY],
    [toX, fromY],
    [toX, toY],
    [fromX, toY],
  ]);
}
