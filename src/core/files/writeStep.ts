import type { Board } from '../solid/index.ts';
import { stepFile } from './stepFile.ts';
import { stepLevelFace } from './stepGeometry.ts';
import { stepWalls } from './stepWalls.ts';

/** mm within which a reader may take places for one: these faces meet exactly. */
const UNCERTAINTY = '1.E-06';

/**
 * A board as a STEP file (ISO 10303-21, AP 214): one solid of exact faces, planes for its caps and straight sides and
 * cylinders for its arcs, in millimetres. The same board gives the same bytes.
 */
export function writeStep(title: string, { outer, holes, fromZMm, toZMm }: Board): string {
  return stepFile(title, UNCERTAINTY, (file) => {
    const walls = [
      stepWalls(file, outer, fromZMm, toZMm, 'outer'),
      ...holes.map((hole) => stepWalls(file, hole, fromZMm, toZMm, 'hole')),
    ];
    const top = stepLevelFace(
      file,
      toZMm,
      '.T.',
      walls.map(({ topLoop }) => topLoop),
    );
    const bottom = stepLevelFace(
      file,
      fromZMm,
      '.F.',
      walls.map(({ bottomLoop }) => bottomLoop),
    );
    const sides = walls.flatMap(({ faces }) => faces);
    return file.add(`CLOSED_SHELL('',(${[...sides, top, bottom].join(',')}))`);
  });
}
