import type { RegisterEntry } from '../../quantity/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { plateValueNames } from './archNumbers.ts';
import { boardValueName, type RoughNumbers } from './roughNumbers.ts';

/** What roughing out a plate derives, as lines of the register. */
export function roughRegister(
  arch: PlateArch,
  rough: RoughNumbers,
  boardGiven: boolean,
): readonly RegisterEntry[] {
  const names = plateValueNames(arch.plate);
  const entry = (what: string, value: number, from: readonly string[], how: string): RegisterEntry => ({
    name: `${arch.plate}.${what}`,
    value,
    unit: 'mm',
    origin: { kind: 'derived', from, how },
  });
  const board = boardGiven
    ? entry('board', rough.boardMm, [boardValueName(arch)], 'the board as given')
    : entry('board', rough.boardMm, [names.arch, 'roughAllowance'], 'no board is given: arch and allowance');
  return [
    board,
    entry(
      'roughEdge',
      arch.numbers.edgeHeightMm + rough.allowanceMm,
      [names.edge, 'roughAllowance'],
      'flat edge of the roughed-out plate',
    ),
  ];
}
