import { type Cell, ours, recalled } from './size.ts';

type Cells = Readonly<Record<string, Cell>>;

const facing = recalled(1, 'sheet cork of 1 to 2');

/** What the ribs of a full-size violin are lined and pressed on with. */
export const VIOLIN_RIB_WORK: Cells = {
  liningLetIn: recalled(6, '6 to 8 into the corner blocks, the thin end of the block counted'),
  caulDepth: ours(20, 'stays straight under two clamps'),
  caulFacing: facing,
};

export const VIOLA_RIB_WORK: Cells = {
  liningLetIn: recalled(7, 'the violin, scaled'),
  caulDepth: ours(22, 'the violin, scaled'),
  caulFacing: facing,
};

export const CELLO_RIB_WORK: Cells = {
  liningLetIn: recalled(12, 'the violin, scaled; weak'),
  caulDepth: ours(34, 'the violin, scaled, less since cork evens out'),
  caulFacing: recalled(2, 'sheet cork of 2 to 3'),
};
