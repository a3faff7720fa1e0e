import { expect, test } from 'vitest';
import { ARCH, cardPicture, profileFinder } from '../../../../test/fixtures/profilePictures.ts';
import { takeProposal } from '../../design/index.ts';
import { draft } from '../draft.ts';
import { takeProfile } from './takeProfile.ts';
import { traceArchProfile } from './traceArchProfile.ts';

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
  const taken = takeProfile(design, document);
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
  const taken = takeProfile(design, { format: 'garland-trace', version: 1 });
  expect(taken.ok).toBe(false);
});
