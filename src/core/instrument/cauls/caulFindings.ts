import type { Finding } from '../../base/index.ts';
import type { Caul, CaulName } from './caul.ts';

/** rad. A clamp that pulls further than this from square slides along its caul; chosen by us. */
const MOST_ASIDE_RAD = Math.PI / 5;

/** Cauls behind which no clamp hole lies square enough; the blocks at the ends are pressed by clamps on their own faces. */
export function caulFindings(cauls: readonly Caul[]): Finding[] {
  return cauls.flatMap(({ name, clamp }): Finding[] => {
    if (!clamp || name.endsWith('block') || clamp.offSquareRad <= MOST_ASIDE_RAD) return [];
    return [
      {
        code: 'cauls.pull-aside',
        weight: 'remark',
        at: 'clampHolePitch',
        found: `the nearest clamp hole ${((clamp.offSquareRad * 180) / Math.PI).toFixed(0)}° aside of the caul for the ${name}`,
        need: 'a hole behind it, or the clamp slides along the caul',
        remedy: 'bear the clamp on a wedge under the caul, or move the clamp holes',
      },
    ];
  });
}

/** A caul whose hollow bends leave no room for its facing. */
export function noFace(name: CaulName): Finding {
  return {
    code: 'cauls.tight',
    weight: 'remark',
    at: 'caulFacing',
    found: `a bend too tight for the facing of the caul for the ${name}; it is left out`,
    need: 'a radius over 3 mm on the face of the caul',
    remedy: 'take a thinner facing',
  };
}
