import { useEffect, useRef, useState } from 'preact/hooks';
import type { ShownPage, ShownPages } from '../../core/index.ts';
import { told } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';
import { SheetPaper } from './SheetPaper.tsx';

/** Every sheet as it will print: one near, all of them small beside each other to change over. */
export function SheetsView({ shown }: { readonly shown: ShownPages }) {
  const said = words().sheets;
  const { pages, scale } = shown;
  const [at, setAt] = useState(0);
  const [isLarge, setLarge] = useState(false);
  const strip = useRef<HTMLOListElement>(null);
  const page = pages[Math.min(at, pages.length - 1)];
  useEffect(() => {
    strip.current?.children[at]?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [at]);
  if (page === undefined) return null;
  const turn = (event: KeyboardEvent) => {
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: pages.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = Math.min(pages.length - 1, Math.max(0, to));
    setAt(next);
    strip.current?.children[next]?.querySelector('button')?.focus({ preventScroll: true });
  };
  return (
    <section class="sheets" aria-label={said.paper}>
      <header class="sheets-head">
        <h2>{said.page(page.number, pages.length)}</h2>
        <p>{sheetName(page)}</p>
      </header>
      <ol class="sheet-strip" ref={strip} onKeyDown={turn}>
        {pages.map((one, index) => (
          <li key={one.number}>
            <button
              type="button"
              class={index === at ? 'sheet-small here' : 'sheet-small'}
              aria-current={index === at ? 'page' : undefined}
              aria-label={`${said.page(one.number, pages.length)}: ${sheetName(one)}`}
              tabIndex={index === at ? 0 : -1}
              onClick={() => setAt(index)}
            >
              <SheetPaper page={one} scale={scale} isSmall />
            </button>
          </li>
        ))}
      </ol>
      {/* The button lies over the paper: what is printed on it is no part of the button's name. */}
      <div class={isLarge ? 'sheet-near large' : 'sheet-near'}>
        <div class="sheet-lies">
          <SheetPaper page={page} scale={scale} />
          <button
            type="button"
            class="sheet-cover"
            aria-label={isLarge ? said.whole : said.nearer}
            aria-expanded={isLarge}
            onClick={() => setLarge(!isLarge)}
          />
        </div>
      </div>
      <p class="sheets-foot">
        {said.size(print(page.widthMm), print(page.heightMm))}
        {scale.x !== 1 || scale.y !== 1 ? ` ${said.corrected(percentOff(scale.x), percentOff(scale.y))}` : ''}
      </p>
    </section>
  );
}

/** How much larger a printer must be told to draw, per cent, with its sign. */
function percentOff(scale: number): string {
  const off = 100 * (scale - 1);
  return `${off < 0 ? '−' : '+'}${print(Math.abs(off), 2)}`;
}

function sheetName({ title, tile }: ShownPage): string {
  return tile === undefined ? told(title) : `${told(title)}, ${tile}`;
}
