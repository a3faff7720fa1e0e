/**
 * The elementary functions, out of sums, products, quotients and square roots alone, which every engine rounds alike. The
 * language leaves the last places of its own ones to the engine, and browsers differ in them: a photograph restored in one
 * browser, or with one Node, would give a file that another does not repeat to the byte. Series are summed in pairs, by powers of
 * a square: fewer sums wait for one another.
 */
export { acos, asin, atan, atan2 } from './arc.ts';
export { cos, sin, tan } from './circle.ts';
export { cbrt, exp, expm1, log, power, tanh } from './growth.ts';
export { hypot, norm } from './hypot.ts';
