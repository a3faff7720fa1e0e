import type { PlanParts } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';
import { stackedLettering } from './stackedLettering.ts';

/** mm at the usual size: depth of a step, wood beside and below the fork. */
const STEP_MM = 9;
const WALL_MM = 10;
const BASE_MM = 18;

/** mm. Heights nearer to each other than a maker can plane have one step. */
const APART_MM = 0.05;

/** A fork that the garland is passed through: one step for the height at the lower end, at both corners and at the neck. */
export function ribHeightGaugeDrawing(parts: PlanParts): Drawing {
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const steps = stepsOf(parts);
  const [wall, base, step] = [WALL_MM * scale, BASE_MM * scale, STEP_MM * scale];
  const mostMm = steps[0]?.heightMm ?? 0;
  const width = mostMm + 2 * wall;
  const height = base + steps.length * step;
  const inner = steps.flatMap(({ heightMm }, index) => {
    const x = wall + heightMm;
    return [
      { x, y: height - index * step },
      { x, y: height - (index + 1) * step },
    ];
  });
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    ...inner,
    { x: wall, y: base },
    { x: wall, y: height },
    { x: 0, y: height },
  ];
  return {
    name: 'rib-height-gauge',
    title: 'Rib height gauge',
    part: 'ribs',
    lines: [
      { meaning: 'cut', chain: { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) } },
    ],
    lettering: stackedLettering(
      [
        'RIB HEIGHT',
        parts.name,
        ...steps.map(({ heightMm, names }) => `${heightMm.toFixed(1)} ${names.join(', ')}`),
      ],
      { min: { x: 2.5, y: 2.5 }, max: { x: width - 2.5, y: base - 2.5 } },
    ),
    notes: [
      `Slide it over the standing ribs: it stops at the step of the height that they have. ${steps.map(({ heightMm, names }) => `${heightMm.toFixed(1)} mm at the ${names.join(' and the ')}`).join(', ')}. Between them the edge is straight when a flat board lies on it, which is not a straight line on the rib laid flat.`,
      CUTTING_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: width },
      { name: 'height', valueMm: height },
    ],
  };
}

/** Places of one height together, the greatest height first. */
function stepsOf({ ribs, outline }: PlanParts): readonly { heightMm: number; names: string[] }[] {
  const at = [
    ['lower end', ribs.heightTailMm],
    ['lower corners', ribs.heightAtMm(outline.lowerCorner.stationMm)],
    ['upper corners', ribs.heightAtMm(outline.upperCorner.stationMm)],
    ['neck', ribs.heightNeckMm],
  ] as const;
  const steps: { heightMm: number; names: string[] }[] = [];
  for (const [name, heightMm] of at.toSorted((a, b) => b[1] - a[1])) {
    const last = steps.at(-1);
    if (last && last.heightMm - heightMm < APART_MM) last.names.push(name);
    else steps.push({ heightMm, names: [name] });
  }
  return steps;
}
