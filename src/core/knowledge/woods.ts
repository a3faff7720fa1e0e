import { type Cell, ours, recalled } from './size.ts';

/** Woods of the plates and what is left for the last scraping, the same for every size of instrument. */
export const WOODS: Readonly<Record<string, Cell>> = {
  hollowAllowance: ours(0.5, 'a thumb plane and a scraper take the rest'),
  densityBack: recalled(620, 'sycamore maple, 550 to 700'),
  densityTop: recalled(420, 'European spruce, 350 to 470; one published range of tone wood is 320 to 420'),
};
