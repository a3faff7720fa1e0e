/** mm. The body that the lengths of these checks are for; others take them in proportion. */
export const USUAL_LENGTH_MM = 355;
