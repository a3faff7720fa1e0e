import type { Design } from './design.ts';

/** Millimetres across from the centre line, up from the lower end, and the thickness there. */
export type AskedThickness = readonly [xMm: number, yMm: number, thicknessMm: number];

/** The single thicknesses that a design asks for on a plate, in its order. */
export function askedThicknesses({ thickness }: Design, plate: 'back' | 'top'): readonly AskedThickness[] {
  return thickness?.[plate]?.points ?? [];
}

/** The design with one of them changed; or with one more, where `index` is that of none. */
export function askThickness(
  design: Design,
  plate: 'back' | 'top',
  index: number,
  asked: AskedThickness,
): Design {
  const points = askedThicknesses(design, plate);
  return withPoints(
    design,
    plate,
    index < points.length ? points.map((one, place) => (place === index ? asked : one)) : [...points, asked],
  );
}

/** The design without one of them. */
export function dropThickness(design: Design, plate: 'back' | 'top', index: number): Design {
  return withPoints(
    design,
    plate,
    askedThicknesses(design, plate).filter((_, place) => place !== index),
  );
}

/** What says nothing is left out, so that a design with no points is the one that never had any. */
function withPoints(design: Design, plate: 'back' | 'top', points: readonly AskedThickness[]): Design {
  const { points: _, ...rest } = design.thickness?.[plate] ?? {};
  const layout = points.length === 0 ? rest : { ...rest, points };
  const { [plate]: __, ...others } = design.thickness ?? {};
  const thickness = Object.keys(layout).length === 0 ? others : { ...others, [plate]: layout };
  const { thickness: ___, ...bare } = design;
  return Object.keys(thickness).length === 0 ? bare : { ...bare, thickness };
}
