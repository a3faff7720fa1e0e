/**
 * Every tolerance of the house. Nowhere else does a bare small number stand (the architecture test
 * looks for one).
 */

/** mm. Two points this near are one point: far below what wood or a tool can show, far above rounding. */
export const WELD_MM = 1e-6;

/** mm. The step at which coordinates are written to files; a tenth of a micrometre. */
export const WRITE_MM = 1e-4;

/** rad. Two directions this near are one direction; joints inside a section are tangent to this. */
export const TANGENT_RAD = 1e-9;

/** mm. Residual below which a drafting equation counts as met. */
export const DRAFT_MM = 1e-8;

/** No unit. Relative change below which an iteration has settled. */
export const SETTLED = 1e-12;
