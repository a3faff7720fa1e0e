import { archingSentences } from './archingSentences.ts';
import { checkSentences } from './checkSentences.ts';
import { derivedOrigins } from './derivedOrigins.ts';
import { designSentences } from './designSentences.ts';
import { drawnChoices } from './drawnChoices.ts';
import { drawnLettering } from './drawnLettering.ts';
import { formNotes } from './formNotes.ts';
import { habitOrigins } from './habitOrigins.ts';
import { headSentences } from './headSentences.ts';
import { neckNotes } from './neckNotes.ts';
import { neckSentences } from './neckSentences.ts';
import { outlineSentences } from './outlineSentences.ts';
import { packWords } from './packWords.ts';
import { photographSentences } from './photographSentences.ts';
import { pictureWords } from './pictureWords.ts';
import { pieceTitles } from './pieceTitles.ts';
import { plateNotes } from './plateNotes.ts';
import { plateSentences } from './plateSentences.ts';
import { printedWords } from './printedWords.ts';
import { profileSentences } from './profileSentences.ts';
import { sheetSentences } from './sheetSentences.ts';
import { smallWords } from './smallWords.ts';
import { solidWords } from './solidWords.ts';

/** Every catalogue of texts in German, by what it is about. A text stands in one of them only. */
export const catalogues = {
  smallWords,
  pieceTitles,
  habitOrigins,
  derivedOrigins,
  sheetSentences,
  photographSentences,
  profileSentences,
  designSentences,
  outlineSentences,
  archingSentences,
  plateSentences,
  headSentences,
  neckSentences,
  checkSentences,
  formNotes,
  plateNotes,
  neckNotes,
  drawnChoices,
  drawnLettering,
  printedWords,
  solidWords,
  packWords,
  pictureWords,
} as const;
