import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** What runs in the page: every rule; then what seems too small to touch, once it is brought clear of what lies over the foot of the page. */
const LOOK = `(async () => {
  // Colours that still change are nobody's colours.
  await Promise.allSettled(document.getAnimations().map((one) => one.finished));
  const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await axe.run(':root', { runOnly: rules });
  const told = [];
  for (const { id, nodes } of violations)
    for (const { html, target } of nodes) {
      if (id === 'target-size') {
        document.querySelector(target[0])?.scrollIntoView({ block: 'center' });
        const again = await axe.run({ include: [target] }, { runOnly: { type: 'rule', values: [id] } });
        if (again.violations.length === 0) continue;
      }
      told.push(id + ': ' + html.slice(0, 200));
    }
  return told;
})()`;

/** What an independent checker finds amiss on a page for those who cannot see or point; empty where nothing is. */
export async function amissOn(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(LOOK) as Promise<readonly string[]>;
}
