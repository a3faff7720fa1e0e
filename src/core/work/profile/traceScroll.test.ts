import { describe, expect, test } from 'vitest';
import { profileFinder, SCROLL, scrollPicture } from '../../../../test/fixtures/profilePictures.ts';
import { traceScroll } from './traceScroll.ts';

describe('a scroll photographed on its other side', () => {
  const outcome = traceScroll(
    { name: 'scroll.jpg', picture: scrollPicture(), sheetBarMm: { xMm: 150, yMm: 150 }, heightMm: 10 },
    profileFinder,
  );
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const { document } = outcome.value;
  const place = (name: string) => document.places?.[name]?.at ?? [Number.NaN, Number.NaN];

  test('gives a closed contour in millimetres from the nut end, the front up', () => {
    const xs = document.points.map(([x]) => x);
    expect(Math.abs(Math.max(...xs) - Math.min(...xs) - SCROLL.length)).toBeLessThan(1);
    expect(document.mirrored).toBe(true);
    const onTurn = document.points
      .filter(([x, y]) => x > 88 || (y > 25 && x > 70))
      .map(([x, y]) => Math.hypot(x - place('eyeGuess')[0], y - place('eyeGuess')[1]));
    const mean = onTurn.reduce((sum, one) => sum + one, 0) / onTurn.length;
    expect(Math.abs(mean - SCROLL.radius)).toBeLessThan(0.5);
  });

  test('says that its side shows beyond its edge, from so near', () => {
    expect(outcome.value.findings.map(({ code }) => code)).toContain('profile.side-shows');
  });

  test('tells crest, throat and where the eye may be, each with its ±', () => {
    expect(Math.abs(place('crest')[0] - SCROLL.length)).toBeLessThan(1.5);
    expect(Math.abs(place('throat')[0] - SCROLL.throatX)).toBeLessThan(3);
    const [x, y] = place('eyeGuess');
    const { plusMinus, radius } = document.places?.eyeGuess ?? { plusMinus: 0, radius: 0 };
    expect(Math.hypot(x - SCROLL.eye[0], y - SCROLL.eye[1])).toBeLessThan(plusMinus);
    expect(Math.abs((radius ?? 0) - SCROLL.radius)).toBeLessThan(0.5);
  });
});
