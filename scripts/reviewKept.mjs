// The review pictures that lie in the repository: small, each named in their index.
import { mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { root } from './prepare.mjs';

/** px across at most; quality of the pictures, and bytes of them all at most. */
const WIDEST = 1920;
const QUALITY = 72;
const ALL_BYTES = 7_000_000;

const SCREENS = {
  phone: 'Phone, 375 px, down to 2200 px',
  laptop: 'Laptop, 1280 × 800',
  '4k': '4K, 3840 × 2160 at 150 %, halved',
};

/** Puts the screenshots of a folder small beside the documents, with an index. */
export async function keepReview(folder) {
  const kept = join(root, 'docs', 'pictures', 'review');
  rmSync(kept, { recursive: true, force: true });
  mkdirSync(kept, { recursive: true });
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.png'))
    .sort();
  let bytes = 0;
  for (const name of names) {
    const path = join(kept, name.replace('.png', '.webp'));
    await sharp(join(folder, name))
      .resize({ width: WIDEST, withoutEnlargement: true })
      .webp({ quality: QUALITY, effort: 6 })
      .toFile(path);
    bytes += statSync(path).size;
  }
  if (bytes > ALL_BYTES) throw new Error(`review pictures of ${bytes} bytes: ${ALL_BYTES} are allowed`);
  const sections = Object.entries(SCREENS).map(([screen, title]) => {
    const own = names.filter((name) => name.startsWith(`${screen}-`)).map((name) => name.replace('.png', ''));
    return `## ${title}\n\n${own.map((name) => `[${name.slice(screen.length + 1)}](${name}.webp)`).join(' · ')}\n`;
  });
  writeFileSync(
    join(kept, 'README.md'),
    `# Review pictures of the page\n\nEvery view, to be looked at by people: no test compares them. \`node scripts/reviewPage.mjs\` and the same with \`--bring-in --keep\` make them anew; \`dark\`: in the evening's colours; \`de\`: in German.\n\n${sections.join('\n')}`,
  );
}
