import { tan } from '../base/index.ts';
import { heightOn } from '../curve/index.ts';
import { nutCrown } from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { blockHeightMm, figure, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { cardBelow, handed, nameInLines, type SetupSheet, setupPiece, tick } from './setupPiece.ts';

/** mm. Least width of a card; marks under the slots. */
const LEAST_MM = 60;
const MARK_MM = 3;

/** How far the top of the nut falls from the strings' edge toward the pegs. Chosen by us, near the run of the strings there. */
const BACK_FALL_DEG = 14;

/** The nut from the board's end and from its side, and feelers for the strings over the end of the board. */
export function nutDrawings(sheet: SetupSheet): readonly Drawing[] {
  return [nutFront(sheet), nutSide(sheet), stringFeelers(sheet)];
}

function nutFront(sheet: SetupSheet): Drawing {
  const { instrument, side, name } = sheet;
  const { setUp, neck } = instrument;
  const widthMm = neck.sizes.board.widthAtNutMm;
  const crown = handed(nutCrown(setUp.places, widthMm), side);
  const half = Math.max(LEAST_MM, widthMm + 4 * MARGIN_MM) / 2;
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [`NUT · ${figure(widthMm)} wide`, ...nameInLines(name, roomMm), 'seen from the board'];
  const bottomY = -MARGIN_MM - blockHeightMm(texts.length) - MARGIN_MM;
  const heights = setUp.places
    .map((place, index) => `${setUp.strings.strings[index]?.letter ?? ''} ${figure(place.overNutMm, 2)}`)
    .join(', ');
  return setupPiece('nut-front', 'Nut from the front', cardBelow(crown, half, bottomY), {
    scored: setUp.places.map(({ atNutMm }) => {
      const x = side * atNutMm;
      return tick(x, heightOn(crown, x) - MARK_MM, heightOn(crown, x));
    }),
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: -MARGIN_MM }, roomMm),
    notes: [
      `The shape on the card is the front of the nut, its foot on the gluing face of the neck, level with the shoulders of the card. Marks: slots, a third of each string deep; their bottoms are ${heights} mm over the board. File toward the pegs, so that a string bears at the very edge of the board; leave the slots 0.2 mm high until the strings are on.`,
    ],
  });
}

function nutSide(sheet: SetupSheet): Drawing {
  const { instrument, name } = sheet;
  const { setUp, neck, design } = instrument;
  const crown = nutCrown(setUp.places, neck.sizes.board.widthAtNutMm);
  const highMm = heightOn(crown, 0);
  const depthMm = design.values.nutDepth?.value ?? 0;
  const fallMm = depthMm * tan((BACK_FALL_DEG * Math.PI) / 180);
  const half = LEAST_MM / 2;
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [
    `NUT · middle ${figure(highMm)} high, ${figure(depthMm)} deep`,
    ...nameInLines(name, roomMm),
    'board to the right, pegs to the left',
  ];
  const bottomY = -MARGIN_MM - blockHeightMm(texts.length) - MARGIN_MM;
  const top = straightChain(false, [
    [-depthMm / 2, highMm - fallMm],
    [depthMm / 2, highMm],
  ]);
  return setupPiece('nut-side', 'Nut from the side', cardBelow(top, half, bottomY), {
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: -MARGIN_MM }, roomMm),
    notes: [
      `The section through the middle of the nut, its foot level with the shoulders of the card. Its front stands square against the end of the board; its top falls ${BACK_FALL_DEG}° toward the pegs (our choice) and is rounded by hand.`,
    ],
  });
}

/** mm. A tongue of the feelers, and the gap between two. */
const TONGUE_MM = { long: 16, gap: 5 };

function stringFeelers({ instrument, name }: SetupSheet): Drawing {
  const { places, strings } = instrument.setUp;
  const half = LEAST_MM / 2;
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = ['STRINGS · over the end of the board', ...nameInLines(name, roomMm)];
  const tongues = places.map(({ overEndMm }, index) => ({
    letter: strings.strings[index]?.letter ?? '',
    thickMm: overEndMm,
  }));
  const [bass, treble] = [tongues.slice(0, 2), tongues.slice(2).reverse()];
  const labelMm = 2.4;
  const stack = (pair: typeof tongues) => {
    let y = TONGUE_MM.gap;
    return pair.map((tongue) => {
      const from = y;
      y += tongue.thickMm + TONGUE_MM.gap;
      return { ...tongue, fromMm: from, toMm: from + tongue.thickMm };
    });
  };
  const [left, right] = [stack(bass), stack(treble)];
  const tonguesTop = Math.max(...[...left, ...right].map(({ toMm }) => toMm)) + TONGUE_MM.gap;
  const highMm = tonguesTop + blockHeightMm(texts.length) + MARGIN_MM;
  const tongueCorners = (pair: ReturnType<typeof stack>, x: number, outward: number) =>
    pair.flatMap(({ fromMm, toMm }): [number, number][] => [
      [x, fromMm],
      [x + outward * TONGUE_MM.long, fromMm],
      [x + outward * TONGUE_MM.long, toMm],
      [x, toMm],
    ]);
  const body = straightChain(true, [
    [-half, 0],
    [half, 0],
    ...tongueCorners(right, half, 1),
    [half, highMm],
    [-half, highMm],
    ...tongueCorners(left, -half, -1).toReversed(),
  ]);
  const labels = [
    ...left.map((tongue) => ({ tongue, x: -half + MARGIN_MM, anchor: 'start' as const })),
    ...right.map((tongue) => ({ tongue, x: half - MARGIN_MM, anchor: 'end' as const })),
  ].map(
    ({ tongue, x, anchor }): Lettering => ({
      text: `${tongue.letter} ${tongue.thickMm.toFixed(1)}`,
      at: { x, y: (tongue.fromMm + tongue.toMm - labelMm) / 2 },
      heightMm: labelMm,
      turnRad: 0,
      anchor,
    }),
  );
  return setupPiece('string-feelers', 'Feelers for the strings', body, {
    lettering: [...labels, ...textBlock(texts, { x: -half + MARGIN_MM, y: highMm - MARGIN_MM }, roomMm)],
    notes: [
      `Each tongue is as thick as one string stands over the end of the board: pushed in from the side on its edge, it just touches board and string. ${tongues.map(({ letter, thickMm }) => `${letter} ${mm(thickMm)}`).join(', ')}; gut lies about half a millimetre higher (from memory).`,
    ],
  });
}
