import type { FoundMarker, GrayPicture, MarkerFinder, Point } from '../../core/index.ts';

/**
 * The part of the vision library that finds square codes, in our own words: its package describes these classes
 * incompletely.
 */
export interface Vision {
  readonly CV_8UC1: number;
  readonly DICT_5X5_1000: number;
  readonly Mat: new () => VisionMat;
  readonly MatVector: new () => VisionList;
  readonly aruco_DetectorParameters: new () => DetectorParameters;
  readonly aruco_RefineParameters: new (distance: number, rate: number, allOrders: boolean) => VisionOwned;
  readonly aruco_ArucoDetector: new (
    codes: VisionOwned,
    parameters: VisionOwned,
    refine: VisionOwned,
  ) => MarkerDetector;
  getPredefinedDictionary(name: number): VisionOwned;
  matFromArray(rows: number, columns: number, kind: number, data: Uint8Array): VisionMat;
}

interface VisionOwned {
  delete(): void;
}

interface VisionMat extends VisionOwned {
  readonly data32S: Int32Array;
  readonly data32F: Float32Array;
}

interface VisionList extends VisionOwned {
  get(place: number): VisionMat;
  size(): number;
}

interface DetectorParameters extends VisionOwned {
  minMarkerPerimeterRate: number;
}

interface MarkerDetector extends VisionOwned {
  detectMarkers(picture: VisionMat, corners: VisionList, ids: VisionMat): void;
}

/** Share of the picture's long side that a code's outline is long at least; a sheet that fills a third still counts. */
const SMALLEST_CODE = 0.012;

/** The finder of square codes of a vision library that has been loaded. */
export function markerFinderOf(vision: Vision): MarkerFinder {
  return (picture) => findMarkers(vision, picture);
}

/** Mats live outside the garbage collector, so everything made here is given back, whatever happens. */
function findMarkers(vision: Vision, picture: GrayPicture): readonly FoundMarker[] {
  const owned: VisionOwned[] = [];
  const own = <T extends VisionOwned>(thing: T): T => {
    owned.push(thing);
    return thing;
  };
  try {
    const mat = own(vision.matFromArray(picture.heightPx, picture.widthPx, vision.CV_8UC1, picture.data));
    const parameters = own(new vision.aruco_DetectorParameters());
    parameters.minMarkerPerimeterRate = SMALLEST_CODE;
    const codes = own(vision.getPredefinedDictionary(vision.DICT_5X5_1000));
    const refine = own(new vision.aruco_RefineParameters(10, 3, true));
    const detector = own(new vision.aruco_ArucoDetector(codes, parameters, refine));
    const corners = own(new vision.MatVector());
    const ids = own(new vision.Mat());
    detector.detectMarkers(mat, corners, ids);
    return Array.from(ids.data32S, (id, place) => {
      const quad = own(corners.get(place));
      return { id, corners: cornersFrom(quad.data32F) };
    });
  } finally {
    for (const thing of owned.reverse()) thing.delete();
  }
}

function cornersFrom(data: Float32Array): FoundMarker['corners'] {
  const corner = (place: number): Point<'photo'> => ({ x: data[2 * place], y: data[2 * place + 1] });
  return [corner(0), corner(1), corner(2), corner(3)];
}
