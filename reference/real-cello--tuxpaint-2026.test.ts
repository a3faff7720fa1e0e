/**
 * The outline of a real cello in a photograph of 99 by 300 pixels.
 *
 * Picture: a cut-out photograph of a whole cello, from the front, with strings and end pin (Debian package
 * tuxpaint-stamps-default 2022.06.04, hobbies/music/string/cello.png). Maker and sizes are unknown: it gives ratios only.
 * Sizes that are compared: the cellos of data/measured-instruments.csv with length, both bouts and waist
 * (sources there, row by row); among them one cut-down body and one church bass, so the ranges are wide.
 * Claims: the body is found upright with its middle where the eye sees it; its lower bout to length, upper bout to
 * lower bout and waist to lower bout lie inside the ranges of those cellos; and it is not taken for sure, as so few pixels cannot
 * be: it is asked about, and no place is said to be known better than a fifth of a pixel.
 * Skipped where the package is missing.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { traceBody } from '../src/core/photo/index.ts';

const FILE = '/usr/share/tuxpaint/stamps/hobbies/music/string/cello.png';

const SHARES = ['lowerToLength', 'upperToLower', 'waistToLower'] as const;
type Shares = Readonly<Record<(typeof SHARES)[number], number>>;

function measuredCellos(): readonly Shares[] {
  const lines = readFileSync(join(import.meta.dirname, 'data', 'measured-instruments.csv'), 'utf8').split(
    '\n',
  );
  const names = lines[0]!.split(',');
  const column = (name: string) => names.indexOf(name);
  return lines
    .slice(1)
    .map((line) => line.split(','))
    .filter((cells) => cells[column('kind')]?.startsWith('cello'))
    .map((cells) => ['body_length', 'upper', 'centre', 'lower'].map((name) => Number(cells[column(name)])))
    .filter((sizes) => sizes.every((size) => size > 0))
    .map(([length, upper, centre, lower]) => ({
      lowerToLength: lower! / length!,
      upperToLower: upper! / lower!,
      waistToLower: centre! / lower!,
    }));
}

test('seven cellos of the table have all four sizes', () => {
  expect(measuredCellos()).toHaveLength(7);
});

describe.skipIf(!existsSync(FILE))('the small photograph of a cello, on white', async () => {
  const { data, info } = existsSync(FILE)
    ? await sharp(FILE)
        .flatten({ background: '#ffffff' })
        .removeAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true })
    : { data: new Uint8Array(), info: { width: 0, height: 0 } };
  const found = traceBody({ widthPx: info.width, heightPx: info.height, rgb: new Uint8Array(data) });
  const trace = found.ok ? found.value : null;

  test('is found upright, its middle where the eye sees it', () => {
    expect(Math.abs(trace!.pose.axisAngleRad)).toBeLessThan(0.02);
    const { lowerEnd, upperEnd } = trace!.pose;
    expect(Math.abs((lowerEnd.y + upperEnd.y) / 2 - 165)).toBeLessThan(3);
    expect(trace!.bodies).toHaveLength(1);
    expect(trace!.bodies[0]!.face).toBe('top');
  });

  test.each(SHARES)('%s lies inside the range of measured cellos', (name) => {
    const { lowerBout, upperBout, waist } = trace!.ratios;
    const shares: Shares = {
      lowerToLength: lowerBout,
      upperToLower: upperBout / lowerBout,
      waistToLower: waist / lowerBout,
    };
    const measured = measuredCellos().map((cello) => cello[name]);
    expect(shares[name]).toBeGreaterThan(Math.min(...measured));
    expect(shares[name]).toBeLessThan(Math.max(...measured));
  });

  test('is asked about, and no place is claimed better than a fifth of a pixel', () => {
    expect(trace!.verdict).toBe('ask');
    expect(trace!.findings.map(({ code }) => code)).toContain('trace.small-picture');
    expect(Math.min(...trace!.edge.map(({ sigmaPx }) => sigmaPx))).toBeGreaterThanOrEqual(0.2);
  });
});
