import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cardsDrawing, type Drawing, layoutPages, sheetDrawing } from '../../src/core/drawing/index.ts';
import { calibrationSheet } from '../../src/core/photo/index.ts';
import { drawnInstrument, SHOWN, type Shown } from './drawnInstruments.ts';
import { pagePicture } from './pagePicture.ts';
import { drawingPicture, type GalleryPicture, galleryChanges } from './picture.ts';

const FOLDER = join(import.meta.dirname, 'pictures');
const MOST_BYTES = 6_000_000;

/** Of the violin everything is shown, of the others what changes most with size. */
const ELSEWHERE = [
  'form',
  'form-half-treble',
  'form-half-bass',
  'outline-template-half',
  'inner-template-half',
  'block-lower-corner-treble',
  'arching-gauge-back-waist',
  'arching-gauge-top-upper-corner-finished',
  'arching-gauge-top-long',
  'thickness-back',
  'head-side',
  'head-front',
  'neck-side',
  'bridge',
  'bar-glue-face',
  'caul-lower-corner-waist-side',
  'rib-height-gauge',
];

interface Shelf {
  readonly title: string;
  readonly pictures: readonly (GalleryPicture & { readonly title: string })[];
}

function instrumentShelf(shown: Shown): Shelf {
  const drawings = drawnInstrument(shown).filter(
    ({ name }) => shown === 'violin' || ELSEWHERE.includes(name),
  );
  return { title: `Pieces of the ${shown}`, pictures: drawings.map((one) => picture(`${shown}/`, one)) };
}

function picture(folder: string, drawing: Drawing): Shelf['pictures'][number] {
  return { name: `${folder}${drawing.name}`, title: drawing.title, svg: drawingPicture(drawing) };
}

function sheetShelf(): Shelf {
  const sheets = (['A4', 'A3'] as const).flatMap((paper) =>
    [1, 2].map((number) => sheetDrawing(calibrationSheet(paper, number))),
  );
  const cards = [1, 2].map((page) => cardsDrawing('A4', page));
  return { title: 'Calibration sheets', pictures: [...sheets, ...cards].map((one) => picture('', one)) };
}

function pageShelf(): Shelf {
  const set = layoutPages(drawnInstrument('violin'), { paper: 'A4', title: 'Violin' });
  if (!set.ok) throw new Error(JSON.stringify(set.faults));
  const [cover] = set.value.pages;
  const tiled = set.value.pages.find((page) => page.tile !== undefined);
  const shared = set.value.pages.find((page) => page.placements.length > 3 && page.number > 4);
  const shown = { cover, tiled, shared };
  return {
    title: 'Pages of the print file',
    pictures: Object.entries(shown).map(([name, page]) => {
      if (page === undefined) throw new Error(`no ${name} page`);
      return { name: `page-${name}`, title: `${name} page`, svg: pagePicture(page) };
    }),
  };
}

test('every sheet of a pack looks as reviewers last saw it, and the index lists all pictures', () => {
  const shelves = [...SHOWN.map(instrumentShelf), sheetShelf(), pageShelf()];
  const pictures = shelves.flatMap((shelf) => shelf.pictures);
  expect(galleryChanges(FOLDER, pictures)).toEqual([]);
  expect(indexChanges(shelves)).toEqual([]);
  const files = (readdirSync(FOLDER, { recursive: true }) as string[])
    .filter((path) => path.endsWith('.svg') && !path.endsWith('.new.svg'))
    .map((path) => path.replace(/\.svg$/, ''));
  expect(files.sort()).toEqual(['lettering', ...pictures.map(({ name }) => name)].sort());
  const bytes = files.reduce((sum, name) => sum + statSync(join(FOLDER, `${name}.svg`)).size, 0);
  expect(bytes).toBeLessThan(MOST_BYTES);
});

/** The index is generated: a missing or outdated one is written, and is a fault where `CI` is set. */
function indexChanges(shelves: readonly Shelf[]): string[] {
  const path = join(import.meta.dirname, 'README.md');
  const text = [
    '# Gallery',
    '',
    'Every sheet of a pack as reviewers last saw it; this index is written by `gallery.test.ts`.',
    '',
    '- [Stroke letters](pictures/lettering.svg)',
    ...shelves.flatMap(({ title, pictures }) => [
      '',
      `## ${title}`,
      '',
      ...pictures.map((one) => `- [${one.title}](pictures/${one.name}.svg)`),
    ]),
    '',
  ].join('\n');
  if (existsSync(path) && readFileSync(path, 'utf8') === text) return [];
  if (process.env.CI) return ['README.md does not list the pictures as they are'];
  writeFileSync(path, text);
  return [];
}
