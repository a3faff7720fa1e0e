import type { Chain } from '../curve/index.ts';
import type { Lining, LiningParts, PlanParts } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { CUTTING_CAUTION } from './formDrawingsNotes.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';
import { RIB_CAUTIONS } from './ribNotes.ts';
import { stackedLettering } from './stackedLettering.ts';

/** mm at the usual size: from one strip to the next, room for the name between them. */
const BETWEEN_MM = 7;
const NAME_MM = 2.6;

/** Share of its thickness that a lining keeps at its lower edge when it is pared; common practice. */
const PARED_SHARE = 0.15;
/** Share of its height, from the gluing edge, that keeps full thickness; common practice. */
const FULL_SHARE = 0.4;

/** mm. A thinner tongue breaks: then a piece of the lining itself is the gauge. */
const LEAST_TONGUE_MM = 1.5;

/** The linings laid flat, and the gauge for their mortises. */
export function liningDrawings(parts: PlanParts): readonly Drawing[] {
  return [stripSheet(parts), ...(parts.linings.thicknessMm >= LEAST_TONGUE_MM ? [mortiseGauge(parts)] : [])];
}

/** The three linings of one side and edge, under one another at true size. */
function stripSheet({ name, outline, linings }: PlanParts): Drawing {
  const scale = letteringScale(outline.bodyLengthMm);
  const pitch = linings.widthMm + BETWEEN_MM * scale;
  const strips = [linings.upper, linings.waist, linings.lower].map((lining, row) => ({
    lining,
    y: -row * pitch,
  }));
  const width = Math.max(...strips.map(({ lining }) => lining.cutMm));
  const height = linings.widthMm + 2 * pitch;
  return {
    name: 'linings',
    title: 'Linings laid flat',
    part: 'ribs',
    lines: strips.flatMap(({ lining, y }) => stripLines(lining, linings, y)),
    lettering: [
      ...strips.map(
        ({ lining, y }): Lettering => ({
          text: `${lining.name} lining, ${mm(lining.lengthMm)}: make 4`,
          at: { x: lining.from.farthestMm - allowanceOf(lining), y: y + linings.widthMm + 1.6 * scale },
          heightMm: NAME_MM * scale,
          turnRad: 0,
          anchor: 'start',
        }),
      ),
      ...captionBelow(
        [
          'LININGS',
          name,
          `strips ${mm(linings.stripWidthMm)} wide and ${mm(linings.thicknessMm)} thick, planed to ${mm(linings.widthMm)} level with the ribs`,
          'seen from outside, neck to the right; at both ends what is trimmed; lines across: one bend goes over into the next',
        ],
        {
          x: Math.min(...strips.map(({ lining }) => lining.from.farthestMm - allowanceOf(lining))),
          y: -2 * pitch,
        },
        { scale, mostMm: width },
      ),
    ],
    notes: liningNotes(linings),
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: width },
      { name: 'height', valueMm: height },
    ],
  };
}

function stripLines(lining: Lining, { widthMm }: LiningParts, y: number): readonly DrawnLine[] {
  const { from, to, developed } = lining;
  const trim = allowanceOf(lining);
  const upright = (x: number): Chain<'drawing'> => ({
    closed: false,
    vertices: [y, y + widthMm].map((level) => ({ x, y: level, bulge: 0 })),
  });
  const [left, right] = [from.farthestMm - trim, to.farthestMm + trim];
  const corners = [
    { x: left, y },
    { x: right, y },
    { x: right, y: y + widthMm },
    { x: left, y: y + widthMm },
  ];
  return [
    drawnLine('draw', { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) }),
    ...[from.farthestMm, to.farthestMm].map((x) => drawnLine('score', upright(x))),
    ...developed.stretches.slice(0, -1).map(({ toMm }) => drawnLine('draw', upright(toMm))),
  ];
}

function allowanceOf({ cutMm, lengthMm }: Lining): number {
  return (cutMm - lengthMm) / 2;
}

function liningNotes(linings: LiningParts): readonly string[] {
  const { choice, thicknessMm, widthMm, mortises } = linings;
  return [
    choice.linings === 'kerfed'
      ? `Kerfed: saw the strips from the inner side to about two thirds of their thickness every ${mm(2 * thicknessMm)} or so, on a jig with a stop; then they bend cold. Kerfs count nothing in the length.`
      : 'Plain strips bent on the iron like the ribs: willow or spruce, grain along. Fit them dry to the ribs before glue.',
    `The linings of the waist go in first, their ends into mortises in the corner blocks (${mm(mortises[0]?.reachMm ?? 0)} at full thickness, drawn on the block sheets); ${choice.liningsLetIn === 'all' ? 'those of the bouts are let in at the corner blocks too and end at the faces of upper and lower block' : 'those of the bouts end close at the faces of all blocks'}. Cut each a little long and trim until it springs in.`,
    `Let them stand over the ribs by a shaving and plane all level with the edge of the ribs, which may be tapered. When the glue is dry pare the inner face from full thickness over ${mm(FULL_SHARE * widthMm)} at the edge down to about ${mm(PARED_SHARE * thicknessMm)} at the rib.`,
    ...RIB_CAUTIONS,
  ];
}

/** mm. Handle and shoulders of the mortise gauge. */
const GAUGE = { width: 44, height: 26, shoulder: 12, gap: 2.5 } as const;

/** A small card with two tongues: one as wide as the mortise and as long as it is deep, one as long as its reach. */
function mortiseGauge({ name, linings }: PlanParts): Drawing {
  const { thicknessMm, widthMm, mortises } = linings;
  const reachMm = Math.max(...mortises.map((mortise) => mortise.reachMm));
  const width = Math.max(GAUGE.width, 2 * GAUGE.shoulder + 2 * thicknessMm);
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: GAUGE.height },
    { x: width - GAUGE.shoulder, y: GAUGE.height },
    { x: width - GAUGE.shoulder, y: GAUGE.height + reachMm },
    { x: width - GAUGE.shoulder - thicknessMm, y: GAUGE.height + reachMm },
    { x: width - GAUGE.shoulder - thicknessMm, y: GAUGE.height },
    { x: GAUGE.shoulder + thicknessMm, y: GAUGE.height },
    { x: GAUGE.shoulder + thicknessMm, y: GAUGE.height + widthMm },
    { x: GAUGE.shoulder, y: GAUGE.height + widthMm },
    { x: GAUGE.shoulder, y: GAUGE.height },
    { x: 0, y: GAUGE.height },
  ];
  const height = GAUGE.height + Math.max(reachMm, widthMm);
  return {
    name: 'lining-gauge',
    title: 'Gauge for lining mortises',
    part: 'ribs',
    lines: [
      { meaning: 'cut', chain: { closed: true, vertices: corners.map((at) => ({ ...at, bulge: 0 })) } },
    ],
    lettering: stackedLettering(
      [
        'LINING MORTISES',
        name,
        `${mm(thicknessMm)} wide`,
        `left: ${mm(widthMm)} deep`,
        `right: reach ${mm(reachMm)}`,
      ],
      {
        min: { x: GAUGE.gap, y: GAUGE.gap },
        max: { x: width - GAUGE.gap, y: GAUGE.height - GAUGE.gap },
      },
    ),
    notes: [
      `The left tongue goes down into the mortise beside the rib until its shoulders rest on the edge: ${mm(thicknessMm)} wide, ${mm(widthMm)} deep. The right one, laid in along the rib from where the block holds the lining at its full thickness, is as long as the mortise reaches, ${mm(reachMm)}.`,
      'Chisels slip: back the block up, cut away from the hand that holds, knife the sides before levering.',
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

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
