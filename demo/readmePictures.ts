/**
 * The pictures of the README from real output: `node dist/demo/readmePictures.js docs/pictures`, after the demo has run.
 * The restored outline over the photograph, the wear it was restored from, and printed pages.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { markerFinder, type Traced, type TraceOutcome, trace, traceOutcome } from '../src/core/index.ts';
import { readPicture } from '../src/host/index.ts';

type Pair = readonly [number, number];

const folder = process.argv[2] ?? 'docs/pictures';
mkdirSync(folder, { recursive: true });
const picture = await readPicture(join('demo', 'photographs', 'fiddle-top.jpg'));
if (!picture.ok) throw new Error(picture.faults[0]?.found);
const traced = trace(
  {
    photographs: [{ name: 'fiddle-top.jpg', picture: picture.value }],
    face: 'top',
    edgeHeightMm: 36.5,
    sheetBarMm: { xMm: 150, yMm: 150 },
    known: [
      { name: 'bodyLength', mm: 356.5, plusMinusMm: 0.3 },
      { name: 'lowerBout', mm: 206.3, plusMinusMm: 0.3 },
    ],
  },
  markerFinder(),
);
if (!traced.ok) throw new Error(traced.faults[0]?.found);
const outcome = traceOutcome(traced.value);
await overPhotograph(traced.value, outcome);
await wearPicture(outcome);
printedPage((text) => /1 +Inner form\s.*tile A1/s.test(text), 'form-page');
printedPage(
  (text) => /Pieces \d/.test(text) && (text.match(/\d+ +Arching gauge/g) ?? []).length >= 3,
  'gauges-page',
);

/** The square-on picture turned neck up, the restored outline in blue over it. */
async function overPhotograph({ seen, restored }: Traced, { document }: TraceOutcome): Promise<void> {
  const { rectified } = seen;
  if (rectified === null) return;
  const { through, headingRad } = restored.axis;
  const c = Math.cos(headingRad);
  const s = Math.sin(headingRad);
  const place = ([x, y]: Pair): string => {
    const along = y + restored.lowerEndMm;
    const sceneX = through.x + c * along + s * x;
    const sceneY = through.y + s * along - c * x;
    return `${((sceneX - rectified.origin.x) / rectified.mmPerPixel).toFixed(1)} ${((rectified.origin.y - sceneY) / rectified.mmPerPixel).toFixed(1)}`;
  };
  const { widthPx, heightPx, rgb } = rectified.picture;
  const path = `M${document.outline.map((pair) => place(pair)).join('L')}Z`;
  const line = `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}"><path d="${path}" fill="none" stroke="#1f6fd0" stroke-width="7"/></svg>`;
  const drawn = await sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .composite([{ input: Buffer.from(line) }])
    .png()
    .toBuffer();
  await sharp(drawn)
    .rotate(270)
    .resize({ height: 900 })
    .jpeg({ quality: 82 })
    .toFile(join(folder, 'restored.jpg'));
}

/** Restored outline in blue, both edges as found in brown, wear marked with its depth. */
async function wearPicture({ document }: TraceOutcome): Promise<void> {
  const flat = ([x, y]: Pair): string => `${(x + 115).toFixed(2)} ${(368 - y).toFixed(2)}`;
  const path = (points: readonly Pair[]): string => `M${points.map(flat).join('L')}`;
  const found = document.asFound ?? { bass: [], treble: [] };
  const marks = (document.wear ?? []).map(({ at, depth, side }) => {
    const [x, y] = flat(at as Pair).split(' ');
    const anchor = side === 'bass' ? 'start' : 'end';
    const shift = side === 'bass' ? 5 : -5;
    return `<circle cx="${x}" cy="${y}" r="${1 + 2 * depth}" fill="#c8501e" fill-opacity="0.55"/><text x="${Number(x) + shift}" y="${Number(y) + 2}" text-anchor="${anchor}" font-family="sans-serif" font-size="6" fill="#7a2f10">${depth.toFixed(1)} mm</text>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="920" height="1504" viewBox="0 0 230 376"><rect width="230" height="376" fill="#fff"/><path d="${path(document.outline as Pair[])}Z" fill="#eef4fb" stroke="#1f6fd0" stroke-width="0.8"/><path d="${path(found.bass as Pair[])}" fill="none" stroke="#8a4b1e" stroke-width="0.35"/><path d="${path(found.treble as Pair[])}" fill="none" stroke="#8a4b1e" stroke-width="0.35"/><path d="M115 6V370" stroke="#888" stroke-width="0.3" stroke-dasharray="6 1.5 1 1.5"/>${marks.join('')}</svg>`;
  await sharp(Buffer.from(svg))
    .resize({ height: 900 })
    .png({ palette: true })
    .toFile(join(folder, 'wear.png'));
}

/** The first page of the demo's print file that says so, as a picture, by an independent reader of PDF. */
function printedPage(isIt: (text: string) => boolean, name: string): void {
  const pdf = join('out', 'demo', 'fiddle', 'print', 'templates-a4.pdf');
  const pages = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f');
  const page = 1 + pages.findIndex((text) => isIt(text));
  if (page === 0) throw new Error(`no page for ${name}`);
  const words = [
    '-r',
    '75',
    '-png',
    '-singlefile',
    '-f',
    String(page),
    '-l',
    String(page),
    pdf,
    join(folder, name),
  ];
  execFileSync('pdftoppm', words);
}
