import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../core/index.ts';
import { takeUpAgain } from '../keeping/keepPhotographs.ts';
import { idOf, keptTold, type Told } from '../keeping/photographShelf.ts';
import { look } from '../keeping/tracing.ts';
import { words } from '../words/words.ts';

/** The photographs that the design on the bench was traced from, while the browser still has them. */
export function OwnPhotograph({ design }: { readonly design: Design }) {
  const said = words();
  const [told, setTold] = useState<Told | null>(null);
  const { outline } = design;
  const record = outline.kind === 'traced' ? outline.request : undefined;
  const id = record && idOf(record.photographs.map(({ sha256 }) => sha256 ?? ''));
  useEffect(() => {
    void keptTold().then(
      (all) => setTold(all.find((one) => one.id === id) ?? null),
      () => setTold(null),
    );
  }, [id]);
  if (told === null) return null;
  return (
    <div class="begin">
      <button
        type="button"
        class="pale"
        onClick={() =>
          void takeUpAgain(told).then((isThere) => {
            if (isThere) void look();
          })
        }
      >
        {said.kept.own}
      </button>
      <p class="how-to">{said.kept.ownWhy}</p>
    </div>
  );
}
