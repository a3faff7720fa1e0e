const mm = (value: number): string => String(Math.round(value * 10) / 10);

/** What stands with the sheets that are taken along. */
export const sheetsEn = {
  paper: 'Sheets of paper',
  page: (number: number, of: number) => `Paper, page ${number} of ${of}`,
  laserHead: 'Laser',
  laserSays: (count: number) =>
    `${count} pieces, each in a file of its own, as DXF and SVG. Cut on the line; the width of the burn is left to the shop.`,
  solidHead: 'Solids',
  solidSays: 'Plates, form, blocks and ribs as closed bodies, in millimetres: STL, 3MF and STEP.',
  drawing: 'Laying out the pages …',
  nearer: 'Look nearer',
  whole: 'Show the whole sheet',
  size: (width: number, height: number) =>
    `${mm(width)} × ${mm(height)} mm. Both bars must measure 150 before you cut.`,
  corrected: (x: number, y: number) =>
    `Drawn ${percent(x)} across and ${percent(y)} up, against what your printer does.`,
  pageCount: (count: number) => (count === 1 ? '1 page' : `${count} pages`),
  pieceCount: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
  which: (some: number, all: number) =>
    some === all ? 'Every kind of piece' : `${some} of ${all} kinds of piece`,
  parts: {
    form: 'inner form',
    outline: 'outline templates',
    blocks: 'blocks',
    ribs: 'ribs, linings, cauls',
    edge: 'edge and purfling',
    roughing: 'roughing charts',
    arching: 'arching gauges',
    hollowing: 'hollowing',
    soundHoles: 'sound holes',
    neck: 'neck and fingerboard',
    head: 'head',
    bar: 'bar and post',
    setup: 'set-up',
    sheet: 'sheets',
  },
  only: (kind: string) => `Only the ${kind}`,
  checked: {
    title: 'What was checked',
    pieces: { name: 'pieces', says: 'at true size, each with its name and its place' },
    contours: { name: 'contours', says: 'closed; none crosses itself, none is drawn twice' },
    pages: { name: 'pages', says: 'check bars on every one, both ways' },
    files: { name: 'files', says: 'listed in the manifest with their digests' },
    flaws: { name: 'contours', says: 'that cannot be cut as they stand: see below, and do not cut them' },
    noticed: (count: number) => (count === 1 ? 'One thing to know' : `${count} things to know`),
  },
};

function percent(scale: number): string {
  const off = (scale - 1) * 100;
  return `${off < 0 ? '−' : '+'}${Math.abs(off).toFixed(2)} %`;
}
