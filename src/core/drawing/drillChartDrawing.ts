import type { Point } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';
import { ROUGHING_CAUTION } from './roughingCaution.ts';

/** A hole on a chart: where, how deep from the face that is drilled, and what is left under it to the table. */
export interface ChartHole {
  readonly at: Point<'drawing'>;
  readonly depthMm: number;
  readonly leftMm: number;
}

/** What a chart of holes shows. */
export interface DrillChartPlan {
  readonly name: string;
  readonly title: string;
  readonly part: Drawing['part'];
  /** Lines under the chart, the first larger. */
  readonly caption: readonly string[];
  /** Closed; its straight edge on the centre joint. */
  readonly edge: Chain<'drawing'>;
  /** Further lines to see the holes by, clear of their figures. */
  readonly guides?: readonly Chain<'drawing'>[];
  readonly holes: readonly ChartHole[];
  readonly pitchMm: number;
  readonly bodyLengthMm: number;
  readonly notes: readonly string[];
}

/** mm. Arms of a mark. */
const MARK_MM = 1;

/** Heights of the figures as shares of the pitch, and how wide they may be. */
const DEPTH_SHARE = 0.2;
const LEFT_SHARE = 0.15;
const WIDTH_SHARE = 0.8;

/** mm. Smaller figures cannot be read. */
const LEAST_MM = 1.25;

/** mm from a mark to its figures. */
const GAP_MM = 0.8;

/** Half a plate with every hole to drill: a mark, over it the depth, under it what is left, at true size. */
export function drillChartDrawing(plan: DrillChartPlan): Drawing {
  const box = boundsOf(plan.edge);
  return {
    name: plan.name,
    title: plan.title,
    part: plan.part,
    lines: [
      drawnLine('draw', plan.edge),
      ...(plan.guides ?? []).map((guide) => drawnLine('draw', guide)),
      ...plan.holes.flatMap(({ at }) => mark(at)),
    ],
    lettering: [
      ...plan.holes.flatMap((hole) => figures(hole, plan.pitchMm)),
      ...captionBelow(plan.caption, box.min, {
        scale: letteringScale(plan.bodyLengthMm),
        mostMm: box.max.x - box.min.x,
      }),
    ],
    notes: [...plan.notes, ROUGHING_CAUTION],
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

function mark({ x, y }: Point<'drawing'>): readonly DrawnLine[] {
  const line = (alongX: number, alongY: number): DrawnLine =>
    drawnLine('draw', {
      closed: false,
      vertices: [
        { x: x - alongX, y: y - alongY, bulge: 0 },
        { x: x + alongX, y: y + alongY, bulge: 0 },
      ],
    });
  return [line(MARK_MM, 0), line(0, MARK_MM)];
}

function figures({ at, depthMm, leftMm }: ChartHole, pitchMm: number): readonly Lettering[] {
  const depth = sized(depthMm.toFixed(1), DEPTH_SHARE, pitchMm);
  const left = sized(`(${leftMm.toFixed(1)})`, LEFT_SHARE, pitchMm);
  const out = MARK_MM + GAP_MM;
  return [
    { ...depth, at: { x: at.x, y: at.y + out }, turnRad: 0, anchor: 'middle' },
    { ...left, at: { x: at.x, y: at.y - out - left.heightMm }, turnRad: 0, anchor: 'middle' },
  ];
}

function sized(text: string, share: number, pitchMm: number): Pick<Lettering, 'text' | 'heightMm'> {
  const wished = Math.max(LEAST_MM, share * pitchMm);
  const widthMm = letteringWidthMm({ text, heightMm: wished });
  return { text, heightMm: Math.max(LEAST_MM, Math.min(wished, (wished * WIDTH_SHARE * pitchMm) / widthMm)) };
}
