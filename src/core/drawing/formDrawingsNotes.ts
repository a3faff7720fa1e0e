import type { PlanParts } from '../instrument/index.ts';

/** What stands beside every sheet that leads to a cut. */
export const CUTTING_CAUTION =
  'Saw, knife, router and laser can hurt: follow the manual of the machine, hold the work down, keep hands clear, wear eye protection, draw off dust and fumes, and never leave a laser alone.';

/** Sentences for the margin of the form's sheets. */
export function formNotes(parts: PlanParts): string[] {
  return [
    `Sheet ${parts.form.thicknessMm} mm thick. Cut outside the line and file to it, square to the faces.`,
    measureNote(parts),
    'The recesses are the blocks exactly: shave the blocks to a sliding fit. A round cutter leaves the inside corners round: clear them with a chisel.',
    'The lines beyond the form at the corners show blocks, ribs and edge of the plate for reference; nothing is cut there.',
    'Wax the edge of the form, but not the recesses, so that glue holds only where it is wanted.',
    CUTTING_CAUTION,
  ];
}

/** Sentences for the margin of the sheets of a form in two halves. */
export function halfFormNotes(parts: PlanParts): string[] {
  return [
    'The straight edges lie exactly on the centre line: cut each half from its own piece.',
    `If one blank is sawn in two, the width of the cut is lost: put a strip as thick as the cut between the halves. ${measureNote(parts)}`,
    'Screw two battens across on the back side, where they are shown or where they clear the holes; take them off to draw the halves out of the ribs.',
    ...formNotes(parts).slice(2),
  ];
}

function measureNote(parts: PlanParts): string {
  const widths = parts.form.checkWidths.map(
    ({ name, widthMm }) =>
      `${widthMm.toFixed(1)} mm at the ${name === 'waist' ? 'waist' : 'widest lower bout'}`,
  );
  return `The whole form measures ${widths.join(' and ')}.`;
}
