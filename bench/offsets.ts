// Twenty offsets of an outline of forty arcs: ours against libraries that offset arcs or their points.
import { type Contender, mediansMs, ROUNDS } from './measuring/median.ts';
import { arcPeers, type OffsetPeer, polygonPeers } from './measuring/offsetPeers.ts';
import { waistedOutline } from './measuring/outline.ts';

const DISTANCES_MM = Array.from({ length: 20 }, (_, index) =>
  index < 10 ? -3 * (10 - index) : 3 * (index - 9),
);
const CHORD_ERRORS_MM = [0.01, 0.001];

/** How many times as long as ours each peer should take at least, in the order of the table. */
const TARGETS = [1, 1, 8, 6, 2.5, 40, 30, 15];

const chain = waistedOutline(40);
const peers: OffsetPeer[] = [...arcPeers(chain)];
for (const errorMm of CHORD_ERRORS_MM) peers.push(...(await polygonPeers(chain, errorMm)));

const contenders: readonly Contender[] = peers.map(({ name, offset }) => ({
  name,
  work: () => {
    for (const distanceMm of DISTANCES_MM) offset(distanceMm);
  },
}));
const medians = mediansMs(contenders);

console.log(`20 offsets of 40 arcs, median of ${ROUNDS}; areas against ours, largest difference`);
for (const [index, { name, areaMm2 }] of peers.entries()) {
  const offMm2 = Math.max(...DISTANCES_MM.map((each) => Math.abs(areaMm2(each) - peers[0].areaMm2(each))));
  const ratio = medians[index] / medians[0];
  console.log(
    `${name.padEnd(46)} ${medians[index].toFixed(2).padStart(9)} ms ${ratio.toFixed(2).padStart(8)} x ours` +
      ` (target ${TARGETS[index].toString().padStart(4)})  ${offMm2.toFixed(3).padStart(8)} mm²`,
  );
}
