import { expect, test } from 'vitest';
import { ARCH, cardPicture, profileFinder } from '../../../../test/fixtures/profilePictures.ts';
import { takeProposal } from '../../design/index.ts';
import { draft } from '../draft.ts';
import { takeProfiles } from './takeProfiles.ts';
import { traceArchProfile } from './traceArchProfile.ts';
import { valuesOfProfile } from './valuesOfProfile.ts';

const drafted = draft([{ name: 'table', json: { family: 'violin', values: { bodyLength: 355 } } }]);
if (!drafted.ok) throw new Error('no design');
const { design } = drafted.value;
const traced = traceArchProfile(
  {
    name: 'card.jpg',
    picture: cardPicture(true),
    sheetBarMm: { xMm: 150, yMm: 150 },
    heightMm: 1,
    of: 'crossArch',
    kind: 'edge',
    base: 'face',
    face: 'back',
    station: 'waist',
  },
  profileFinder,
);
if (!traced.ok) throw new Error(JSON.stringify(traced.faults));
const document: unknown = JSON.parse(JSON.stringify(traced.value.document));

test('an arch from a photograph gives its height, and the proposal is one step away', () => {
  const taken = takeProfiles(design, [document], []);
  if (!taken.ok) throw new Error(JSON.stringify(taken.faults));
  const { archHeightBack } = taken.value.design.values;
  // The card's straight edge was laid to the gluing face: the crest stands the rise and the channel above it.
  expect(Math.abs((archHeightBack?.value ?? 0) - ARCH.rise - ARCH.face)).toBeLessThan(0.2);
  expect(archHeightBack?.origin.kind).toBe('measured');
  expect(taken.value.design.overruled?.archHeightBack).toEqual(design.values.archHeightBack);
  expect(takeProposal(taken.value.design, 'archHeightBack').values.archHeightBack).toEqual(
    design.values.archHeightBack,
  );
  expect(taken.value.design.values.archHeightTop).toEqual(design.values.archHeightTop);
});

test('what is no profile is refused', () => {
  const taken = takeProfiles(design, [{ format: 'garland-trace', version: 1 }], []);
  expect(taken.ok).toBe(false);
});

/** The same card as it would have been read from another photograph, its arch lower by `lowerMm`. */
function another(name: string, lowerMm: number, changes: object = {}): unknown {
  const { points, ...rest } = document as { readonly points: readonly (readonly [number, number])[] };
  return { ...rest, ...changes, name, points: points.map(([along, up]) => [along, up - lowerMm]) };
}

function taken(of: typeof design, chosen: readonly unknown[], listed: readonly string[]) {
  const made = takeProfiles(of, chosen, listed);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value.design;
}

test('of two photographs of one arch the chosen one counts, and without either the design is as it was', () => {
  const listed = ['card.jpg', 'card.jpg.png'];
  const [one, other] = [document, another('card.jpg.png', 0.5)];
  const first = taken(design, [one], listed);
  const second = taken(first, [other], listed);
  expect(valuesOfProfile(first, 'card.jpg')).toContain('archHeightBack');
  expect(valuesOfProfile(second, 'card.jpg')).toEqual([]);
  expect(valuesOfProfile(second, 'card.jpg.png')).toContain('archHeightBack');
  expect((first.values.archHeightBack?.value ?? 0) - (second.values.archHeightBack?.value ?? 0)).toBeCloseTo(
    0.5,
    6,
  );
  expect(second.overruled?.archHeightBack).toEqual(design.values.archHeightBack);
  expect(taken(second, [one], listed)).toEqual(first);
  expect(taken(second, [], listed).values).toEqual(design.values);
});

test('arches at two stations count together, each for its own', () => {
  const upper = another('upper.jpg', 2, { station: 'upperBout' });
  const both = taken(design, [document, upper], ['card.jpg', 'upper.jpg']);
  expect(valuesOfProfile(both, 'card.jpg')).toEqual(
    expect.arrayContaining(['archHeightBack', 'fullnessWaist']),
  );
  expect(valuesOfProfile(both, 'upper.jpg')).toEqual(['fullnessUpperBout']);
  const alone = taken(both, [document], ['card.jpg', 'upper.jpg']);
  expect(alone.values.fullnessUpperBout).toEqual(design.values.fullnessUpperBout);
});
