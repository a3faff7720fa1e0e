import { PieceWall } from '../drawing/PieceWall.tsx';
import { Leaf } from '../notebook/Leaf.tsx';
import { stop } from '../store.ts';
import { words } from '../words/words.ts';

/** The work at the bench, as far as it is written. */
export function BuildStop() {
  const said = words();
  return (
    <>
      <main class="drawing scrolls">
        <PieceWall parts={null} />
      </main>
      <Leaf
        question={said.questions.build}
        lead={said.leads.build}
        answers={[
          {
            says: said.onTo(said.stops.takeAway),
            give: () => {
              stop.value = 'takeAway';
            },
          },
        ]}
      />
    </>
  );
}
