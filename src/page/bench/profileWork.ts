import {
  accept,
  type Checked,
  type Design,
  type Finding,
  markerFinder,
  type ProfileOutcome,
  parseArchWords,
  parseSheetBar,
  refuse,
  takeProfiles,
  traceArchProfile,
  traceScroll,
} from '../../core/index.ts';
import { decodePictureHere } from '../../host/browser/index.ts';
import type { ProfileSaid } from '../keeping/profileSaid.ts';

/** What is asked of photographs of arches and heads. */
export const profileWork = {
  async readProfile(
    { name, bytes }: { readonly name: string; readonly bytes: Uint8Array },
    said: ProfileSaid,
  ): Promise<Checked<ProfileOutcome>> {
    const bars = parseSheetBar(given(said.sheetBar), given(said.height));
    const arch =
      said.of === 'scroll'
        ? accept(null)
        : parseArchWords({
            of: said.of,
            isDrawn: said.lies === 'drawn',
            fromEnds: said.lies === 'free',
            leaveOut: said.leaveOut,
            ...(said.of === 'cross-arch' && { station: said.station }),
            ...(said.rightIs !== 'unknown' && { rightIs: said.rightIs }),
          });
    if (!bars.ok || !arch.ok) return refuse(...[bars, arch].flatMap((one) => (one.ok ? [] : one.faults)));
    const picture = await decodePictureHere(bytes, name);
    if (!picture.ok) return picture;
    const { sheetBarMm, edgeHeightMm } = bars.value;
    const request = {
      name,
      picture: picture.value,
      ...(sheetBarMm && { sheetBarMm }),
      ...(edgeHeightMm !== undefined && { heightMm: edgeHeightMm }),
    };
    return arch.value === null
      ? traceScroll(request, markerFinder())
      : traceArchProfile({ ...request, ...arch.value, face: said.plate }, markerFinder());
  },

  /** The design with what these profiles tell, and nothing of the other photographs that are listed. */
  takeProfiles: (
    design: Design,
    documents: readonly unknown[],
    listed: readonly string[],
  ): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> =>
    takeProfiles(design, documents, listed),
};

function given(text: string): string | undefined {
  return text.trim() === '' ? undefined : text;
}
