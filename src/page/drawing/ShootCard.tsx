/** How an arch or a head lies on the sheet to be photographed: drawn, for a bench that is still empty. */
export function ShootCard({ of }: { readonly of: 'arch' | 'head' }) {
  const along = Array.from({ length: 14 }, (_, index) => 22 + index * 20);
  return (
    <div class="sheet profile-empty">
      <figure>
        <svg viewBox="0 0 320 230" aria-hidden="true">
          <rect class="how-paper" x="10" y="10" width="300" height="210" />
          {along.map((x, index) => (
            <g key={x}>
              <rect class="how-ink" x={x} y={16 + (index % 2) * 9} width="9" height="9" />
              <rect class="how-ink" x={x} y={196 + (index % 2) * 9} width="9" height="9" />
            </g>
          ))}
          {of === 'arch' ? (
            <path
              class="how-wood"
              d="M50 150V124c10 6 18 4 28-2 26-16 46-26 82-26s56 10 82 26c10 6 18 8 28 2v26z"
            />
          ) : (
            <path
              class="how-wood"
              d="M56 150l96-16c10-24 26-44 54-44a34 34 0 0 1 34 34c0 20-14 32-30 32-14 0-22-8-22-20 0-9 6-15 14-15-6-5-20-3-24 9-6 18-14 34-34 40l-84 8z"
            />
          )}
        </svg>
      </figure>
    </div>
  );
}
