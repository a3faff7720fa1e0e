import { distanceBetween, type Finding, type Point, WELD_MM } from '../../base/index.ts';
import {
  type Chain,
  containsPoint,
  type HalfOutline,
  lengthOf,
  nearestOn,
  nearestOnSpans,
  parallelChain,
  pointAlong,
  spansOf,
} from '../../curve/index.ts';

/** A round hole through the form for clamps and cauls. */
export interface ClampHole {
  readonly centre: Point<'body'>;
  readonly radiusMm: number;
  readonly side: 'treble' | 'bass';
  /** Least wood between the hole and the edge of the form or a recess. */
  readonly wallMm: number;
}

/** Sizes by which clamp holes are placed, mm. */
export interface ClampHoleRule {
  readonly radiusMm: number;
  readonly wallMm: number;
  readonly pitchMm: number;
  /** Radius of the pin holes on the centre line, which clamp holes keep clear of. */
  readonly pinRadiusMm: number;
  /** From the edge of the plate to the edge of the form. */
  readonly formInsetMm: number;
}

/** Wood between two holes, as a share of the wall asked for at the edge. */
const WALL_BETWEEN_SHARE = 0.6;

/** mm. Step at which a line of holes is searched for free stretches; finer than any wall that matters. */
const SEARCH_MM = 1;

/** Halvings of a search step: ends stretches to far below WELD_MM. */
const HALVINGS = 32;

/**
 * Clamp holes for both sides, treble first, lower end first.
 *
 * Their centres lie on lines parallel to the three sections, one wall and one radius inside the form; on every stretch
 * of such a line that keeps this distance from the whole edge (recess faces included) and stays clear of the centre line they stand
 * evenly from end to end, near the wished pitch, so the first and last sit close to blocks where clamps are wanted.
 * Findings: `form.no-clamp-holes` for a section that is too tight for any.
 */
export function clampHoles(
  half: HalfOutline,
  form: Chain<'body'>,
  rule: ClampHoleRule,
): { readonly holes: readonly ClampHole[]; readonly findings: readonly Finding[] } {
  const treble: ClampHole[] = [];
  const findings: Finding[] = [];
  for (const [section, name] of SECTIONS) {
    const guide = parallelChain(half[section], rule.formInsetMm + rule.wallMm + rule.radiusMm);
    const centres = guide.ok ? centresOn(guide.value, form, rule) : [];
    if (centres.length === 0) findings.push(noHoles(name, rule));
    for (const centre of centres) {
      if (treble.every((hole) => isClear(hole.centre, centre, rule)))
        treble.push({
          centre,
          radiusMm: rule.radiusMm,
          side: 'treble',
          wallMm: nearestOn(form, centre).distanceMm - rule.radiusMm,
        });
    }
  }
  const bass = treble.map(
    (hole): ClampHole => ({ ...hole, side: 'bass', centre: { x: -hole.centre.x, y: hole.centre.y } }),
  );
  return { holes: [...treble, ...bass], findings };
}

const SECTIONS = [
  ['lowerBout', 'lower bout'],
  ['cBout', 'waist'],
  ['upperBout', 'upper bout'],
] as const;

function centresOn(guide: Chain<'body'>, form: Chain<'body'>, rule: ClampHoleRule): Point<'body'>[] {
  return freeStretches(guide, form, rule).flatMap(([fromMm, toMm]) => {
    const lengthMm = toMm - fromMm;
    if (lengthMm < rule.pitchMm / 2) return [pointAlong(guide, (fromMm + toMm) / 2)];
    const gaps = Math.max(1, Math.round(lengthMm / rule.pitchMm));
    return Array.from({ length: gaps + 1 }, (_, at) => pointAlong(guide, fromMm + (lengthMm * at) / gaps));
  });
}

/** From and to, mm along the guide, of every stretch on which a hole may stand. */
function freeStretches(guide: Chain<'body'>, form: Chain<'body'>, rule: ClampHoleRule): [number, number][] {
  const spans = spansOf(form);
  const neededMm = rule.wallMm + rule.radiusMm - WELD_MM;
  const isFree = (alongMm: number): boolean => {
    const centre = pointAlong(guide, alongMm);
    return (
      centre.x >= rule.radiusMm + rule.wallMm / 2 + rule.pinRadiusMm - WELD_MM &&
      containsPoint(form, centre) &&
      nearestOnSpans(spans, centre, neededMm).distanceMm >= neededMm
    );
  };
  const totalMm = lengthOf(guide);
  const steps = Math.ceil(totalMm / SEARCH_MM);
  const stretches: [number, number][] = [];
  let openedMm: number | undefined;
  let wasFree = false;
  for (let step = 0; step <= steps; step++) {
    const alongMm = (totalMm * step) / steps;
    const free = isFree(alongMm);
    const beforeMm = (totalMm * (step - 1)) / steps;
    if (free && !wasFree) openedMm = step === 0 ? 0 : border(beforeMm, alongMm, isFree);
    if (!free && wasFree && openedMm !== undefined) {
      stretches.push([openedMm, border(alongMm, beforeMm, isFree)]);
      openedMm = undefined;
    }
    wasFree = free;
  }
  if (openedMm !== undefined) stretches.push([openedMm, totalMm]);
  return stretches;
}

/** The free end of the change between a barred and a free place. */
function border(barredMm: number, freeMm: number, isFree: (alongMm: number) => boolean): number {
  let [barred, free] = [barredMm, freeMm];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (barred + free) / 2;
    if (isFree(middle)) free = middle;
    else barred = middle;
  }
  return free;
}

function isClear(a: Point<'body'>, b: Point<'body'>, rule: ClampHoleRule): boolean {
  return distanceBetween(a, b) >= 2 * rule.radiusMm + WALL_BETWEEN_SHARE * rule.wallMm;
}

function noHoles(section: string, rule: ClampHoleRule): Finding {
  return {
    code: 'form.no-clamp-holes',
    weight: 'caution',
    at: 'clampHoleDiameter',
    found: `no room for a clamp hole of ${2 * rule.radiusMm} mm in the ${section}`,
    need: `${rule.wallMm} mm of wood round every hole`,
    remedy: 'take smaller clamp holes or a thinner wall',
  };
}
