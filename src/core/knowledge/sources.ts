/** A place outside this house that a figure was read in. */
export interface Source {
  readonly author: string;
  readonly title: string;
  readonly year: string;
  readonly note?: string;
}

/** Every source that a preset or a range names; a test finds each citation in use here. */
export const SOURCES = {
  violinAverages: {
    author: 'author not named',
    title: 'Average violin measurements',
    year: 'no year given',
    note: 'published table, columns 1/4, 1/2, 3/4, 7/8 and 4/4',
  },
  bodyStop: {
    author: 'two statements, authors not named',
    title: 'Body stop of the full-size violin',
    year: 'no year given; 2021',
    note: 'two published statements of 195 mm',
  },
  violaTable: {
    author: 'author not named',
    title: 'The viola: small, medium and large',
    year: 'no year given',
    note: 'published table; obvious slips of unit left aside',
  },
  holePlaces: {
    author: 'A. T. King',
    title: 'working paper on the placing of sound holes, title not noted',
    year: '2004',
    note: 'eyes by dividers from the distance of the locating pins; upper eyes of fine violins 36 to more than 44 apart',
  },
  violinForm: {
    author: 'author not named',
    title: 'The inner mould',
    year: 'no year given',
    note: 'published working notes: pins about 80 mm from the ends, 26 mm of block along the waist',
  },
  celloSizes: {
    author: 'author not named',
    title: 'Sizes of the cello',
    year: 'no year given',
    note: 'published article: body 755, bouts 340 and 440, bridge 90',
  },
  celloStop: {
    author: 'three statements, authors not named',
    title: 'Stop and neck of the cello, 10 : 7',
    year: 'no year given',
    note: 'body stop 400, neck 279 to 280',
  },
  celloArch: {
    author: 'two building reports, authors not named',
    title: 'Arch heights of a cello',
    year: '2015 and no year given',
    note: 'back 24 to 25, top 27 to 28, edge included',
  },
  celloEdges: {
    author: 'one building report, author not named',
    title: 'Edges and purfling of a cello',
    year: 'no year given',
    note: 'edges 5.2 and 5.6, purfling 5 from the edge, ribs 1.4; one maker only',
  },
  postSizes: {
    author: 'author not named',
    title: 'The sound post',
    year: '2011; on the cello 2016',
    note: 'posts about 6, 7 and 10 thick on violin, viola and cello',
  },
  footAndBar: {
    author: 'C. Gonzalez',
    title: 'magazine article on bar and post, title not noted',
    year: 'year not noted',
    note: 'foot beyond the bar by 1 to 1.5, on a cello 1.5 to 2; the post mirrors it, half a foot behind it',
  },
  barLength: {
    author: 'A. Samela',
    title: 'note on the bass bar, title not noted',
    year: 'year not noted',
    note: 'length of the top less 80',
  },
  barBlank: {
    author: 'R. Panting',
    title: 'magazine article on building a violin, title not noted',
    year: 'year not noted',
    note: 'bar about 270 long and 5.5 to 6 thick',
  },
  neckSets: {
    author: 'a supplier of strings, author not named',
    title: 'Fingerboard: projection and height of its end',
    year: 'no year given',
    note: 'projection 26 to 28, 31 to 33 and 79 to 81; end of the board 19 to 22, 22 to 24 and 62 to 64 over the top',
  },
  neckHeel: {
    author: 'author not named',
    title: 'The neck heel',
    year: '2009',
    note: 'working notes: root at 87° to the board, button 21 wide, board 24 and 42 wide',
  },
  boardShape: {
    author: 'author not named',
    title: 'Fingerboard geometry, part 2',
    year: 'no year given',
    note: 'a survey of makers: radius 42, hollow 0.75 under the lowest string, 0.50 in the middle, 0.25 under the highest',
  },
  stringsOverBoard: {
    author: 'author not named',
    title: 'The violin bridge',
    year: 'no year given',
    note: 'strings over the end of the board: 3 to 4 the highest, 5 to 6 the lowest',
  },
  violaBoard: {
    author: 'H. Strobel, as quoted in a society’s journal',
    title: 'Useful measurements',
    year: 'quoted 2025',
    note: 'board of a viola of 16.5 in 25 wide at the nut',
  },
  celloSetUp: {
    author: 'author not named',
    title: 'Set-up of the cello',
    year: 'no year given',
    note: 'projection 81; steel strings 4.0 and 6.5 over the end of the board; hollow half the thickness of the string',
  },
  celloNut: {
    author: 'author not named',
    title: 'Grooves of the nut',
    year: 'no year given',
    note: 'cello strings 0.5 and 0.75 over the board at the nut',
  },
  stringSpacing: {
    author: 'H. Strobel, as quoted in a society’s journal',
    title: 'Useful measurements: the strings of a viola',
    year: 'quoted 2025',
    note: 'spacing 17 and 36, on bodies under 16 in 16.5 and 35',
  },
  celloSaddle: {
    author: 'author not named',
    title: 'Final assembly of a cello',
    year: 'no year given',
    note: 'saddle 60 wide, let in 12, about 12 high; one building report',
  },
  barSpring: {
    author: 'A. Samela; B. H. Huckaby',
    title: 'two notes on the bass bar',
    year: '2013; year not noted',
    note: 'both advise against spring',
  },
  breakAngles: {
    author: 'author not named',
    title: 'Tension of strings and angle over the bridge',
    year: 'no year given',
    note: 'measured: 157° on a modern violin, 159.5° on one set up in the old way',
  },
  scrollAngles: {
    author: 'T. Zethelius',
    title: 'Carving a scroll using angular templates',
    year: 'no year given',
    note: '18° for the second turn, 30° or 36° for the other',
  },
  pegTapers: {
    author: 'author not named',
    title: 'Tuning mechanisms of string instruments',
    year: 'no year given',
    note: 'pegs taper by 1 in 30, on the cello by 1 in 25; common practice has 1 in 30 for both',
  },
  violinNorm: {
    author: 'P. Kass',
    title: 'magazine article, title not noted',
    year: '2023',
    note: 'violin bodies 355 ± 5 mm, violas 16 to 16.5 in',
  },
} as const satisfies Record<string, Source>;

/** Key of a source in {@link SOURCES}. */
export type SourceName = keyof typeof SOURCES;

/** The source as one phrase for an origin: author, title, year. */
export function citation(name: SourceName): string {
  const { author, title, year } = SOURCES[name];
  return `“${title}” (${author}, ${year})`;
}
