/** Stands wherever wood is taken off in bulk. */
export const ROUGHING_CAUTION =
  'Saws, routers, drills and gouges can hurt badly: clamp the board, keep both hands out of the line of the cutter, wear eye and ear protection and a dust mask, tie back hair and sleeves, cut in shallow passes, and follow the manual of the machine.';
