import type { Catalogue } from '../catalogue.ts';

/** What is found of sheets, cameras and scales of photographs. */
export const sheetSentences: Catalogue = {
  'it stands up from the table by about {} mm at its rim': 'es steht am Rand etwa {} mm vom Tisch ab',
  'its squares lie {} mm from where a flat sheet would have them, whole stretches together':
    'seine Felder liegen {} mm neben denen eines flachen Blatts, ganze Strecken gemeinsam',
  'a sheet that lies flat all over; the ± of lengths is widened here':
    'ein Blatt, das überall flach liegt; das ± der Längen ist hier größer',
  'tape or glue the sheet to a stiff flat board and photograph again':
    'Kleb das Blatt auf ein steifes, ebenes Brett und fotografier noch einmal',
  'whole stretches of it lie {} mm off together, as when the paper bows a little or the lens bends oddly':
    'ganze Strecken davon liegen gemeinsam {} mm daneben, wie wenn das Papier sich etwas wölbt oder die Linse ungleich verzeichnet',
  'weigh down or tape its edges': 'Beschwer seine Ränder oder kleb sie fest',
  '{} of {} points do not fit the others and were left out':
    '{} von {} Punkten passen nicht zu den anderen und sind weggelassen',
  'an even, uncovered band of squares': 'ein ebenes, unverdecktes Band von Feldern',
  'look for glare, folds or things that lie on the band':
    'Such nach Glanz, Falten oder Dingen, die auf dem Band liegen',
  'the camera noted a focal length of {} px, the sheet shows {} px':
    'die Kamera hat eine Brennweite von {} px notiert, das Blatt zeigt {} px',
  'a picture that was not cropped or enlarged after it was taken':
    'ein Bild, das nach der Aufnahme weder beschnitten noch vergrößert wurde',
  'use the picture as the camera saved it; the sheet was believed here':
    'Nimm das Bild, wie die Kamera es gespeichert hat; hier gilt das Blatt',
  'no camera could be found that explains how the sheet looks':
    'keine Kamera erklärt, wie das Blatt aussieht',
  'a plain photograph of the sheet lying flat, as the camera saved it':
    'ein einfaches Foto des flach liegenden Blatts, wie die Kamera es gespeichert hat',
  'photograph again from about a metre or more, all of the sheet in view':
    'Fotografier noch einmal aus einem Meter oder mehr, das ganze Blatt im Bild',
  'the photograph does not show bars{}: side by side they look more like {} and {} mm':
    'das Foto zeigt keine solchen Prüfbalken{}: nebeneinander sehen sie eher nach {} und {} mm aus',
  'both bars measured on this very sheet, and a photograph that was not stretched':
    'beide Balken an eben diesem Blatt gemessen, und ein Foto, das nicht gestreckt wurde',
  'measure both bars again, from end mark to end mark, the longer side of the sheet first':
    'Miss beide Balken noch einmal, von Endmarke zu Endmarke, die längere Seite des Blatts zuerst',
  'it was printed {} than the first sheet, so they are of different printings':
    'es ist {} gedruckt als das erste Blatt, sie stammen also aus verschiedenen Drucken',
  'all sheets printed in one run, or both bars of each':
    'alle Blätter in einem Lauf gedruckt, oder beide Balken von jedem',
  'print all sheets again together, or measure the bars of each sheet and give them':
    'Druck alle Blätter noch einmal zusammen oder miss die Balken jedes Blatts und gib sie an',
  'they do not hang together: no sheet is seen both in one and in the others':
    'sie hängen nicht zusammen: kein Blatt ist sowohl in einem als auch in den anderen zu sehen',
  'no photograph shows sheet {} together with the others':
    'kein Foto zeigt Blatt {} zusammen mit den anderen',
  'at least two sheets in one photograph, so that one leads to the next':
    'mindestens zwei Blätter auf einem Foto, damit eines zum nächsten führt',
  'photograph again with neighbouring sheets in one picture, none moved in between':
    'Fotografier noch einmal mit benachbarten Blättern in einem Bild, dazwischen keines bewegt',
  'it was taken {}° from square on': 'es ist um {}° schräg aufgenommen',
  'no more than 45°, better between 3° and 10°': 'nicht mehr als 45°, besser zwischen 3° und 10°',
  'hold the camera nearly straight above the instrument':
    'Halt die Kamera nahezu senkrecht über das Instrument',
  'the lens bends the picture more than can be straightened out to its corners':
    'die Linse verzeichnet das Bild mehr, als sich bis in die Ecken richten lässt',
  'a normal or long lens': 'eine normale oder lange Brennweite',
  'step back and use the normal or the long lens, not the wide one':
    'Geh zurück und nimm die normale oder lange Brennweite, nicht das Weitwinkel',
  'its squares lie {} mm from where a flat sheet would have them':
    'seine Felder liegen {} mm neben denen eines flachen Blatts',
  'a flat sheet, true to half a millimetre': 'ein flaches Blatt, auf einen halben Millimeter genau',
  'an edge {} mm above the sheet, under a camera about {} mm up':
    'ein Rand {} mm über dem Blatt, unter einer Kamera in etwa {} mm Höhe',
  'a height between 0 and {} mm': 'eine Höhe zwischen 0 und {} mm',
  'measure from the paper up to the middle of the edge of the plate that faces the camera, in millimetres':
    'Miss vom Papier bis zur Mitte des Rands der Platte, die zur Kamera zeigt, in Millimetern',
  '± {} mm': '± {} mm',
  'set a height card level with the edge, or take a second photograph tilted by 10° to 20°, or give two calliper lengths to correct the scale':
    'Stell eine Höhenkarte auf Randhöhe, mach ein zweites, um 10° bis 20° gekipptes Foto oder gib zwei Schieblehrenmaße, um den Maßstab zu berichtigen',
  'both were taken from nearly one place, so they do not tell how high the edge stands':
    'beide sind von fast derselben Stelle aufgenommen und sagen daher nicht, wie hoch der Rand steht',
  'a second photograph tilted by 10° to 20°, the first one nearly square on':
    'ein zweites Foto, um 10° bis 20° gekippt, das erste nahezu senkrecht',
  'step aside, photograph once more without moving sheet or instrument, or measure the height':
    'Geh zur Seite, fotografier noch einmal, ohne Blatt oder Instrument zu bewegen, oder miss die Höhe',
  'the height of the very edge that is traced, over the sheet':
    'die Höhe genau des Rands, der abgenommen wird, über dem Blatt',
  'measure from the sheet up to the edge of the plate that faces the camera, or leave the height to the photographs':
    'Miss vom Blatt bis zum Rand der Platte, die zur Kamera zeigt, oder überlass die Höhe den Fotos',
  'the photograph shows no calibration sheet, and no length of the instrument is given':
    'das Foto zeigt kein Messblatt, und keine Länge des Instruments ist angegeben',
  'one known length, such as the body length': 'eine bekannte Länge, etwa die Korpuslänge',
  'measure the body with callipers and give its length, better also one width':
    'Miss den Korpus mit der Schieblehre und gib seine Länge an, besser auch eine Breite',
  '{}, {} % apart': '{}, {} % auseinander',
  'lengths that agree to {} % and fit the same photograph':
    'Längen, die auf {} % übereinstimmen und zum selben Foto passen',
  'measure both again, straight and at the edge, and look whether the photograph was taken square on':
    'Miss beide noch einmal, gerade und am Rand, und sieh nach, ob das Foto senkrecht aufgenommen wurde',
  'measure it again, straight with callipers, and look at the height of the edge and the bars of the sheet':
    'Miss noch einmal, gerade, mit der Schieblehre, und sieh dir die Randhöhe und die Balken des Blatts an',
  'this length cannot be seen in the outline, so it does not help the scale':
    'diese Länge ist am Umriss nicht zu sehen, sie hilft dem Maßstab also nicht',
  'give it again with the measurements when the design is drafted':
    'Gib sie mit den Maßen noch einmal an, wenn der Entwurf gezeichnet wird',
  'the scale rests on {} alone and nothing checks it':
    'der Maßstab beruht auf {} allein, und nichts prüft ihn',
  'a second length, square to the first': 'eine zweite Länge, quer zur ersten',
  'give one width too, such as lowerBout, or photograph with the calibration sheet':
    'Gib auch eine Breite an, etwa lowerBout, oder fotografier mit dem Messblatt',
  '{} mm is given, and after the best correction it still reads {} mm otherwise':
    '{} mm sind angegeben, und nach der besten Berichtigung misst es immer noch {} mm anders',
  'agreement to {} mm': 'Übereinstimmung auf {} mm',
  'measure it again, or give its ± as wide as it is':
    'Miss noch einmal oder gib sein ± so groß an, wie es ist',
  'the sheet shows {} mm, {} mm is given; the length given was believed':
    'das Blatt zeigt {} mm, angegeben sind {} mm; die angegebene Länge gilt',
  'look at the height of the edge, the bars of the sheet and the callipers':
    'Sieh dir die Randhöhe, die Balken des Blatts und die Schieblehre an',
  'lengths along the body and across it differ by {} % in scale; this was corrected':
    'Längen längs und quer unterscheiden sich im Maßstab um {} %; das ist berichtigt',
  'a photograph taken square on': 'ein senkrecht aufgenommenes Foto',
  'hold the camera straight above the instrument, or lay the calibration sheet under it':
    'Halt die Kamera gerade über das Instrument oder leg das Messblatt darunter',
  'a check bar of {} mm is said to measure {} mm': 'ein Prüfbalken von {} mm soll {} mm messen',
  'measure the bar on the printed sheet again, in millimetres, from end mark to end mark':
    'Miss den Balken am gedruckten Blatt noch einmal, in Millimetern, von Endmarke zu Endmarke',
  'the printed check bars were not measured, so every length may be {} % off':
    'die gedruckten Prüfbalken wurden nicht gemessen, also kann jede Länge um {} % falsch sein',
  'the true length of both {} mm bars on the print': 'die wahre Länge beider {}-mm-Balken auf dem Druck',
  'measure both bars with callipers or a steel rule and give what they read':
    'Miss beide Balken mit Schieblehre oder Stahlmaßstab und gib an, was sie lesen',
  'one check bar was measured and stands for both directions':
    'ein Prüfbalken wurde gemessen und gilt für beide Richtungen',
  'both bars, since many printers are truer across the paper than along it':
    'beide Balken, denn viele Drucker sind quer genauer als längs',
  'measure the other bar too': 'Miss auch den anderen Balken',
  'no calibration sheet can be read in it: it is too dark, its lightest parts reach {} of 255':
    'darin ist kein Messblatt zu lesen: es ist zu dunkel, die hellsten Stellen erreichen {} von 255',
  'our printed sheet in even light, its white near white':
    'unser gedrucktes Blatt in gleichmäßigem Licht, sein Weiß nahezu weiß',
  'photograph again by a window or with a lamp from each side, without flash':
    'Fotografier noch einmal an einem Fenster oder mit einer Lampe von jeder Seite, ohne Blitz',
  'no calibration sheet can be read in it: it is blurred, its sharpest edges are {} px wide':
    'darin ist kein Messblatt zu lesen: es ist unscharf, die schärfsten Kanten sind {} px breit',
  'our printed sheet in focus and the camera held still: edges of {} px or less':
    'unser gedrucktes Blatt scharf und die Kamera ruhig: Kanten von {} px oder weniger',
  'photograph again from a stand or with the camera propped up, and let it focus on the sheet':
    'Fotografier noch einmal vom Stativ oder mit aufgestützter Kamera und lass sie auf das Blatt scharfstellen',
  'no calibration sheet can be read in it': 'darin ist kein Messblatt zu lesen',
  'our printed sheet in view, sharp and evenly lit':
    'unser gedrucktes Blatt im Blick, scharf und gleichmäßig beleuchtet',
  'photograph again with the sheet under the instrument, or give a known length such as the body length':
    'Fotografier noch einmal mit dem Blatt unter dem Instrument oder gib eine bekannte Länge wie die Korpuslänge an',
  'it is mirrored: {} codes of the sheet read only in a mirror':
    'es ist gespiegelt: {} Codes des Blatts sind nur im Spiegel zu lesen',
  'the picture as the camera saw it': 'das Bild, wie die Kamera es gesehen hat',
  'turn off mirroring in the camera, or flip the picture back, and try again':
    'Schalt das Spiegeln in der Kamera aus oder spiegel das Bild zurück und versuch es noch einmal',
  '{} codes like ours are in it, but not laid out as on any sheet this version knows':
    '{} Codes wie unsere sind darin, aber nicht angeordnet wie auf einem Blatt, das diese Fassung kennt',
  'a sheet printed by this version or an earlier one':
    'ein Blatt, das mit dieser oder einer früheren Fassung gedruckt wurde',
  'print a new sheet, or use the version that printed this one':
    'Druck ein neues Blatt oder nimm die Fassung, die dieses gedruckt hat',
  'the photograph shows the {}, not the {}': 'das Foto zeigt {}, nicht {}',
  'the sheet that was photographed': 'das Blatt, das fotografiert wurde',
  "give {} as the sheet's paper": 'Gib {} als Papier des Blatts an',
  'the {} lies in it twice: {} of its codes are seen in two places':
    '{} liegt zweimal darin: {} seiner Codes sind an zwei Stellen zu sehen',
  'sheets and cards with different numbers side by side':
    'Blätter und Karten mit verschiedenen Nummern nebeneinander',
  'take one away, or print the others with numbers 2, 3 and 4':
    'Nimm eines weg oder druck die anderen mit den Nummern 2, 3 und 4',
  'the {} is bent: {} of its codes lie in another plane than the rest':
    '{} ist gebogen: {} seiner Codes liegen in einer anderen Ebene als der Rest',
  'squares on all sides of what is measured': 'Felder auf allen Seiten dessen, was gemessen wird',
  'photograph again with the whole sheet in view and nothing but the neck across the band':
    'Fotografier noch einmal mit dem ganzen Blatt im Blick und nichts als dem Hals über dem Band',
  ' of {} and {} mm': ' von {} und {} mm',
  'sheet bar': 'Prüfbalken des Blatts',
  'calibration sheet {}': 'Messblatt {}',
  'edge height': 'Randhöhe',
  "taken so nearly square on that the camera's distance is unsure: ± {} mm on {} mm at an edge {} mm above the sheet":
    'so nahezu senkrecht aufgenommen, dass der Abstand der Kamera unsicher ist: ± {} mm auf {} mm bei einem Rand {} mm über dem Blatt',
  '{} mm were given, but {} {} ± {} mm': '{} mm sind angegeben, aber {} {} ± {} mm',
  'the height card shows': 'die Höhenkarte zeigt',
  'the two photographs show': 'die beiden Fotos zeigen',
  '{} ± {} mm': '{} ± {} mm',
  'known lengths': 'bekannte Längen',
  'say the unit: {} looks like {}, which would be {} mm':
    'Nenn die Einheit: {} sieht nach {} aus, das wären {} mm',
  'measure again and give the length in millimetres, or with its unit':
    'Miss noch einmal und gib die Länge in Millimetern oder mit ihrer Einheit an',
  'with {} {} mm the photograph shows {} {} mm, but {} mm is given':
    'mit {} {} mm zeigt das Foto {} {} mm, angegeben sind aber {} mm',
  'the sheet shows {} {} mm, but {} mm is given': 'das Blatt zeigt {} {} mm, angegeben sind aber {} mm',
  'height card {}': 'Höhenkarte {}',
  '{} sheet': 'Blatt {}',
  '{} sheet number {}': 'Blatt {} Nummer {}',
  'sheet paper': 'Papier des Blatts',
  'along its {}': 'an seiner Seite: {}',
  'in enough places': 'an genug Stellen',
  'the band of squares cannot be read {} ({} of {} codes of the {} seen; what is seen encloses {} % of it)':
    'das Band von Feldern ist nicht zu lesen: {} ({} von {} Codes gesehen, {}; das Gesehene umschließt {} % davon)',
};
