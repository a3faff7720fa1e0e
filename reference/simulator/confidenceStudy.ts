import { trace } from '../../src/core/index.ts';
import type { Spot } from './bentLine.ts';
import { chanceFrom } from './chance.ts';
import { drawClutteredScene } from './clutteredScene.ts';
import { distanceTo, percentile, rootMeanSquare } from './distances.ts';
import { type BodyTruth, photograph } from './photograph.ts';

/** What a trace of a cluttered photograph came to. */
export interface ConfidenceRow {
  readonly seed: number;
  readonly what: string;
  readonly outcome: 'accepted' | 'asked' | 'refused';
  /** First code that asked or refused. */
  readonly code: string;
  /** Distances of the places taken for seen from the true edge of the nearest body, mm on a body of 355; none if refused. */
  readonly rmsMm: number;
  readonly p95Mm: number;
  readonly isOtherBody: boolean;
  readonly isWrong: boolean;
  readonly numbers: string;
  readonly seconds: number;
}

/** mm, rms at a body of 355. A trace further off than this is wrong. */
const WRONG_MM = 2;

/** Findings that say something else than that the outline is in doubt. */
const NO_DOUBT: readonly string[] = ['trace.no-sheet', 'trace.which-plate', 'trace.no-focal'];

/** One seed without a sheet, nothing told but the body's length: traced through the public door and compared. */
export async function confidenceSeed(seed: number, megapixels: number): Promise<ConfidenceRow> {
  const drawn = drawClutteredScene(seed, megapixels);
  const { picture, truth } = await photograph(
    drawn.scene,
    drawn.camera,
    drawn.how,
    chanceFrom(seed + 1000003),
  );
  const start = process.hrtime.bigint();
  const traced = trace(
    {
      photographs: [{ name: 'photograph', picture }],
      face: drawn.body.face,
      known: [{ name: 'bodyLength', mm: drawn.body.meant.lengthMm }],
    },
    () => [],
  );
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const plain = { seed, what: `${drawn.what}, ${(truth[0] as BodyTruth).pxPerMm.toFixed(2)} px/mm`, seconds };
  if (!traced.ok)
    return {
      ...plain,
      outcome: 'refused',
      code: traced.faults.map(({ code }) => code).join(' '),
      rmsMm: Number.NaN,
      p95Mm: Number.NaN,
      isOtherBody: false,
      isWrong: false,
      numbers: '',
    };
  const { trace: body } = traced.value.seen;
  const seen = body.edge
    .filter(({ state }) => state === 'seen')
    .map(({ point }) => ({ x: point.x, y: point.y }));
  const offs = truth.map((one) => offsets(seen, one));
  const rms = offs.map(rootMeanSquare);
  const best = rms.indexOf(Math.min(...rms));
  const rmsMm = rms[best] as number;
  const asks = [...body.findings, ...traced.value.findings].filter(({ code }) => !NO_DOUBT.includes(code));
  const { ratios, support, worstZone, spread, strain } = body;
  return {
    ...plain,
    outcome: body.verdict === 'accept' ? 'accepted' : 'asked',
    code: body.verdict === 'accept' ? '' : (asks[0]?.code ?? ''),
    rmsMm,
    p95Mm: percentile(offs[best] as number[], 0.95),
    isOtherBody: best !== 0,
    isWrong: rmsMm > WRONG_MM || best !== 0,
    numbers: `support ${support.toFixed(2)} zone ${worstZone.share.toFixed(2)} spread ${(100 * spread).toFixed(1)} % strain ${strain.toFixed(1)} W ${ratios.lowerBout.toFixed(3)} U ${ratios.upperBout.toFixed(3)} C ${ratios.waist.toFixed(3)}`,
  };
}

function offsets(seen: readonly Spot[], truth: BodyTruth): number[] {
  const line = truth.wornPx.filter((_, i) => i % 2 === 0);
  return seen.map((at) => distanceTo(line, at, true) / truth.pxPerMm);
}

export function confidenceLine(row: ConfidenceRow): string {
  const { seed, outcome, code, rmsMm, p95Mm, isWrong, isOtherBody } = row;
  return `${seed} ${outcome}${isWrong ? ' WRONG' : ''}${isOtherBody ? ' (other body)' : ''} ${code} rms ${rmsMm.toFixed(2)} 95% ${p95Mm.toFixed(2)} ${row.numbers} (${row.what}) ${row.seconds.toFixed(1)} s`;
}

export function confidenceSummary(rows: readonly ConfidenceRow[]): string {
  const count = (pick: (row: ConfidenceRow) => boolean) => rows.filter(pick).length;
  const accepted = rows.filter(({ outcome }) => outcome === 'accepted');
  return `${rows.length} scenes: ${accepted.length} accepted (${count(({ outcome, isWrong }) => outcome === 'accepted' && isWrong)} of them wrong), ${count(({ outcome }) => outcome === 'asked')} asked (${count(({ outcome, isWrong }) => outcome === 'asked' && !isWrong)} of them right), ${count(({ outcome }) => outcome === 'refused')} refused; accepted and right: rms ${rootMeanSquare(accepted.filter(({ isWrong }) => !isWrong).map(({ rmsMm }) => rmsMm)).toFixed(2)} mm`;
}
