import {
  accept,
  atan2,
  type Checked,
  cos,
  type Fault,
  type Point,
  point,
  refuse,
  tan,
} from '../../base/index.ts';
import { type Chain, joinChains } from '../../curve/index.ts';
import { boardThickness, boardWidth } from './boardSection.ts';
import { type HeelCurve, heelCurve } from './heelCurve.ts';
import type { SetNeck } from './neckOfDesign.ts';
import { type NeckSection, neckRound } from './neckSection.ts';
import { alongNeck } from './neckSet.ts';

/** What the shape of a neck is made from besides its set; mm. */
export interface NeckThicknesses {
  /** With the board. */
  readonly atNutMm: number;
  readonly atHeelMm: number;
  readonly heelStartMm: number;
  readonly buttonWidthMm: number;
  readonly buttonHeightMm: number;
  /** Of the root, where they are not those of the board carried on and of the button. */
  readonly rootWidthTopMm?: number;
  readonly rootWidthBackMm?: number;
}

/** The root of the neck, seen from the body: a trapezium that narrows from the gluing face of the board to the back. */
export interface NeckRoot {
  readonly topWidthMm: number;
  /** Where the edge of the top comes to lie: below the gluing face along the root's face, and the width there. */
  readonly edgeFromTopMm: number;
  readonly edgeWidthMm: number;
  readonly backWidthMm: number;
  /** Along the face of the root, from the gluing face of the board to that of the back. */
  readonly heightMm: number;
  /** From the nut along the gluing face to the face of the root. */
  readonly alongMm: number;
  /** Width of the neck where the plates end, at the gluing face: what the mouth of the mortise is cut for. */
  readonly mouthWidthMm: number;
}

/** The neck without its head. Section frame: x from the nut along the gluing face of the board, y over that face. */
export interface NeckShape {
  /** Closed, anticlockwise, as seen with the nut on the left. */
  readonly side: Chain<'section'>;
  readonly heel: HeelCurve;
  readonly root: NeckRoot;
  /** Half widths along the gluing face are those of the board: at the nut, and at the root's face. */
  readonly sections: readonly NeckSection[];
}

/** rad. The heel runs down to the button this steeply against the plane of the edge, toward the body. Chosen by us. */
const HEEL_END_RAD = (-86 * Math.PI) / 180;

/** No unit. Where the first section stands, over the length from nut to heel: clear of nut and chin. Chosen by us. */
const FIRST_SECTION = 0.06;

/**
 * The shape of a set neck. Its sides lie flush with those of the board; the heel ends at the tip of the button.
 *
 * Faults: `neck.thin` (no wood left under the board), `neck.heel`.
 */
export function neckShape(neck: SetNeck, sizes: NeckThicknesses): Checked<NeckShape> {
  const { board, neckStopMm, overstandMm } = neck.sizes;
  const angleRad = neck.set.neckAngleRad;
  const heelMm = neckStopMm - sizes.heelStartMm;
  const woodAt = (alongMm: number): number => {
    const share = alongMm / heelMm;
    const atNut = sizes.atNutMm - boardThickness(board, 0);
    const atHeel = sizes.atHeelMm - boardThickness(board, heelMm);
    return atNut + share * (atHeel - atNut);
  };
  const faults = thicknessFaults(sizes, woodAt(0), woodAt(heelMm), heelMm);
  if (faults.length > 0) return refuse(...faults);
  const on = (xMm: number, zMm: number): Point<'section'> => {
    const { alongMm, upMm } = alongNeck(neck.sizes, angleRad, xMm, zMm);
    return point(alongMm, upMm);
  };
  const { leanRad, depthAtTopMm, depthAtBackMm } = neck.mortise;
  const backZ = -neck.bodyHeightMm;
  const tip = on(-sizes.buttonHeightMm, backZ);
  const heel = heelCurve(
    {
      at: point(heelMm, -woodAt(heelMm)),
      headingRad: atan2(woodAt(0) - woodAt(heelMm), heelMm),
    },
    { at: tip, headingRad: HEEL_END_RAD - angleRad },
  );
  if (!heel.ok) return heel;
  // The face of the root meets the gluing face where x = depth − z tan(lean) and z = overstand + x tan(angle).
  const rootX = (depthAtTopMm - overstandMm * tan(leanRad)) / (1 + tan(leanRad) * tan(angleRad));
  const rootZ = overstandMm + rootX * tan(angleRad);
  const rootTop = on(rootX, rootZ);
  const side = joinChains<'section'>(
    straight(point(0, -woodAt(0)), point(heelMm, -woodAt(heelMm))),
    heel.value.chain,
    straight(tip, on(depthAtBackMm, backZ), point(rootTop.x, 0), point(0, 0)),
  );
  const heightMm = (rootZ - backZ) / cos(leanRad);
  const edgeFromTopMm = rootZ / cos(leanRad);
  const topWidthMm = sizes.rootWidthTopMm ?? boardWidth(board, rootTop.x);
  const backWidthMm = sizes.rootWidthBackMm ?? sizes.buttonWidthMm;
  const edgeWidthMm = topWidthMm + ((backWidthMm - topWidthMm) * edgeFromTopMm) / heightMm;
  return accept({
    side: { closed: true, vertices: side.vertices },
    heel: heel.value,
    root: {
      topWidthMm,
      edgeFromTopMm,
      edgeWidthMm,
      backWidthMm,
      heightMm,
      alongMm: rootTop.x,
      mouthWidthMm: boardWidth(board, neckStopMm),
    },
    sections: (
      [
        ['nut', FIRST_SECTION * heelMm],
        ['middle', heelMm / 2],
        ['heel', heelMm],
      ] as const
    ).map(([name, alongMm]): NeckSection => {
      const [widthMm, woodMm] = [boardWidth(board, alongMm), woodAt(alongMm)];
      const withBoardMm = woodMm + boardThickness(board, alongMm);
      return { name, alongMm, widthMm, woodMm, withBoardMm, ...neckRound(widthMm, woodMm) };
    }),
  });
}

function straight(...points: readonly Point<'section'>[]): Chain<'section'> {
  return { closed: false, vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

function thicknessFaults(
  sizes: NeckThicknesses,
  atNutMm: number,
  atHeelMm: number,
  heelMm: number,
): readonly Fault[] {
  const thin = (
    [
      ['neckThicknessNut', atNutMm],
      ['neckThicknessHeel', atHeelMm],
    ] as const
  ).filter(([, woodMm]) => !(woodMm > 0));
  return [
    ...thin.map(([at, woodMm]) => ({
      code: 'neck.thin',
      at,
      found: `a neck that leaves ${woodMm.toFixed(1)} mm of wood under the fingerboard`,
      need: 'a thickness that counts the fingerboard in, and more than it has',
      remedy: 'measure neck and fingerboard together, in the middle',
    })),
    ...(heelMm > 0 && sizes.heelStartMm > sizes.buttonHeightMm
      ? []
      : [
          {
            code: 'neck.heel',
            at: 'heelStart',
            found: `a heel that begins ${sizes.heelStartMm.toFixed(1)} mm from the edge of the top, with a button of ${sizes.buttonHeightMm.toFixed(1)} mm`,
            need: 'a heel that begins between the nut and the tip of the button',
            remedy: 'check where the heel begins, and the height of the button',
          },
        ]),
  ];
}
