import type { ProfileOutcome } from '../../core/index.ts';
import { profile, profileAddress } from '../keeping/profiling.ts';
import { words } from '../words/words.ts';
import { ShootCard } from './ShootCard.tsx';

/** mm round what was read. */
const ROUND_MM = 6;

/** The photograph of an arch or a head; once it is read, its line stands over it, upright. */
export function ProfileDrawing({ of }: { readonly of: 'arch' | 'head' }) {
  const asked = profile.value;
  const address = profileAddress.value;
  if (!asked?.photograph || address === null) return <ShootCard of={of} />;
  const { photograph, read } = asked;
  return (
    <div class={read ? 'sheet profile read' : 'sheet profile'}>
      <div class="photograph profile-photograph">
        <img class="asked" src={address} alt={photograph.name} />
      </div>
      {read && <ReadLine document={read.document} />}
    </div>
  );
}

function ReadLine({ document }: { readonly document: ProfileOutcome['document'] }) {
  const xs = document.points.map(([x]) => x);
  const ys = document.points.map(([, y]) => -y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const path = `M${document.points.map(([x, y]) => `${x} ${-y}`).join('L')}`;
  return (
    <figure class="profile-line">
      <svg
        viewBox={`${left - ROUND_MM} ${top - ROUND_MM} ${width + 2 * ROUND_MM} ${height + 2 * ROUND_MM}`}
        role="img"
        aria-label={words().profile.drawing}
      >
        <path class="line edge" d={document.of === 'scrollSide' ? `${path}Z` : path} />
      </svg>
      <figcaption class="origin">{words().profile.drawing}</figcaption>
    </figure>
  );
}
