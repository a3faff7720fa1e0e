import { expect, test } from 'vitest';
import type { Drawing } from './drawing.ts';
import { sharedNotes } from './sharedNotes.ts';

function withNotes(...notes: string[]): Drawing {
  return {
    name: 'piece',
    title: 'Piece',
    part: 'form',
    lines: [],
    lettering: [],
    notes,
    count: 1,
    routes: ['print'],
    checks: [],
  };
}

test('a note of three pieces is shared, one of two is not', () => {
  const drawings = [withNotes('wax it', 'mind'), withNotes('mind'), withNotes('mind', 'wax it')];
  expect(sharedNotes(drawings)).toEqual([{ letter: 'a', text: 'mind' }]);
});

test('letters go on with aa after z, and none comes twice', () => {
  const notes = Array.from({ length: 60 }, (_, i) => `note ${i}`);
  const letters = sharedNotes([withNotes(...notes), withNotes(...notes), withNotes(...notes)]).map(
    ({ letter }) => letter,
  );
  expect(letters[25]).toBe('z');
  expect(letters[26]).toBe('aa');
  expect(new Set(letters).size).toBe(60);
});
