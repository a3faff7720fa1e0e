import type { SheetInk, ShownPage, ShownPages } from '../../core/index.ts';

/** A sheet of paper as it prints, its pieces clipped to the windows in which they lie; small ones show what is cut and the tile. */
export function SheetPaper({
  page,
  scale,
  isSmall = false,
}: {
  readonly page: ShownPage;
  readonly scale: ShownPages['scale'];
  readonly isSmall?: boolean;
}) {
  const { widthMm, heightMm, pieces, own, texts, number } = page;
  const clip = `sheet-${isSmall ? 'small' : 'near'}-${number}`;
  // The printer's own error is taken out about the middle of the paper.
  const corrected = `translate(${(widthMm * (1 - scale.x)) / 2} ${(heightMm * (1 - scale.y)) / 2}) scale(${scale.x} ${scale.y})`;
  return (
    <svg class="sheet-paper" viewBox={`0 0 ${widthMm} ${heightMm}`} aria-hidden="true">
      <defs>
        {pieces.map(({ window: [x, y, width, height] }, index) => (
          <clipPath key={index} id={`${clip}-${index}`}>
            <rect x={x} y={y} width={width} height={height} />
          </clipPath>
        ))}
      </defs>
      <rect class="sheet-ground" width={widthMm} height={heightMm} />
      <g transform={corrected}>
        {pieces.map(({ ink }, index) => (
          <g key={index} clip-path={`url(#${clip}-${index})`}>
            <Ink ink={isSmall ? ink.filter(({ pen }) => pen !== 'text') : ink} isSmall={isSmall} />
          </g>
        ))}
        {!isSmall && <Ink ink={own} isSmall={false} />}
        {isSmall && pieces.length === 0 && (
          <path
            class="ink rule"
            d={texts.map(({ at: [x, y], widthMm: wide }) => `M${x} ${y}h${wide}`).join('')}
            vector-effect="non-scaling-stroke"
          />
        )}
        {!isSmall &&
          texts.map(({ text, at: [x, y], sizeMm, widthMm: wide, isBold, isGrey, anchor, turnRad }, index) => (
            <text
              key={index}
              class={isGrey ? 'sheet-text grey' : 'sheet-text'}
              x={x}
              y={y}
              font-size={sizeMm}
              textLength={wide}
              lengthAdjust="spacingAndGlyphs"
              font-weight={isBold ? 700 : 400}
              text-anchor={anchor}
              transform={turnRad === 0 ? undefined : `rotate(${(-turnRad * 180) / Math.PI} ${x} ${y})`}
            >
              {text}
            </text>
          ))}
      </g>
    </svg>
  );
}

function Ink({ ink, isSmall }: { readonly ink: readonly SheetInk[]; readonly isSmall: boolean }) {
  return (
    <>
      {ink.map(({ pen, path }) => (
        <path
          key={pen}
          class={`ink ${pen}`}
          d={path}
          vector-effect={isSmall ? 'non-scaling-stroke' : undefined}
        />
      ))}
    </>
  );
}
