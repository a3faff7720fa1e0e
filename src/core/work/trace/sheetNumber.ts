import { type CalibrationSheet, SHEET_PAPERS } from '../../photo/index.ts';

/** One number for each sheet of each paper, so that sheets of several papers may lie in one scene. */
export function sheetNumberInScene({ paper, number }: CalibrationSheet): number {
  return SHEET_PAPERS_APART * SHEET_PAPERS.indexOf(paper) + number;
}

const SHEET_PAPERS_APART = 100;
