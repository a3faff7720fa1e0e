import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Drawing } from '../../src/core/drawing/index.ts';
import { fiddleForm } from '../laws/sampleDrawings.ts';
import { drawingPicture, type GalleryPicture, galleryChanges } from './picture.ts';

const ROWS = [
  'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  'abcdefghijklmnopqrstuvwxyz',
  '0123456789 .,:;()+-±×/=\'"%°–—·&?!#_',
  'ÄÖÜäöüß éèêëçñåÅøØæÆœŒ čšžřůőłŁ',
];

const specimen: Drawing = {
  ...fiddleForm(),
  name: 'lettering',
  title: 'Stroke letters',
  lines: [],
  lettering: ROWS.map((text, row) => ({
    text,
    at: { x: 0, y: -14 * row },
    heightMm: 7,
    turnRad: 0,
    anchor: 'start',
  })),
};

test('the stroke letters look as reviewers last saw them', () => {
  expect(
    galleryChanges(join(import.meta.dirname, 'pictures'), [
      { name: 'lettering', svg: drawingPicture(specimen) },
    ]),
  ).toEqual([]);
});

test('a changed picture is named and written beside the old one', () => {
  const folder = mkdtempSync(join(tmpdir(), 'garland-gallery-'));
  const seen = (title: string): GalleryPicture => ({
    name: 'piece/form',
    svg: drawingPicture({ ...fiddleForm(), title }),
  });
  mkdirSync(join(folder, 'piece'));
  writeFileSync(join(folder, 'piece', 'form.svg'), seen('before').svg);
  expect(galleryChanges(folder, [seen('before')])).toEqual([]);
  expect(galleryChanges(folder, [seen('now')]).join()).toContain('piece/form: the picture changed');
  expect(readFileSync(join(folder, 'piece', 'form.new.svg'), 'utf8')).toBe(seen('now').svg);
  expect(galleryChanges(folder, [seen('before')])).toEqual([]);
  expect(existsSync(join(folder, 'piece', 'form.new.svg'))).toBe(false);
  rmSync(folder, { recursive: true, force: true });
});
