import type { Picture } from '../picture/picture.ts';
import { type AgreeingMarkers, agreeingMarkers } from './agreeingMarkers.ts';
import { type CalibrationSheet, calibrationSheet } from './calibrationSheet.ts';
import { type HeightCard, heightCard } from './heightCard.ts';
import type { FoundMarker, MarkerFinder } from './markerFinder.ts';
import { type MarkerOwner, markerOwners } from './markerOwner.ts';
import { searchMarkers } from './searchMarkers.ts';

/** A sheet that the photograph shows: its codes, and those of the same sheet that lie in another plane or place. */
export interface SeenSheet {
  readonly sheet: CalibrationSheet;
  readonly markers: AgreeingMarkers;
}

export interface SeenCard {
  readonly card: HeightCard;
  readonly markers: AgreeingMarkers;
}

/** What of ours a photograph shows, by its codes; sheets with the most codes first. */
export interface SeenPatterns {
  readonly sheets: readonly SeenSheet[];
  readonly cards: readonly SeenCard[];
  /** Codes of the family that are on none of these. */
  readonly strangers: number;
  /** Codes that read only as in a mirror. */
  readonly mirrored: number;
}

/** A card has five codes; two that agree are no chance. */
const FEWEST_ON_A_CARD = 2;

/** The sheets and cards whose codes the finder sees in the photograph. */
export function seenPatterns(picture: Picture, finder: MarkerFinder): SeenPatterns {
  const found = searchMarkers(picture, finder);
  const straight = found.filter((marker) => marker.isMirrored !== true);
  const owners = markerOwners();
  const groups = new Map<MarkerOwner, FoundMarker[]>();
  for (const marker of straight) {
    const owner = owners.get(marker.id);
    if (owner) groups.set(owner, [...(groups.get(owner) ?? []), marker]);
  }
  const sheets: SeenSheet[] = [];
  const cards: SeenCard[] = [];
  for (const [owner, group] of groups) {
    if (owner.kind === 'sheet') {
      const sheet = calibrationSheet(owner.paper, owner.number);
      const markers = agreeingMarkers(group, sheet);
      if (markers) sheets.push({ sheet, markers });
    } else {
      const card = heightCard(owner.number);
      const markers = agreeingMarkers(group, card, FEWEST_ON_A_CARD);
      if (markers) cards.push({ card, markers });
    }
  }
  const placed = [...sheets, ...cards].reduce(
    (sum, { markers }) => sum + markers.count + markers.others.length,
    0,
  );
  return {
    sheets: sheets.sort((a, b) => b.markers.count - a.markers.count || a.sheet.number - b.sheet.number),
    cards: cards.sort((a, b) => a.card.number - b.card.number),
    strangers: straight.length - placed,
    mirrored: found.length - straight.length,
  };
}
