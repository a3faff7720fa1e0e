import { PDFDocument, PDFName, type PDFRef, PDFString } from '@cantoo/pdf-lib';
import type { Page, PageSet } from '../drawing/index.ts';
import { PDF_LAYERS, pdfPageContent } from './pdfPage.ts';

const POINTS_PER_MM = 72 / 25.4;

/**
 * A print file at true size: one PDF page a page, its media box the paper to the hundredth of a point, layers by
 * meaning, arcs as cubics within a ten thousandth of a millimetre, and the wish that no reader scale it.
 *
 * The same pages give the same bytes: no dates, no random names.
 */
export async function writePdf(set: PageSet): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle(set.title);
  document.setCreator('Garland');
  document.setProducer('Garland');
  const shared = sharedResources(document);
  for (const page of set.pages) addPage(document, page, set.scale, shared);
  const { catalog, context } = document;
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None', DisplayDocTitle: true }));
  return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}

interface SharedResources {
  readonly layers: Readonly<Record<string, PDFRef>>;
  readonly faces: Readonly<Record<string, PDFRef>>;
}

function sharedResources(document: PDFDocument): SharedResources {
  const { context, catalog } = document;
  const face = (name: string): PDFRef =>
    context.register(
      context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: name, Encoding: 'WinAnsiEncoding' }),
    );
  const layers = Object.fromEntries(
    PDF_LAYERS.map((name) => [
      name,
      context.register(context.obj({ Type: 'OCG', Name: PDFString.of(name) })),
    ]),
  );
  const order = Object.values(layers);
  catalog.set(
    PDFName.of('OCProperties'),
    context.obj({
      OCGs: order,
      D: { Name: PDFString.of('Layers'), BaseState: 'ON', ON: order, Order: order },
    }),
  );
  return { layers, faces: { Plain: face('Helvetica'), Bold: face('Helvetica-Bold') } };
}

function addPage(document: PDFDocument, page: Page, scale: PageSet['scale'], shared: SharedResources): void {
  const { context } = document;
  const width = page.widthMm * POINTS_PER_MM;
  const height = page.heightMm * POINTS_PER_MM;
  const sheet = document.addPage([width, height]);
  const matrix = [
    POINTS_PER_MM * scale.x,
    0,
    0,
    POINTS_PER_MM * scale.y,
    (width * (1 - scale.x)) / 2,
    (height * (1 - scale.y)) / 2,
  ];
  const content = `${matrix.map((value) => value.toFixed(9)).join(' ')} cm\n1 J 1 j\n${pdfPageContent(page)}`;
  sheet.node.set(PDFName.of('Contents'), context.register(context.flateStream(content)));
  sheet.node.set(
    PDFName.of('Resources'),
    context.obj({ Font: { ...shared.faces }, Properties: { ...shared.layers } }),
  );
}
