import { type MarkerFinder, type Photograph, trace, traceOutcome } from '../../src/core/index.ts';
import type { Spot } from './bentLine.ts';
import { chanceFrom } from './chance.ts';
import { distanceTo, evenly, laidOnto, moved, percentile, rootMeanSquare } from './distances.ts';
import { photograph } from './photograph.ts';
import { drawSheetScene, type SheetSceneHabit } from './sheetScene.ts';
import type { SheetTexture } from './sheetTexture.ts';

/** How well one photographed instrument was restored; all lengths in mm. */
export interface RestoredRow {
  readonly seed: number;
  readonly fault: string | null;
  readonly asks: readonly string[];
  /** Distances between the restored and the meant outline, both ways, away from the corner tips and at them. */
  readonly away: readonly number[];
  readonly tips: readonly number[];
  /** Distances of the edge as found from the worn edge, after both were laid on each other. */
  readonly edge: readonly number[];
  /** Offset of the mirror axis from the true one, rms over the body's length. */
  readonly axisMm: number;
  readonly lengthErrorMm: number;
  readonly lengthPlusMinusMm: number;
  readonly seconds: number;
  readonly what: string;
}

export interface RestoredHabit extends SheetSceneHabit {
  /** Whether the owner's two lengths are told. */
  readonly known: boolean;
}

const TIP_REACH_MM = 4;
const STEP_MM = 1;

/** One seed: drawn, photographed, traced through the public door, and compared with the truth. */
export async function restoreSeed(
  seed: number,
  texture: SheetTexture,
  finder: MarkerFinder,
  habit: RestoredHabit,
): Promise<RestoredRow> {
  const drawn = drawSheetScene(seed, texture, habit);
  const { body, told } = drawn;
  const photographs = [];
  for (const [i, camera] of drawn.cameras.entries())
    photographs.push({
      name: `view ${i + 1}`,
      ...(await photograph(drawn.scene, camera, drawn.how, chanceFrom(seed + 1000003 * (i + 1)))),
    });
  const start = process.hrtime.bigint();
  const traced = trace(
    {
      photographs: photographs.map(({ name, picture }) => ({
        name,
        picture: { ...picture, ...(drawn.notedFocal35Mm !== null && { focal35Mm: drawn.notedFocal35Mm }) },
      })) as [Photograph, ...Photograph[]],
      face: body.face,
      edgeHeightMm: told.edgeHeightMm,
      sheetBarMm: told.sheetBarMm,
      meant: { cornerEnd: told.cornerEndMm },
      known: habit.known
        ? [
            { name: 'bodyLength', mm: told.lengthMm, plusMinusMm: 0.2 },
            { name: 'lowerBout', mm: told.lowerBoutMm, plusMinusMm: 0.2 },
          ]
        : [],
    },
    finder,
  );
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const what = `${body.face}, tilt ${drawn.tiltDegrees.toFixed(1)}, ${drawn.isDressed ? 'neck' : 'bare'}, ${body.near.losses.length} losses, round ${body.roundMm.toFixed(1)}, ${drawn.notedFocal35Mm === null ? 'no focal length noted' : `${drawn.notedFocal35Mm} mm noted`}`;
  const empty = {
    seed,
    asks: [],
    away: [],
    tips: [],
    edge: [],
    axisMm: Number.NaN,
    lengthErrorMm: Number.NaN,
    lengthPlusMinusMm: Number.NaN,
    seconds,
    what,
  };
  if (!traced.ok)
    return { ...empty, fault: traced.faults.map(({ code, found }) => `${code}: ${found}`).join('; ') };
  const { document } = traceOutcome(traced.value);
  const outline = (document.outline as readonly (readonly [number, number])[]).map(([x, y]) => ({ x, y }));
  const truth = photographs[0]?.truth[0] as (typeof photographs)[number]['truth'][number];
  const found = [...traced.value.restored.asFound.bass, ...traced.value.restored.asFound.treble].map(
    ({ x, y }) => ({ x: body.face === 'top' ? x : -x, y }),
  );
  return {
    ...empty,
    fault: null,
    asks: traced.value.findings.map(({ code, at }) => `${code} (${at})`),
    ...outlineDistances(outline, truth.meant, body.meant.tips),
    ...axisAndEdge(found, truth.worn, body.meant.lengthMm),
    lengthErrorMm: traced.value.restored.bodyLengthMm - body.meant.lengthMm,
    lengthPlusMinusMm: traced.value.lengthPlusMinusMm,
  };
}

/** Both ways, after the restored outline was shifted along its axis: where its lower end counts from is no matter of shape. */
function outlineDistances(
  outline: readonly Spot[],
  meant: readonly Spot[],
  tips: readonly Spot[],
): Pick<RestoredRow, 'away' | 'tips'> {
  const fine = evenly(outline, 0.5);
  const truth = evenly(meant, STEP_MM);
  const shift = laidOnto(
    fine.filter((_, i) => i % 6 === 0),
    truth,
    1,
    true,
  );
  const laid = fine.map((at) => moved(shift, at));
  const isTip = (at: Spot) =>
    tips.some((tip) => Math.hypot(Math.abs(at.x) - tip.x, at.y - tip.y) < TIP_REACH_MM);
  const all = [
    ...laid.filter((_, i) => i % 2 === 0).map((at) => ({ at, mm: distanceTo(meant, at, true) })),
    ...truth.map((at) => ({ at, mm: distanceTo(laid, at, true) })),
  ];
  return {
    away: all.filter(({ at }) => !isTip(at)).map(({ mm }) => mm),
    tips: all.filter(({ at }) => isTip(at)).map(({ mm }) => mm),
  };
}

function axisAndEdge(
  found: readonly Spot[],
  worn: readonly Spot[],
  lengthMm: number,
): Pick<RestoredRow, 'axisMm' | 'edge'> {
  const places = found.filter((_, i) => i % Math.max(1, Math.floor(found.length / 500)) === 0);
  const rough = evenly(worn, 1);
  const laid = laidOnto(places, rough, 0.8, false);
  const off = Array.from({ length: 20 }, (_, i) => moved(laid, { x: 0, y: (lengthMm * (i + 0.5)) / 20 }).x);
  return { axisMm: rootMeanSquare(off), edge: places.map((at) => distanceTo(worn, moved(laid, at), true)) };
}

/** The rows in numbers and one line each. */
export function restoredTable(rows: readonly RestoredRow[]): string {
  const lines = rows.map((row) => {
    const f = (value: number) => value.toFixed(3);
    if (row.fault) return `${row.seed} REFUSED ${row.fault} (${row.what})`;
    return `${row.seed} rms ${f(rootMeanSquare(row.away))} 95% ${f(percentile(row.away, 0.95))} most ${f(Math.max(...row.away))} tips ${f(Math.max(...row.tips))} edge ${f(rootMeanSquare(row.edge))} axis ${f(row.axisMm)} length ${f(row.lengthErrorMm)} ± ${f(row.lengthPlusMinusMm)} ${row.seconds.toFixed(1)} s (${row.what}) ${row.asks.join(', ')}`;
  });
  return [...lines, summary(rows)].join('\n');
}

function summary(rows: readonly RestoredRow[]): string {
  const good = rows.filter(({ fault }) => fault === null);
  const away = good.flatMap(({ away: one }) => one);
  const most = good.map(({ away: one }) => Math.max(...one));
  const tips = good.map(({ tips: one }) => Math.max(...one));
  const covered = good.filter(
    ({ lengthErrorMm, lengthPlusMinusMm }) => Math.abs(lengthErrorMm) <= lengthPlusMinusMm,
  ).length;
  const f = (value: number) => value.toFixed(3);
  return `${good.length} of ${rows.length} restored: pooled rms ${f(rootMeanSquare(away))}, 95 % ${f(percentile(away, 0.95))}, worst ${f(Math.max(...most))} (median of worst ${f(percentile(most, 0.5))}), tips worst ${f(Math.max(...tips))} (median ${f(percentile(tips, 0.5))}), axis rms ${f(rootMeanSquare(good.map(({ axisMm }) => axisMm)))}, length covered ${covered}`;
}
