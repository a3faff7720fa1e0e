import type { Finding } from '../../base/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import { neckRange, rangeFor } from '../../knowledge/index.ts';
import { originText } from '../../quantity/index.ts';
import type { BlockWood } from './blockWood.ts';
import type { BoardHollow } from './boardHollow.ts';
import { boardThickness } from './boardSection.ts';
import type { SetNeck } from './neckOfDesign.ts';
import type { NeckShape } from './neckShape.ts';

interface Parts extends SetNeck {
  readonly shape: NeckShape;
  readonly block: BlockWood;
  readonly hollow: BoardHollow | null;
}

/** No unit. Least wood behind the mortise, over the depth of the block; chosen by us. */
const BEHIND_TO_BLOCK = 0.5;

/** No unit. Least wood on either side of the mortise, over the width of the block; chosen by us. */
const BESIDE_TO_BLOCK = 0.1;

/** mm, at a neck stop of 130 mm. A tighter heel leaves a thumb no room; from memory. */
const LEAST_HEEL_MM = 15;
const HEEL_STOP_MM = 130;

/** No unit. Share of the string that must stay free between board and bridge for the bow; chosen by us: 45 mm of 325. */
const BOW_SHARE = 45 / 325;

/**
 * What is risky or unusual about a neck that can be made:
 *
 * - `neck.moved` (remark): what the set was solved to where a habit gave way to something given
 * - `neck.unusual` (remark): board end outside what is published
 * - `neck.mortise-shallow`, `neck.block-thin`, `neck.block-narrow`, `neck.mortise-lean` (cautions)
 * - `neck.heel-tight`, `board.long`, `board.diameter` (cautions), `board.solid` (remark)
 */
export function neckFindings(design: Design, parts: Parts): readonly Finding[] {
  return [
    ...movedFindings(design, parts),
    ...rangeFindings(design, parts),
    ...mortiseFindings(design, parts),
    ...heelFindings(parts),
    ...boardFindings(parts),
    ...diameterFindings(design, parts),
  ];
}

function movedFindings(design: Design, { sizes, met, questions }: Parts): readonly Finding[] {
  const solved = [
    ['neckStop', sizes.neckStopMm],
    ['overstand', sizes.overstandMm],
    ['projection', sizes.projectionMm],
  ] as const satisfies readonly (readonly [ValueName, number])[];
  return solved.flatMap(([name, mm]) => {
    const habit = design.values[name];
    if (!habit || met.some((one) => one.name === name) || Math.abs(mm - habit.value) < SHOWN_MM) return [];
    const asks = name === 'neckStop' ? 'lengths' : 'set';
    const by = questions.flatMap((one) => (one.asks === asks ? one.met.map((reading) => reading.name) : []));
    const names = by.join(', ');
    return [
      finding('neck.moved', 'remark', name, {
        found: `${shown(mm)} follows from ${names}; the habit of ${shown(habit.value)} is not used`,
        need: `its own figure, or what ${names} ${by.length > 1 ? 'ask' : 'asks'} for`,
        remedy: `keep it, or give ${name} yourself`,
      }),
    ];
  });
}

/** mm. What shows in a tenth. */
const SHOWN_MM = 0.05;

/**
 * What comes of the set, and what it was solved to where a habit gave way; a value that a maker gives is looked at where all
 * values are.
 */
function rangeFindings(design: Design, { set, sizes, met }: Parts): readonly Finding[] {
  const lengthMm = design.values.bodyLength?.value ?? Number.NaN;
  const { family } = design;
  const solved = (['overstand', 'projection'] as const).filter(
    (name) =>
      !met.some((one) => one.name === name) &&
      Math.abs(sizes[`${name}Mm`] - (design.values[name]?.value ?? Number.NaN)) > SHOWN_MM,
  );
  return [
    {
      at: 'boardLength',
      words: 'end of the fingerboard over the top',
      mm: set.boardEndOverTopMm,
      range: neckRange(family, 'boardEnd', lengthMm),
    },
    ...solved.map((name) => ({
      at: name,
      words: name,
      mm: sizes[`${name}Mm`],
      range: rangeFor(family, name, lengthMm),
    })),
  ].flatMap(({ at, words, mm, range }) => {
    if (!range || !(mm < range.low - SHOWN_MM || mm > range.high + SHOWN_MM)) return [];
    return [
      finding('neck.unusual', 'remark', at, {
        found: `${words} ${shown(mm)}, outside what is usual`,
        need: `usually ${shown(range.low)} to ${shown(range.high)} (${originText(range.origin)})`,
        remedy: 'keep it if it is meant; projection, overstand, arch and length of the board decide it',
      }),
    ];
  });
}

function mortiseFindings(design: Design, { block, mortise, shape, rootAngleRad }: Parts): readonly Finding[] {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const findings: Finding[] = [];
  if (!(Math.min(block.intoAtTopMm, block.intoAtBackMm) > 0))
    findings.push(
      finding('neck.mortise-shallow', 'caution', 'mortiseDepth', {
        found: `a mortise ${shown(mortise.depthAtTopMm)} deep at the top and ${shown(mortise.depthAtBackMm)} at the back that does not go through overhang and rib everywhere`,
        need: 'a root that is glued into the block',
        remedy: 'make the mortise deeper, or check the angle of the root',
      }),
    );
  if (!(block.behindMm > 0))
    findings.push(
      finding('neck.mortise-through', 'contradiction', 'mortiseDepth, upperBlockDepth, rootAngle', {
        found: `a mortise ${shown(Math.max(mortise.depthAtTopMm, mortise.depthAtBackMm))} deep from the edge, through an upper block that ends ${shown(Math.max(mortise.depthAtTopMm, mortise.depthAtBackMm) + block.behindMm)} from it`,
        need: 'a mortise that ends inside the block',
        remedy: 'correct its depth, the depth of the block, or the angle of the root',
      }),
    );
  else if (block.behindMm < BEHIND_TO_BLOCK * value('upperBlockDepth'))
    findings.push(
      finding('neck.block-thin', 'caution', 'mortiseDepth, upperBlockDepth', {
        found: `${shown(block.behindMm)} of the upper block behind the mortise, of ${shown(value('upperBlockDepth'))}`,
        need: `half of the block or more (chosen by us)`,
        remedy: 'make the upper block deeper, the mortise shallower, or the angle of the root smaller',
      }),
    );
  if (block.besideMm < BESIDE_TO_BLOCK * value('upperBlockWidth'))
    findings.push(
      finding('neck.block-narrow', 'caution', 'upperBlockWidth, boardWidthEnd', {
        found: `${shown(block.besideMm)} of the upper block beside a root ${shown(shape.root.edgeWidthMm)} wide`,
        need: 'a tenth of the block or more on either side (chosen by us)',
        remedy: 'make the upper block wider, or check the widths of the fingerboard',
      }),
    );
  if (!(mortise.leanRad >= 0))
    findings.push(
      finding('neck.mortise-lean', 'caution', 'rootAngle', {
        found: `a root at ${degrees(rootAngleRad)} to the fingerboard: the mortise gets shallower toward the back`,
        need: `${degrees(mortise.evenRootAngleRad)} or more, so that the pull of the strings closes the joint`,
        remedy: 'make the angle of the root larger',
      }),
    );
  return findings;
}

function heelFindings({ shape: { heel }, sizes }: Parts): readonly Finding[] {
  const leastMm = (LEAST_HEEL_MM * sizes.neckStopMm) / HEEL_STOP_MM;
  if (heel.upperRadiusMm >= leastMm) return [];
  return [
    finding('neck.heel-tight', 'caution', 'heelStart', {
      found: `a heel that turns round ${shown(heel.upperRadiusMm)}`,
      need: `${shown(leastMm)} or more, for the thumb (from memory)`,
      remedy: 'let the heel begin further from the body',
    }),
  ];
}

function boardFindings({ set, sizes, hollow }: Parts): readonly Finding[] {
  const { board, neckStopMm, bodyStopMm } = sizes;
  const freeMm = bodyStopMm - set.boardEndFromTopEndMm;
  const leastMm = BOW_SHARE * (neckStopMm + bodyStopMm);
  return [
    ...(freeMm < leastMm
      ? [
          finding('board.long', 'caution', 'boardLength', {
            found: `${shown(freeMm)} from the end of the fingerboard to the bridge`,
            need: `${shown(leastMm)} or more, for the bow (chosen by us)`,
            remedy: 'make the fingerboard shorter, or check its length',
          }),
        ]
      : []),
    ...(hollow
      ? []
      : [
          finding('board.solid', 'remark', 'boardRoof', {
            found: `a fingerboard ${shown(boardThickness(board, board.lengthMm))} thick at its end, no thicker than the wood to be left`,
            need: 'a thicker end, for a hollow under it',
            remedy: 'leave it solid, or make its sides higher',
          }),
        ]),
  ];
}

/** A round that is usual when halved was taken as a diameter. */
function diameterFindings(design: Design, { sizes: { board } }: Parts): readonly Finding[] {
  const range = rangeFor(design.family, 'boardRadius', design.values.bodyLength?.value ?? Number.NaN);
  const halfMm = board.radiusMm / 2;
  if (!range || !(halfMm >= range.low && halfMm <= range.high)) return [];
  return [
    finding('board.diameter', 'caution', 'boardRadius', {
      found: `a round of ${shown(board.radiusMm)}, twice what is usual`,
      need: `a radius, usually ${shown(range.low)} to ${shown(range.high)} (${originText(range.origin)})`,
      remedy:
        'halve it if it is the diameter; a flatter board is thinner in the middle and changes the projection',
    }),
  ];
}

function finding(
  code: string,
  weight: Finding['weight'],
  at: string,
  words: Pick<Finding, 'found' | 'need' | 'remedy'>,
): Finding {
  return { code, weight, at, ...words };
}

function shown(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}

function degrees(rad: number): string {
  return `${((rad * 180) / Math.PI).toFixed(1)}°`;
}
