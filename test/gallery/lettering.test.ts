import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Drawing } from '../../src/core/drawing/index.ts';
import { fiddleForm } from '../laws/sampleDrawings.ts';
import { galleryChanges } from './picture.ts';

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
  expect(galleryChanges(join(import.meta.dirname, 'pictures'), [specimen])).toEqual([]);
});

test('a changed picture is named and written beside the old one', () => {
  const folder = mkdtempSync(join(tmpdir(), 'garland-gallery-'));
  galleryChanges(folder, [{ ...fiddleForm(), title: 'seen before' }]);
  const ci = process.env.CI;
  const changes = galleryChanges(folder, [{ ...fiddleForm(), title: 'seen now' }]);
  expect(changes.join()).toMatch(/inner-form: the picture changed|no picture/);
  expect(existsSync(join(folder, 'inner-form.new.svg'))).toBe(ci === undefined || ci === '');
  rmSync(folder, { recursive: true, force: true });
});
