/**
 * Title: the rule of when to accept, ask or refuse, against a simulator of photographs; author: ours
 * (reference/simulator, written apart from the code under test); year: 2026.
 * Claim: over dressed instruments on white, graded, black, varnished, patterned, wooden and cloth grounds, without a sheet, at most
 * 2 of 100 traces are wrong (more than 2 mm rms off on a body of 355 mm where the edge is said to be seen, or another
 * body than the one asked for) and yet accepted in silence.
 * Reached on 100 odd seeds (653 to 851), counted once with the rule as it is: 45 accepted, none wrong; docs/methods/tracing.md
 * has the table, with the earlier counts that led to the rule. Odd seeds from 201 on are counted, even ones are left to set limits
 * by. A few run each time; GARLAND_CONFIDENCE_SEEDS=100 counts so many odd ones and prints every line.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  type ConfidenceRow,
  confidenceLine,
  confidenceSeed,
  confidenceSummary,
} from './simulator/confidenceStudy.ts';
import { rootMeanSquare } from './simulator/distances.ts';

const COUNT = Number(process.env.GARLAND_CONFIDENCE_SEEDS ?? 8);
const FIRST = 201;
const MEGAPIXELS = 1.2;
const rows: ConfidenceRow[] = [];

beforeAll(async () => {
  for (let i = 0; i < COUNT; i++) rows.push(await confidenceSeed(FIRST + 2 * i, MEGAPIXELS));
  console.info([...rows.map(confidenceLine), confidenceSummary(rows)].join('\n'));
}, 7_200_000);

describe('instruments as people photograph them', () => {
  test('are not wrong in silence: of eight none, of a hundred two at most', () => {
    const silent = rows.filter(({ outcome, isWrong }) => outcome === 'accepted' && isWrong);
    expect(silent.length, silent.map(confidenceLine).join('\n')).toBeLessThanOrEqual(
      Math.floor(0.02 * COUNT),
    );
  });

  test('are traced to within 1.2 mm (rms) where they are accepted', () => {
    const right = rows.filter(({ outcome, isWrong }) => outcome === 'accepted' && !isWrong);
    expect(right.length).toBeGreaterThan(0);
    expect(rootMeanSquare(right.map(({ rmsMm }) => rmsMm))).toBeLessThanOrEqual(1.2);
  });
});
