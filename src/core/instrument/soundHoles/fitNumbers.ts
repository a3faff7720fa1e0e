import type { HoleEndShape, HoleShapeHabit } from '../../knowledge/index.ts';
import type { DrawnSizes } from './draftHole.ts';

/** A hole as its sizes and its shape, which {@link drawHole} draws. */
export interface DrawnFrom {
  readonly sizes: DrawnSizes;
  readonly shape: HoleShapeHabit;
}

/**
 * One number that a hole is fitted by: how it is read and put, in mm on the hole or degrees, and how far holes of different makers
 * differ in it (twelve holes of six instruments on photographs, their standard deviations at a length of 75 mm).
 */
interface FitNumber {
  readonly spread: number;
  /** mm of it go with the length of the hole. */
  readonly scales: boolean;
  readonly read: (from: DrawnFrom) => number;
  readonly put: (from: DrawnFrom, value: number) => DrawnFrom;
}

type EndName = 'upper' | 'lower';

const size = (
  name: 'upperEyesApartMm' | 'upperEyeMm' | 'lowerEyeMm' | 'turnsApartMm' | 'tipGapMm',
  spread: number,
): FitNumber => ({
  spread,
  scales: true,
  read: ({ sizes }) => sizes[name],
  put: (from, value) => ({ ...from, sizes: { ...from.sizes, [name]: value } }),
});

const whole = (name: 'eyesAcross' | 'stemAcross', spread: number): FitNumber => ({
  spread,
  scales: true,
  read: ({ sizes, shape }) => shape[name] * sizes.lengthMm,
  put: (from, value) => ({ ...from, shape: { ...from.shape, [name]: value / from.sizes.lengthMm } }),
});

const turned = (name: 'slantDeg' | 'edgesDeg', spread: number): FitNumber => ({
  spread,
  scales: false,
  read: ({ shape }) => shape[name],
  put: (from, value) => ({ ...from, shape: { ...from.shape, [name]: value } }),
});

const putEnd = (from: DrawnFrom, end: EndName, changed: Partial<HoleEndShape>): DrawnFrom => ({
  ...from,
  shape: { ...from.shape, [end]: { ...from.shape[end], ...changed } },
});

const lengthAtEnd = (end: EndName, name: 'eye' | 'shoulder' | 'turnsOver', spread: number): FitNumber => ({
  spread,
  scales: true,
  read: ({ sizes, shape }) => shape[end][name] * sizes.lengthMm,
  put: (from, value) => putEnd(from, end, { [name]: value / from.sizes.lengthMm }),
});

const atEnd = (
  end: EndName,
  name: 'hookFromDeg' | 'eyeFromDeg' | 'tipDeg' | 'taperDeg' | 'wingShare' | 'wingAtEyeDeg' | 'tipGap',
  spread: number,
): FitNumber => ({
  spread,
  scales: false,
  read: ({ shape }) => shape[end][name],
  put: (from, value) => putEnd(from, end, { [name]: value }),
});

/** Both reaches together are the length: what goes with the length keeps its millimetres. */
const reach = (end: EndName): FitNumber => ({
  spread: 0.4,
  scales: true,
  read: ({ sizes, shape }) => shape[end].reach * sizes.lengthMm,
  put: (from, value) => {
    const other = end === 'upper' ? 'lower' : 'upper';
    const lengthMm = value + from.shape[other].reach * from.sizes.lengthMm;
    const kept = rescaled(from.shape, from.sizes.lengthMm / lengthMm);
    return {
      sizes: { ...from.sizes, lengthMm },
      shape: { ...kept, [end]: { ...kept[end], reach: value / lengthMm } },
    };
  },
});

/** The shape as shares of another length. */
function rescaled(shape: HoleShapeHabit, by: number): HoleShapeHabit {
  const end = (each: HoleEndShape): HoleEndShape => ({
    ...each,
    reach: each.reach * by,
    eye: each.eye * by,
    shoulder: each.shoulder * by,
    turnsOver: each.turnsOver * by,
  });
  return {
    ...shape,
    upper: end(shape.upper),
    lower: end(shape.lower),
    eyesAcross: shape.eyesAcross * by,
    stemAcross: shape.stemAcross * by,
    outerNick: shape.outerNick * by,
    nickWidth: shape.nickWidth * by,
    nickDepth: shape.nickDepth * by,
  };
}

/** Every number that a hole is fitted by; nicks are set by where they are seen. */
export const FIT_NUMBERS: readonly FitNumber[] = [
  reach('upper'),
  reach('lower'),
  size('upperEyesApartMm', 4),
  size('upperEyeMm', 0.35),
  size('lowerEyeMm', 1),
  size('turnsApartMm', 0.65),
  size('tipGapMm', 0.3),
  whole('eyesAcross', 1.2),
  whole('stemAcross', 1),
  turned('slantDeg', 0.8),
  turned('edgesDeg', 0.8),
  lengthAtEnd('upper', 'eye', 0.7),
  lengthAtEnd('lower', 'eye', 0.7),
  lengthAtEnd('upper', 'shoulder', 5),
  lengthAtEnd('lower', 'shoulder', 5),
  lengthAtEnd('upper', 'turnsOver', 1.4),
  lengthAtEnd('lower', 'turnsOver', 3),
  atEnd('upper', 'hookFromDeg', 7),
  atEnd('lower', 'hookFromDeg', 7),
  atEnd('upper', 'eyeFromDeg', 6),
  atEnd('lower', 'eyeFromDeg', 6),
  atEnd('upper', 'tipDeg', 9),
  atEnd('lower', 'tipDeg', 9),
  atEnd('upper', 'taperDeg', 5),
  atEnd('lower', 'taperDeg', 5),
  atEnd('upper', 'wingShare', 0.25),
  atEnd('lower', 'wingShare', 0.15),
  atEnd('upper', 'wingAtEyeDeg', 6.5),
  atEnd('lower', 'wingAtEyeDeg', 6.5),
  atEnd('lower', 'tipGap', 0.5),
];
