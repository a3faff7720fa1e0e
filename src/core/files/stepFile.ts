import { type StepEntities, stepEntities, stepText } from './stepEntities.ts';
import { stepAxes } from './stepGeometry.ts';

/**
 * A STEP file (ISO 10303-21, AP 214) of one solid, in millimetres. `shellOf` adds its faces and returns its closed shell;
 * `uncertainty` is the mm within which a reader may take places for one, as STEP writes numbers.
 */
export function stepFile(
  title: string,
  uncertainty: string,
  shellOf: (file: StepEntities) => string,
): string {
  const file = stepEntities();
  const solid = file.add(`MANIFOLD_SOLID_BREP(${stepText(title)},${shellOf(file)})`);
  productOf(file, title, solid, uncertainty);
  return [
    'ISO-10303-21;',
    'HEADER;',
    `FILE_DESCRIPTION((${stepText(title)}),'2;1');`,
    `FILE_NAME(${stepText(title)},'',(''),(''),'','','');`,
    "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));",
    'ENDSEC;',
    'DATA;',
    ...file.lines,
    'ENDSEC;',
    'END-ISO-10303-21;',
    '',
  ].join('\n');
}

/** The entities that make a solid the shape of a product in millimetres. */
function productOf(file: StepEntities, title: string, solid: string, uncertainty: string): void {
  const { add } = file;
  const application = add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
  add(`APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,${application})`);
  const context = add(`PRODUCT_CONTEXT('',${application},'mechanical')`);
  const product = add(`PRODUCT(${stepText(title)},${stepText(title)},'',(${context}))`);
  const formation = add(`PRODUCT_DEFINITION_FORMATION('','',${product})`);
  const stage = add(`PRODUCT_DEFINITION_CONTEXT('part definition',${application},'design')`);
  const definition = add(`PRODUCT_DEFINITION('design','',${formation},${stage})`);
  const shape = add(`PRODUCT_DEFINITION_SHAPE('','',${definition})`);
  const length = add('(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))');
  const angle = add('(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))');
  const solidAngle = add('(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())');
  const within = add(
    `UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(${uncertainty}),${length},'distance_accuracy_value','')`,
  );
  const space = add(
    `(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((${within}))GLOBAL_UNIT_ASSIGNED_CONTEXT((${length},${angle},${solidAngle}))REPRESENTATION_CONTEXT('',''))`,
  );
  const brep = add(
    `ADVANCED_BREP_SHAPE_REPRESENTATION(${stepText(title)},(${stepAxes(file, [0, 0, 0])},${solid}),${space})`,
  );
  add(`SHAPE_DEFINITION_REPRESENTATION(${shape},${brep})`);
}
