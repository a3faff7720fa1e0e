import type { Finding, Point } from '../../base/index.ts';
import type { NamedStretch } from '../body/bodyTrace.ts';
import type { OutlineSection } from '../body/templateStations.ts';

/** One place of the purfling's middle line, photo px, opposite one place of the traced edge. */
export interface PurflingPlace {
  readonly point: Point<'photo'>;
  /** Outward unit normal of the edge there. */
  readonly normal: Point<'photo'>;
  readonly side: 'bass' | 'treble';
  readonly section: OutlineSection;
  readonly along: number;
  /** px from the traced edge inward to the middle line. */
  readonly depthPx: number;
  /** One standard deviation across the line. */
  readonly sigmaPx: number;
}

/** The purfling as it is seen; hidden or worn stretches have no places. */
export interface PurflingTrace {
  readonly seen: boolean;
  /** In the order of the edge. */
  readonly places: readonly PurflingPlace[];
  /** From the middle of one dark line to the middle of the other; null where the picture is too coarse to part them. */
  readonly widthPx: { readonly value: number; readonly sigmaPx: number } | null;
  /** Share of the edge's places, corner ends left out, opposite which it is seen. */
  readonly share: number;
  readonly unseen: readonly NamedStretch[];
  readonly findings: readonly Finding[];
}
