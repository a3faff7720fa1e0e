import { accept, type Checked, type Finding, refuse } from '../../base/index.ts';
import { outlineChain } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import { type Drawing, spokenDrawing } from '../../drawing/index.ts';
import { deriveInstrument, type Instrument, plateField } from '../../instrument/index.ts';
import {
  compareDesigns,
  contourDrawing,
  contourPicture,
  contourPlan,
  curvaturePicture,
  differencePicture,
  type PictureSheet,
  rakingLight,
  sectionDrawing,
  spokenSheet,
  thicknessDrawing,
  thicknessPicture,
  thicknessPlan,
} from '../../judging/index.ts';
import { speechOf } from '../../words/index.ts';
import type { PictureRequest } from './pictureRequest.ts';

/** A picture of a plate: to look at, to print on pages where it is a drawing at true size, and in words. */
export interface PlatePicture {
  readonly sheet?: PictureSheet;
  readonly drawing?: Drawing;
  readonly says: readonly string[];
  readonly findings: readonly Finding[];
}

/**
 * The picture that was asked for, of a design's plate; `other` is the design that it is compared with. Faults: those of
 * deriving, `section.off-plate`, `picture.with`.
 */
export function platePicture(design: Design, request: PictureRequest, other?: Design): Checked<PlatePicture> {
  const derived = deriveInstrument(design);
  if (!derived.ok) return derived;
  const picture = pictureOf(derived.value, request, other);
  if (!picture.ok || request.language === 'en') return picture;
  const names = [design.name, ...(other ? [other.name] : [])];
  const speech = speechOf(request.language, names);
  const { sheet, drawing, says, findings } = picture.value;
  return accept({
    ...(sheet && { sheet: spokenSheet(sheet, speech) }),
    ...(drawing && { drawing: spokenDrawing(drawing, speech) }),
    says: says.map(speech.tell),
    findings,
  });
}

function pictureOf(
  instrument: Instrument,
  request: PictureRequest,
  other: Design | undefined,
): Checked<PlatePicture> {
  const { plate, state } = request;
  switch (request.kind) {
    case 'contours':
      return accept(contours(instrument, request));
    case 'raking-light':
      return accept(underLamp(instrument, request));
    case 'curvature':
      return accept({ sheet: curvaturePicture(instrument, plate, state), says: [], findings: [] });
    case 'thickness':
      return accept({
        sheet: thicknessPicture(instrument, plate),
        drawing: thicknessDrawing(thicknessPlan(instrument, plate)),
        says: [],
        findings: [],
      });
    case 'difference':
      return difference(instrument, request, other);
    case 'section':
      return section(instrument, request);
  }
}

function contours(instrument: Instrument, { plate, state, intervalMm }: PictureRequest): PlatePicture {
  const plan = contourPlan(instrument, plate, state, intervalMm);
  const findings: readonly Finding[] =
    plan.unsettled === 0
      ? []
      : [
          {
            code: 'picture.contour-rough',
            weight: 'caution',
            at: `contours of the ${plate}`,
            found: `${plan.unsettled} places where no line of their height was found on the surface`,
            need: 'a surface without breaks',
            remedy:
              'there the lines stand as the grid of half a millimetre has them; look at the raking light',
          },
        ];
  return { sheet: contourPicture(plan), drawing: contourDrawing(plan), says: [], findings };
}

/** mm between the places of a field under the lamp, on an instrument of the usual length; body lengths from its middle to the lamp. */
const LAMP_STEP_MM = 0.4;
const USUAL_LENGTH_MM = 355;
const LAMP_DISTANCE = 2;
/** rad. A bulb of the size of a fist at arm's length. */
const LAMP_HALF_WIDTH_RAD = 0.03;

function underLamp(instrument: Instrument, { plate, state, lamp }: PictureRequest): PlatePicture {
  const arch = instrument.plates[plate];
  const inDegrees = (rad: number) => ((rad * 180) / Math.PI).toFixed(0);
  return {
    sheet: rakingLight({
      title: `${instrument.plan.name}: ${plate}, ${state}`,
      says: `lamp ${inDegrees(lamp.heightRad)}° above the plate, ${inDegrees(lamp.fromRad)}° clockwise from the neck end`,
      field: plateField(arch, state, (LAMP_STEP_MM * arch.bodyLengthMm) / USUAL_LENGTH_MM),
      outline: outlineChain(instrument.half),
      lamp: {
        ...lamp,
        distanceMm: LAMP_DISTANCE * arch.bodyLengthMm,
        halfWidthRad: LAMP_HALF_WIDTH_RAD,
      },
    }),
    says: [],
    findings: [],
  };
}

function difference(
  instrument: Instrument,
  { plate, state }: PictureRequest,
  other: Design | undefined,
): Checked<PlatePicture> {
  if (other === undefined)
    return refuse({
      code: 'picture.with',
      at: '--with',
      found: 'no other design',
      need: 'the design to compare with',
      remedy: 'give it',
    });
  const second = deriveInstrument(other);
  if (!second.ok)
    return refuse(...second.faults.map((fault) => ({ ...fault, at: `${other.name}: ${fault.at}` })));
  const found = compareDesigns(instrument, second.value, plate, state);
  return accept({
    sheet: differencePicture(instrument, second.value, plate, found),
    says: [...found.says, ...found.numbers],
    findings: [],
  });
}

function section(instrument: Instrument, { plate, state, line }: PictureRequest): Checked<PlatePicture> {
  if (line === undefined)
    return refuse({
      code: 'picture.line',
      at: '--line',
      found: 'no line',
      need: 'the line to cut along',
      remedy: 'give one, such as "0,60 0,300"',
    });
  const made = sectionDrawing(instrument, plate, state, ...line);
  return made.ok ? accept({ drawing: made.value.drawing, says: made.value.says, findings: [] }) : made;
}
