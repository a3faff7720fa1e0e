import { accept, type Checked, type Finding, refuse } from '../../base/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import type { RegisterEntry } from '../../quantity/index.ts';
import type { PlateArch } from '../arching/index.ts';
import { type BlockWood, blockWood, type NeckBody } from './blockWood.ts';
import { type BoardHollow, boardHollow } from './boardHollow.ts';
import { type BoardScoop, boardScoop } from './boardScoop.ts';
import { type Button, buttonOf } from './button.ts';
import { type MortiseInRibs, mortiseInRibs } from './mortiseInRibs.ts';
import { neckFindings } from './neckFindings.ts';
import { neckOfDesign, type SetNeck } from './neckOfDesign.ts';
import { neckEntries } from './neckRegister.ts';
import { type NeckShape, neckShape } from './neckShape.ts';

/** Neck and fingerboard: how they are set, and their shape. */
export interface Neck extends SetNeck {
  readonly shape: NeckShape;
  readonly button: Button;
  readonly block: BlockWood;
  readonly inRibs: MortiseInRibs;
  readonly scoop: BoardScoop;
  /** Null where the board is no thicker than the roof that is asked for. */
  readonly hollow: BoardHollow | null;
  readonly findings: readonly Finding[];
  readonly registerEntries: readonly RegisterEntry[];
}

/** Neck and fingerboard of a design. Faults: those of {@link neckOfDesign} and {@link neckShape}, and `neck.button`. */
export function neckPart(design: Design, top: PlateArch, body: NeckBody): Checked<Neck> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const set = neckOfDesign(design, top);
  if (!set.ok) return set;
  const shape = neckShape(set.value, {
    atNutMm: value('neckThicknessNut'),
    atHeelMm: value('neckThicknessHeel'),
    heelStartMm: value('heelStart'),
    buttonWidthMm: value('buttonWidth'),
    buttonHeightMm: value('buttonHeight'),
    ...(design.values.rootWidthTop && { rootWidthTopMm: value('rootWidthTop') }),
    ...(design.values.rootWidthBack && { rootWidthBackMm: value('rootWidthBack') }),
  });
  const button = buttonOf(
    body.outline.half.upperBout,
    body.outline.bodyLengthMm,
    value('buttonWidth'),
    value('buttonHeight'),
  );
  if (!shape.ok) return shape;
  const inRibs = mortiseInRibs(set.value, shape.value.root, body.ribs);
  if (!button || !inRibs)
    return refuse({
      code: 'neck.button',
      at: 'buttonWidth',
      found: `a button ${value('buttonWidth')} mm wide and a root ${shape.value.root.edgeWidthMm.toFixed(1)} mm wide at the edge of the top`,
      need: 'both narrower than the upper end of the body',
      remedy: 'correct the width of the button, or those of the fingerboard that the root follows',
    });
  const { board, neckStopMm } = set.value.sizes;
  const parts = {
    ...set.value,
    shape: shape.value,
    button,
    block: blockWood(set.value, shape.value.root, body),
    inRibs,
    scoop: boardScoop(board, value('boardScoopBass'), value('boardScoopTreble')),
    hollow: boardHollow(board, neckStopMm, value('boardRoof')),
  };
  return accept({
    ...parts,
    findings: [...set.value.findings, ...neckFindings(design, parts)],
    registerEntries: neckEntries({
      ...parts,
      rootGiven: (['rootWidthTop', 'rootWidthBack'] as const).filter((name) => design.values[name]),
    }),
  });
}
