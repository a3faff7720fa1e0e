import { chainThrough } from '../curve/index.ts';
import {
  type Lining,
  type PlanParts,
  type RibLength,
  STRETCH_WITH_STRAP,
  STRETCH_WITHOUT_STRAP,
  thicknessForBend,
} from '../instrument/index.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { RIB_CAUTIONS, ribJointNote } from './ribNotes.ts';

/** mm. A table to read, of one size for every instrument. */
const SHEET = { width: 178, margin: 5, row: 4.9, text: 2.4, head: 3, title: 4.5 } as const;

/** mm. Left edge of each column of the bends. */
const COLUMNS = [0, 20, 38, 56, 74, 96, 118, 136] as const;

type Row = { readonly cells: readonly string[]; readonly at?: readonly number[]; readonly isHead?: true };

/** What to cut and what to bend it to, on one sheet: strips of ribs and linings with allowance, then every stretch of every rib. */
export function ribScheduleDrawing(parts: PlanParts): Drawing {
  const rows = [...stripRows(parts), { cells: [] }, ...bendRows(parts)];
  const height = SHEET.title + 3 * SHEET.margin + SHEET.row * (rows.length + 1);
  const top = height - SHEET.margin - SHEET.title;
  const title: Lettering[] = [
    lettered('RIBS AND LININGS: STRIPS AND BENDS', 0, top, SHEET.title),
    lettered(parts.name, 0, top - SHEET.row, SHEET.head),
  ];
  const from = top - SHEET.row - SHEET.margin;
  return {
    name: 'rib-schedule',
    title: 'Bending schedule',
    part: 'ribs',
    lines: [frame(height), ...rules(rows, from)],
    lettering: [
      ...title,
      ...rows.flatMap(({ cells, at = COLUMNS, isHead }, row) =>
        cells.map((text, column) =>
          lettered(text, at[column] ?? 0, from - row * SHEET.row, isHead ? SHEET.head * 0.8 : SHEET.text),
        ),
      ),
    ],
    notes: [
      'Lengths run along the middle of the thickness, from the end toward the lower end of the body; the radius is that inside the bend, which a template or the iron is held to. Bend a little tighter than asked: wood springs back.',
      `Stretch of the outer fibre: up to ${percent(STRETCH_WITHOUT_STRAP)} % a hot iron alone, up to ${percent(STRETCH_WITH_STRAP)} % with a metal strap against the outside; beyond, thin the rib there (from memory: try it on waste of the same wood).`,
      ribJointNote(parts.ribs),
      ...RIB_CAUTIONS,
    ],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: SHEET.width },
      { name: 'height', valueMm: height },
    ],
  };
}

const STRIP_COLUMNS = [0, 14, 58, 80, 102, 124] as const;

function stripRows({ ribs, linings }: PlanParts): readonly Row[] {
  const row = (
    count: number,
    name: string,
    cutMm: number,
    wideMm: number,
    thickMm: number,
    toMm: number,
  ) => ({
    at: STRIP_COLUMNS,
    cells: [`${count}`, name, cutMm.toFixed(0), wideMm.toFixed(1), thickMm.toFixed(1), toMm.toFixed(1)],
  });
  const { thicknessMm, stripWidthMm } = ribs;
  const rib = (count: number, name: string, { cutMm, developed }: RibLength) =>
    row(count, name, cutMm, stripWidthMm, thicknessMm, developed.lengthMm);
  const lining = (name: string, { cutMm, lengthMm }: Lining) =>
    row(4, `${name} lining`, cutMm, linings.stripWidthMm, linings.thicknessMm, lengthMm);
  const bout = (which: 'lower' | 'upper', isAcross: boolean) => {
    const length = ribs[`${which}Bout`];
    if (!isAcross) return rib(2, `${which} rib`, length);
    const trimmedMm = 2 * length.developed.lengthMm;
    return row(1, `${which} rib, in one`, length.cutAcrossMm ?? 0, stripWidthMm, thicknessMm, trimmedMm);
  };
  return [
    {
      isHead: true,
      at: STRIP_COLUMNS,
      cells: ['cut', 'strip', 'long', 'wide', 'thick', 'trimmed to'],
    },
    bout('lower', ribs.choice.lowerRib === 'one-piece'),
    rib(2, 'waist rib', ribs.cBout),
    bout('upper', ribs.choice.upperRib === 'one-piece'),
    lining('lower', linings.lower),
    lining('waist', linings.waist),
    lining('upper', linings.upper),
  ];
}

function bendRows({ ribs, linings }: PlanParts): readonly Row[] {
  const sections = [
    [ribs.choice.lowerRib === 'one-piece' ? 'lower, half' : 'lower', ribs.lowerBout],
    ['waist', ribs.cBout],
    [ribs.choice.upperRib === 'one-piece' ? 'upper, half' : 'upper', ribs.upperBout],
    ['lower lining', linings.lower],
    ['waist lining', linings.waist],
    ['upper lining', linings.upper],
  ] as const;
  return [
    { isHead: true, cells: ['rib', 'from', 'to', 'long', 'bends', 'radius', 'stretch', ''] },
    ...sections.flatMap(([name, { developed, bend }]) => {
      const isLining = name.endsWith('lining');
      if (isLining) return [liningRow(name, bend.tightestMm, bend.stretch, developed.lengthMm)];
      return developed.stretches.map(
        ({ fromMm, toMm, bends, insideRadiusMm, stretch }, index): Row => ({
          cells: [
            index === 0 ? name : '',
            fromMm.toFixed(1),
            toMm.toFixed(1),
            (toMm - fromMm).toFixed(1),
            bends,
            insideRadiusMm === null ? '–' : insideRadiusMm.toFixed(1),
            insideRadiusMm === null ? '–' : `${percent(stretch)} %`,
            flag(insideRadiusMm, stretch, insideRadiusMm === bend.tightestMm),
          ],
        }),
      );
    }),
  ];
}

/** Linings follow the ribs: only their tightest bend is said. */
function liningRow(name: string, tightestMm: number, stretch: number, lengthMm: number): Row {
  return {
    cells: [
      name,
      '',
      '',
      lengthMm.toFixed(1),
      '',
      tightestMm.toFixed(1),
      `${percent(stretch)} %`,
      flag(tightestMm, stretch, true),
    ],
    at: [0, 38, 38, 56, 74, 96, 118, 136],
  };
}

function flag(radiusMm: number | null, stretch: number, isTightest: boolean): string {
  if (radiusMm === null) return '';
  const what =
    stretch > STRETCH_WITH_STRAP
      ? `thin to ${thicknessForBend(radiusMm).toFixed(1)}`
      : stretch > STRETCH_WITHOUT_STRAP
        ? 'strap'
        : '';
  return [isTightest ? 'tightest' : '', what].filter((word) => word !== '').join(', ');
}

function frame(height: number): DrawnLine {
  const corners = [
    [0, 0],
    [SHEET.width, 0],
    [SHEET.width, height],
    [0, height],
  ] as const;
  return {
    meaning: 'draw',
    chain: chainThrough(
      corners.map(([x, y]) => ({ x, y })),
      true,
    ),
  };
}

/** A rule under each heading. */
function rules(rows: readonly Row[], from: number): readonly DrawnLine[] {
  return rows.flatMap(({ isHead }, row) => {
    if (!isHead) return [];
    const y = from - row * SHEET.row - 0.3 * SHEET.row;
    const ends = [SHEET.margin, SHEET.width - SHEET.margin].map((x) => ({ x, y }));
    return [{ meaning: 'draw' as const, chain: chainThrough<'drawing'>(ends, false) }];
  });
}

function lettered(text: string, x: number, y: number, heightMm: number): Lettering {
  const roomMm = SHEET.width - 2 * SHEET.margin - x;
  const widthMm = letteringWidthMm({ text, heightMm });
  return {
    text,
    at: { x: SHEET.margin + x, y },
    heightMm: widthMm > roomMm ? (heightMm * roomMm) / widthMm : heightMm,
    turnRad: 0,
    anchor: 'start',
  };
}

function percent(ratio: number): string {
  return Number((100 * ratio).toFixed(1)).toString();
}
