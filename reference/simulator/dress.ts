import type { Chance } from './chance.ts';
import type { Instrument } from './instrument.ts';
import { bar, oval, type Slab } from './slab.ts';

/** How much is mounted on the body. */
export interface Dress {
  readonly neck: boolean;
  readonly strings: boolean;
  readonly chinRest: boolean;
  readonly fineTuners: boolean;
}

export const BARE: Dress = { neck: false, strings: false, chinRest: false, fineTuners: false };

const EBONY = [0.02, 0.017, 0.015] as const;
const MAPLE = [0.55, 0.36, 0.17] as const;
const BONE = [0.7, 0.62, 0.45] as const;
const STEEL = [0.5, 0.5, 0.5] as const;

/** The fittings of an instrument in its own frame, highest first. */
export function fittings(body: Instrument, dress: Dress, chance: Chance): Slab[] {
  const slabs = [
    ...(dress.neck ? neck(body, chance) : []),
    ...(dress.neck && body.face === 'top' ? board(body) : []),
    ...(dress.strings && body.face === 'top' ? strung(body, dress, chance) : []),
    ...(dress.strings && body.face === 'back' ? [endButton(body)] : []),
    ...(dress.chinRest ? chinRest(body, chance) : []),
  ];
  return slabs.sort((a, b) => b.topMm - a.topMm);
}

/** A violin's neck from the end of the body to the scroll, with its pegs, relative to a body of 355. */
function neck(body: Instrument, chance: Chance): Slab[] {
  const { edgeHeightMm: zc, halfThickMm, varnish } = body;
  const top = body.meant.lengthMm;
  const wood = {
    tone: [varnish.tone[0] * 1.05 + 0.08, varnish.tone[1] * 1.05 + 0.05, varnish.tone[2] + 0.02] as const,
    gloss: 0.05,
  };
  const box = { tone: varnish.tone, gloss: varnish.gloss };
  const isTop = body.face === 'top';
  const [high, low] = isTop ? [zc + 9, zc - 16] : [zc - halfThickMm + 0.2, zc - 28];
  const slabs: Slab[] = [
    bar({ ...wood, topMm: high, bottomMm: low }, [0, top - 2], [0, top + 132], [31, 24], false),
    bar({ ...box, topMm: high - 3, bottomMm: low }, [0, top + 130], [0, top + 178], [24, 18], false),
    oval({ ...box, topMm: high, bottomMm: low }, [0, top + 195], [15, 24]),
    oval({ ...box, topMm: high + 2, bottomMm: low }, [0, top + 200], [21, 10]),
  ];
  [146, 158, 168, 178].forEach((along, i) => {
    const side = i % 2 === 0 ? 1 : -1;
    const peg = { tone: EBONY, gloss: 0.1, topMm: high - 6, bottomMm: high - 13 };
    slabs.push(
      bar(peg, [-side * 14, top + along], [side * 34, top + along + chance.between(-2, 2)], [7, 7], true),
    );
    slabs.push(oval(peg, [side * 40, top + along], [9, 5 + 4 * chance.next()]));
  });
  if (!isTop)
    slabs.push(
      oval(
        { ...box, topMm: zc + halfThickMm, bottomMm: zc - halfThickMm },
        [0, top + 1],
        [11.5, 12.5],
        0,
        2.6,
      ),
    );
  return slabs;
}

function board(body: Instrument): Slab[] {
  const top = body.meant.lengthMm;
  const zc = body.edgeHeightMm;
  const wood = { tone: EBONY, gloss: 0.15 };
  return [
    bar({ ...wood, topMm: zc + 24, bottomMm: zc + 15 }, [0, top - 138], [0, top - 20], [42, 35], false),
    bar({ ...wood, topMm: zc + 17, bottomMm: zc + 8 }, [0, top - 22], [0, top + 131], [35, 24], false),
    bar(
      { tone: BONE, gloss: 0.05, topMm: zc + 18, bottomMm: zc + 8 },
      [-12, top + 132.5],
      [12, top + 132.5],
      [5, 5],
      false,
    ),
  ];
}

function strung(body: Instrument, { fineTuners }: Dress, chance: Chance): Slab[] {
  const zc = body.edgeHeightMm;
  const top = body.meant.lengthMm;
  const stop = top - 195;
  const tail = { tone: chance.oneOf([EBONY, [0.12, 0.05, 0.02]] as const), gloss: 0.12 };
  const slabs: Slab[] = [
    bar(
      { tone: MAPLE, gloss: 0.02, topMm: zc + 46, bottomMm: zc + 14 },
      [-20, stop],
      [20, stop],
      [3.5, 3.5],
      true,
    ),
    bar(
      { tone: MAPLE, gloss: 0.02, topMm: zc + 22, bottomMm: zc + 13 },
      [-21, stop],
      [21, stop],
      [6, 6],
      true,
    ),
    bar({ ...tail, topMm: zc + 28, bottomMm: zc + 20 }, [0, 14], [0, 105], [22, 40], false),
    oval({ ...tail, topMm: zc + 28, bottomMm: zc + 20 }, [0, 105], [20, 10]),
    bar({ tone: EBONY, gloss: 0.05, topMm: zc + 6, bottomMm: zc - 1 }, [-17, 2.6], [17, 2.6], [6, 6], false),
    bar({ tone: EBONY, gloss: 0, topMm: zc + 8, bottomMm: zc + 5 }, [-5, -5], [-6, 18], [1.6, 1.6], true),
    bar({ tone: EBONY, gloss: 0, topMm: zc + 8, bottomMm: zc + 5 }, [5, -5], [6, 18], [1.6, 1.6], true),
    endButton(body),
  ];
  [-16, -5.5, 5.5, 16].forEach((at, i) => {
    const wire = { tone: STEEL, gloss: 0.3, topMm: zc + 40, bottomMm: zc + 39 };
    slabs.push(bar(wire, [at, stop], [at * 0.5, top + 133], [1.1 - 0.15 * i, 0.9 - 0.12 * i], false));
    slabs.push(
      bar({ ...wire, topMm: zc + 38, bottomMm: zc + 37 }, [at * 0.85, 108], [at, stop], [1.2, 1.1], false),
    );
    if (fineTuners)
      slabs.push(
        oval({ tone: STEEL, gloss: 0.5, topMm: zc + 34, bottomMm: zc + 28 }, [at * 0.85, 96], [3.4, 4.4]),
      );
  });
  return slabs;
}

function endButton({ edgeHeightMm: zc }: Instrument): Slab {
  return oval({ tone: EBONY, gloss: 0.1, topMm: zc - 10, bottomMm: zc - 22 }, [0, -5], [6, 7]);
}

/** A cup left of the tailpiece that reaches over the edge of the top, with the clamp beyond it. */
function chinRest(body: Instrument, chance: Chance): Slab[] {
  const { edgeHeightMm: zc, face } = body;
  const side = face === 'top' ? -1 : 1;
  const tone = chance.oneOf([EBONY, [0.1, 0.04, 0.02], [0.03, 0.02, 0.015]] as const);
  const out = chance.between(2, 9);
  if (face === 'back')
    return [
      bar(
        { tone: STEEL, gloss: 0.4, topMm: zc + 5, bottomMm: zc + 1 },
        [side * 28, 5],
        [side * 28, -3],
        [6, 6],
        true,
      ),
      bar(
        { tone: STEEL, gloss: 0.4, topMm: zc + 5, bottomMm: zc + 1 },
        [side * 52, 14],
        [side * 55, 6],
        [6, 6],
        true,
      ),
    ];
  const cup = { tone, gloss: 0.2, topMm: zc + chance.between(26, 34), bottomMm: zc + 8 };
  return [
    oval(
      cup,
      [side * chance.between(46, 58), 40 - out],
      [chance.between(38, 46), chance.between(29, 34)],
      side * chance.between(-0.5, -0.1),
      2.3,
    ),
    bar({ ...cup, topMm: zc + 18 }, [side * 14, 12], [side * 40, 14], [20, 22], true),
    bar(
      { tone: STEEL, gloss: 0.4, topMm: zc + 8, bottomMm: zc - 32 },
      [side * 30, -3],
      [side * 46, 0],
      [4, 4],
      true,
    ),
  ];
}

/** A bow that lies on the ground, in the room's frame: stick, hair and frog. */
export function bow(from: readonly [number, number], turnRad: number, chance: Chance): Slab[] {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const place = (along: number, across: number) =>
    [from[0] + along * c - across * s, from[1] + along * s + across * c] as const;
  const wood = chance.oneOf([
    [0.2, 0.06, 0.02],
    [0.1, 0.03, 0.015],
  ] as const);
  return [
    bar({ tone: EBONY, gloss: 0.1, topMm: 11, bottomMm: 1 }, place(12, -8), place(58, -8), [17, 17], false),
    bar({ tone: wood, gloss: 0.2, topMm: 9, bottomMm: 2 }, place(0, 0), place(735, 0), [8.5, 6], true),
    bar(
      { tone: [0.75, 0.7, 0.6], gloss: 0, topMm: 7, bottomMm: 3 },
      place(55, -15),
      place(728, -15),
      [3.5, 3.5],
      false,
    ),
    bar({ tone: BONE, gloss: 0, topMm: 9, bottomMm: 2 }, place(728, 1), place(736, -17), [8, 8], true),
  ];
}
