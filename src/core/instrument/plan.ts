import type { Finding } from '../base/index.ts';
import type { Family } from '../design/index.ts';
import type { RegisterEntry } from '../quantity/index.ts';
import type { BlockParts } from './blocks/blockParts.ts';
import type { CaulParts } from './cauls/caul.ts';
import type { FormParts } from './form/formParts.ts';
import type { LiningParts } from './linings/lining.ts';
import type { BodyOutline } from './outline/bodyOutline.ts';
import type { PurflingLines } from './outline/purflingLines.ts';
import type { Station } from './outline/stations.ts';
import type { TemplateParts } from './outline/templates.ts';
import type { RibLines } from './ribs/ribLines.ts';

/** Everything in the plane of the plates: what form, templates, ribs and blocks are made from. Body frame, mm. */
export interface PlanParts {
  readonly name: string;
  readonly family: Family;
  readonly outline: BodyOutline;
  readonly stations: readonly Station[];
  readonly purfling: PurflingLines;
  readonly ribs: RibLines;
  readonly blocks: BlockParts;
  readonly linings: LiningParts;
  readonly form: FormParts;
  readonly cauls: CaulParts;
  readonly outlineTemplate: TemplateParts;
  /** Template of the inner outline, without recesses. */
  readonly innerTemplate: TemplateParts;
  readonly findings: readonly Finding[];
  readonly registerEntries: readonly RegisterEntry[];
}
