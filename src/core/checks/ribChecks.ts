import type { Finding } from '../base/index.ts';
import type { Design, ValueName } from '../design/index.ts';
import { findingOn, shown, valueOf } from './valueOf.ts';

/** mm. What the form should leave free beside both linings, to be lifted out; chosen by us. */
const FORM_CLEARANCE_MM = 2;

/** Form and linings against the ribs; pins against blocks; rib heights against each other. */
export function ribFindings(design: Design): readonly Finding[] {
  return [...formFindings(design), ...taperFindings(design), ...pinFindings(design)];
}

function formFindings(design: Design): readonly Finding[] {
  const neck = valueOf(design, 'ribHeightNeck');
  const tail = valueOf(design, 'ribHeightTail');
  const [lowest, name]: readonly [number, ValueName] =
    tail < neck ? [tail, 'ribHeightTail'] : [neck, 'ribHeightNeck'];
  const form = valueOf(design, 'formThickness');
  if (form > lowest)
    return [
      findingOn(['formThickness', name], 'contradiction', 'check.form-thicker-than-ribs', {
        found: `a form of ${shown(form)} mm in ribs of ${shown(lowest)} mm`,
        need: 'a form thinner than the lowest rib',
        remedy: 'use a thinner form',
      }),
    ];
  const room = lowest - 2 * valueOf(design, 'liningWidth') - FORM_CLEARANCE_MM;
  if (!(form > room)) return [];
  return [
    findingOn(['formThickness', 'liningWidth', name], 'caution', 'check.form-and-linings', {
      found: `a form of ${shown(form)} mm between linings of ${shown(valueOf(design, 'liningWidth'))} mm`,
      need: `${shown(room)} mm or less, if both linings go in with the form in place`,
      remedy: 'use a thinner form, or put in the second linings after the form is out',
    }),
  ];
}

function taperFindings(design: Design): readonly Finding[] {
  const neck = valueOf(design, 'ribHeightNeck');
  const tail = valueOf(design, 'ribHeightTail');
  if (!(neck > tail)) return [];
  return [
    findingOn(['ribHeightNeck', 'ribHeightTail'], 'caution', 'check.rib-taper', {
      found: `ribs of ${shown(neck)} mm at the neck and ${shown(tail)} mm at the lower end`,
      need: 'ribs as high at the lower end as at the neck, or higher',
      remedy: 'check whether the two were exchanged',
    }),
  ];
}

function pinFindings(design: Design): readonly Finding[] {
  const pin = valueOf(design, 'pinFromEnd');
  const inset = valueOf(design, 'overhang') + valueOf(design, 'ribThickness');
  const half = valueOf(design, 'pinDiameter') / 2;
  return (['upperBlockDepth', 'lowerBlockDepth'] as const)
    .filter((name) => pin - half < inset + valueOf(design, name))
    .map((name) =>
      findingOn(['pinFromEnd', name], 'contradiction', 'check.pin-in-block', {
        found: `a pin ${shown(pin)} mm from the end, a block that reaches ${shown(inset + valueOf(design, name))} mm in`,
        need: 'the pin hole in the form, clear of the recess',
        remedy: 'move the pins further in',
      }),
    );
}
