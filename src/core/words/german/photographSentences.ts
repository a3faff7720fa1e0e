import type { Catalogue } from '../catalogue.ts';

export const photographSentences: Catalogue = {
  'one table of measurements, one trace, or one of each; profiles of arches and the side of a head beside them':
    'eine Maßtabelle, eine Abnahme oder je eine davon; daneben Wölbungsprofile und die Seite eines Kopfes',
  'give MEASUREMENTS.json, TRACE.json, or both': 'Gib eine Maßtabelle, eine Abnahme oder beides',
  'no table says what instrument it is; by its length it is taken for a {}':
    'keine Tabelle sagt, was für ein Instrument es ist; der Länge nach wird es so genommen: {}',
  'the family, so that the right habits fill what was not measured':
    'die Familie, damit das richtige Übliche füllt, was nicht gemessen wurde',
  'give a table of measurements with the family beside the trace, if it is another':
    'Gib neben der Abnahme eine Maßtabelle mit der Familie, wenn es eine andere ist',
  'choose one of them': 'Wähl eines davon',
  'a traced hole that lies {} mm rms off the one drafted like it, {} mm at most: {}':
    'ein abgenommenes F-Loch, das {} mm rms neben dem danach gezeichneten liegt, höchstens {} mm: {}',
  '{} mm rms or less on every stretch': '{} mm rms oder weniger auf jedem Abschnitt',
  'look at these stretches in the photograph: something may lie over them; or correct the numbers by hand':
    'Sieh dir diese Abschnitte auf dem Foto an: vielleicht liegt etwas darüber; oder berichtige die Zahlen von Hand',
  'a traced hole that no drafted one comes near': 'ein abgenommenes F-Loch, dem kein gezeichnetes nahe kommt',
  'a hole with two eyes, a stem and two wings': 'ein Loch mit zwei Augen, einem Schaft und zwei Flügeln',
  'the family’s hole is used; photograph the top without strings, or measure the hole by hand':
    'Es gilt das Loch der Familie; fotografier die Decke ohne Saiten oder miss das Loch von Hand',
  '{} bodies ({})': '{} Körper ({})',
  'one of them chosen': 'einen davon gewählt',
  'choose one by its number, or mark a place inside the one that is meant':
    'Wähl einen nach seiner Nummer oder zeig auf eine Stelle in dem gemeinten',
  'the {} of the body {} out of the picture at its {}': '{}: Korpus {} aus dem Bild: {}',
  ' and the ': ' und ',
  run: 'läuft',
  runs: 'laufen',
  'the whole body with some ground all round': 'den ganzen Korpus mit etwas Grund rundum',
  'step back and photograph it again, or use the picture before it was cropped':
    'Geh zurück und fotografier noch einmal, oder nimm das Bild vor dem Beschneiden',
  '{} × {} pixels': '{} × {} Bildpunkte',
  'some 2000 pixels along the body; so few show an edge to half a millimetre at best':
    'etwa 2000 Bildpunkte längs des Korpus; so wenige zeigen einen Rand bestenfalls auf einen halben Millimeter',
  'use the original photograph, not a preview; take these widths as proportions only':
    'Nimm das ursprüngliche Foto, keine Vorschau; nimm diese Breiten nur als Verhältnisse',
  'at least {} pixels a side, better 2000 along the body':
    'mindestens {} Bildpunkte je Seite, besser 2000 längs des Korpus',
  'use the original photograph, not a preview': 'Nimm das ursprüngliche Foto, keine Vorschau',
  '{} px with a spread of {} px': '{} px mit einer Streuung von {} px',
  'a length and a spread that are both above zero': 'eine Länge und eine Streuung, beide über null',
  'give the length with its standard deviation, or leave it out':
    'Gib die Länge mit ihrer Standardabweichung an oder lass sie weg',
  'no body of a violin, viola or cello seen from the front or the back':
    'kein Korpus einer Geige, Bratsche oder eines Cellos, von vorn oder hinten gesehen',
  'the whole body, square to the camera, on a calm ground':
    'den ganzen Korpus, senkrecht gesehen, auf ruhigem Grund',
  'photograph it lying flat on a plain ground, or draw the outline by hand':
    'Fotografier ihn flach liegend auf einfarbigem Grund oder zeichne den Umriss von Hand',
  'no outline for which the equations of the fit have a finite solution':
    'kein Umriss, für den die Gleichungen der Einpassung eine endliche Lösung haben',
  'a picture and hints that agree, and a known length with a spread as large as it really is':
    'ein Bild und Hinweise, die zusammenpassen, und eine bekannte Länge mit einer Streuung, die so groß ist, wie sie wirklich ist',
  'leave the known length and the hints out, and add them again one by one':
    'Lass die bekannte Länge und die Hinweise weg und füg sie einzeln wieder hinzu',
  'only {} % of the likeliest outline shows an edge (worst: {})':
    'nur {} % des wahrscheinlichsten Umrisses zeigen einen Rand (am wenigsten: {})',
  'an edge on 55 % at least': 'einen Rand auf mindestens 55 %',
  'use a plainer ground, more even light or a squarer view, or set a few points on the edge by hand':
    'Nimm einen einfarbigeren Grund, gleichmäßigeres Licht oder einen geraderen Blick, oder setz einige Punkte auf den Rand von Hand',
  'body {}, where {} found': 'Körper {}, wo gefunden wurde: {}',
  'one is': 'einer',
  '{} are': '{}',
  'a whole number from 1 to {}': 'eine ganze Zahl von 1 bis {}',
  'trace without a choice to see the list of bodies':
    'Nimm ohne Auswahl ab, um die Liste der Körper zu sehen',
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
  'a joint that shows as a dark line along most of the plate':
    'eine Fuge, die auf dem größten Teil der Platte als dunkle Linie zu sehen ist',
  'nothing, where the plate is of one piece; else light it from one side':
    'Nichts, wenn die Platte aus einem Stück ist; sonst beleuchte sie von einer Seite',
  'no pair of dark lines 3 to 6.5 mm inside the edge: none there, worn away, or too faint':
    'kein Paar dunkler Linien 3 bis 6,5 mm innerhalb des Rands: keines da, abgenutzt oder zu schwach',
  'a purfling that stands out from the wood, in a picture of 2 pixels to the millimetre or more':
    'eine Einlage, die sich vom Holz abhebt, in einem Bild mit 2 Bildpunkten je Millimeter oder mehr',
  'nothing, where the instrument has none; else photograph it nearer or in more even light':
    'Nichts, wenn das Instrument keine hat; sonst fotografier sie näher oder in gleichmäßigerem Licht',
  'nothing dark with the size and place of a sound hole': 'nichts Dunkles mit Größe und Lage eines F-Lochs',
  'a hole that is darker than the wood round it and stands alone':
    'ein Loch, das dunkler ist als das Holz rundum und allein steht',
  'take the other side mirrored, or photograph the top with light from the side':
    'Nimm die andere Seite gespiegelt oder fotografier die Decke mit Licht von der Seite',
  'a string, the bridge or a reflection crosses it; the edge is carried straight over':
    'eine Saite, der Steg oder ein Reflex kreuzt es; die Kante ist gerade darüber weggeführt',
  'the whole hole in view for an edge measured all round':
    'das ganze Loch im Blick, damit die Kante rundum gemessen ist',
  'look at the bridged stretch, or photograph the top without strings':
    'Sieh dir die überbrückte Strecke an oder fotografier die Decke ohne Saiten',
  'the two differ by up to {} mm on a body of 355 when one is laid on the other':
    'die beiden weichen um bis zu {} mm auf einen Korpus von 355 voneinander ab, wenn eines auf das andere gelegt wird',
  'no more than about a millimetre for holes cut to one template and seen whole':
    'nicht mehr als etwa einen Millimeter bei Löchern, die nach einer Schablone geschnitten und ganz zu sehen sind',
  'look at the doubtful stretches: something may lie over one of them, or the holes are not alike':
    'Sieh dir die zweifelhaften Strecken an: vielleicht liegt etwas auf einer, oder die Löcher sind nicht gleich',
  'only {} places of the edge are seen on both halves':
    'nur {} Stellen des Rands sind auf beiden Hälften zu sehen',
  'at least {}': 'mindestens {}',
  'photograph the instrument with less over its edge, or mark the edge by hand':
    'Fotografier das Instrument mit weniger über seinem Rand oder zeichne den Rand von Hand ein',
  'too little bare paper round the {} to know how the light falls':
    'zu wenig blankes Papier rundum ({}), um zu wissen, wie das Licht fällt',
  'the white of the calibration sheet in view': 'das Weiß des Messblatts im Blick',
  'photograph again with the whole sheet in the picture':
    'Fotografier noch einmal mit dem ganzen Blatt im Bild',
  'nothing that stands out from the white middle of the sheet':
    'nichts, was sich von der weißen Mitte des Blatts abhebt',
  'the card, the drawing or the scroll inside the white middle':
    'die Karte, die Zeichnung oder die Schnecke in der weißen Mitte',
  'lay it inside the band, on white paper; a white card wants something dark under it or a dark edge':
    'Leg es innerhalb des Bands auf weißes Papier; eine weiße Karte braucht etwas Dunkles darunter oder eine dunkle Kante',
  'a white or grey thing that cannot be told from paper and its shadow':
    'ein weißes oder graues Ding, das sich von Papier und Schatten nicht unterscheiden lässt',
  'a card or wood of a colour of its own, or much darker than a shadow':
    'eine Karte oder Holz in eigener Farbe, oder viel dunkler als ein Schatten',
  'colour the card, or draw along its edge on white paper and trace the line':
    'Färb die Karte oder zeichne an ihrer Kante entlang auf weißes Papier und nimm die Linie ab',
  'a thing that reaches out of what the picture shows': 'ein Ding, das aus dem Bild hinausreicht',
  'the whole of it inside the sheet': 'alles davon innerhalb des Blatts',
  'lay it inside the band of squares, or use a larger sheet':
    'Leg es innerhalb des Bands von Feldern oder nimm ein größeres Blatt',
  'no dark line of some length on the white of the sheet':
    'keine dunkle Linie von einiger Länge auf dem Weiß des Blatts',
  'one line, drawn dark and without gaps, inside the band of squares':
    'eine Linie, dunkel und ohne Lücken gezeichnet, innerhalb des Bands von Feldern',
  'draw it again with a soft pencil or a fine pen, and nothing else dark beside it':
    'Zeichne sie noch einmal mit weichem Bleistift oder feiner Feder, und nichts anderes Dunkles daneben',
  'no bowed edge between two corners of the card': 'keine gebogene Kante zwischen zwei Ecken der Karte',
  'a card with one edge cut to the arch, its corners in view':
    'eine Karte mit einer nach der Wölbung geschnittenen Kante, ihre Ecken im Blick',
  'point at both ends of the arch, or cut the card square at its ends':
    'Zeig auf beide Enden der Wölbung oder schneid die Karte an den Enden rechtwinklig',
  'no straight edge along the arch': 'keine gerade Kante längs der Wölbung',
  'the straight edge of the card that was laid to the gluing face':
    'die gerade Kante der Karte, die an der Leimfläche lag',
  'count heights from end to end instead': 'Zähl die Höhen stattdessen von Ende zu Ende',
  '{} % of the edge is soft, as the border of a shadow is':
    '{} % der Kante sind weich wie der Rand eines Schattens',
  'a sharp edge all along': 'eine durchweg scharfe Kante',
  'light it from both sides or from a window in the shade, and focus on it; a coloured card is told from its shadow':
    'Beleuchte sie von beiden Seiten oder an einem Fenster im Schatten und stell auf sie scharf; eine farbige Karte unterscheidet sich von ihrem Schatten',
  'a thing as high at one end as at the other': 'ein Ding, das an einem Ende so hoch ist wie am anderen',
  'a scroll seen from its side, its turn clearly higher than the nut end':
    'eine Schnecke von der Seite, ihr Umgang deutlich höher als das Ende am Obersattel',
  'lay the head flat on its side, and cover or leave out the neck behind the nut':
    'Leg den Kopf flach auf die Seite und deck den Hals hinter dem Obersattel ab',
  'no hollow between the turn and the pegbox on either side':
    'auf keiner Seite eine Mulde zwischen Schnecke und Wirbelkasten',
  'a scroll seen from its side': 'eine Schnecke von der Seite',
  'lay the head flat on its side and photograph it from above':
    'Leg den Kopf flach auf die Seite und fotografier ihn von oben',
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
  '{}; {} of {} readings, {} mm rms, at most {} mm off':
    '{}; {} von {} Ablesungen, {} mm rms, höchstens {} mm daneben',
  'readings within {} mm rms of an arch of this form':
    'Ablesungen innerhalb von {} mm rms einer Wölbung dieser Art',
  'no action: this is what the readings give': 'Nichts: das ist, was die Ablesungen ergeben',
  'look at the residuals: read the worst places again, or draw the arch from your own numbers':
    'Sieh dir die Abweichungen an: lies die schlechtesten Stellen noch einmal ab oder zeichne die Wölbung aus eigenen Zahlen',
  'compare it with the instrument before wood is cut':
    'Vergleich sie mit dem Instrument, bevor Holz geschnitten wird',
  'a reading at {}, near none of the five stations; it was fitted, and not used':
    'eine Ablesung bei {}, nahe keiner der fünf Stellen; sie wurde eingepasst und nicht gebraucht',
  'a reading at {}': 'eine Ablesung bei {}',
  'name the station if it is one of them, or read the arch there':
    'Nenn die Stelle, wenn sie eine davon ist, oder lies die Wölbung dort ab',
  'fullness {} and {}; the design has one for both plates, and their mean is used':
    'Völligkeit {} und {}; der Entwurf hat eine für beide Platten, es gilt ihr Mittel',
  'readings within {}': 'Ablesungen innerhalb von {}',
  'draft a design for each plate, or give the fullness that you want':
    'Zeichne für jede Platte einen Entwurf oder gib die Völligkeit an, die du willst',
  '{} given, {} by the readings of the arch; the given one is used':
    '{} angegeben, {} nach den Ablesungen der Wölbung; die angegebene gilt',
  'the two within {}': 'beide innerhalb von {}',
  'measure it again, or leave the value out and the readings give it':
    'Miss noch einmal oder lass den Wert weg, dann geben ihn die Ablesungen',
  'the {} at the {} reads as a fullness of {}; not used':
    '{}, {}: gelesen wird eine Völligkeit von {}; nicht gebraucht',
  'a fullness between −{} and {}': 'eine Völligkeit zwischen −{} und {}',
  'check where the channel lies in these readings, or give halfWidth':
    'Prüf, wo die Hohlkehle in diesen Ablesungen liegt, oder gib halfWidth an',
  'no action: arch height and rise are met either way':
    'Nichts: Wölbungshöhe und Stich stimmen in beiden Fällen',
  'compare the long arch gauge with the instrument':
    'Vergleich die Schablone der Längswölbung mit dem Instrument',
  'the crest lies {} mm {} the middle of the long arch, {} ± {} mm from where the readings begin to count':
    'der Scheitel liegt {} mm {} der Mitte der Längswölbung, {} ± {} mm von dort, wo die Ablesungen zu zählen beginnen',
  'a crest in the middle, where the design has it': 'einen Scheitel in der Mitte, wo ihn der Entwurf hat',
  'no action, unless you want the asymmetry: it is not drawn':
    'Nichts, wenn du die Ungleichheit nicht willst: sie wird nicht gezeichnet',
  'the side of the head follows {} within {} mm (rms; most {}): {}; {} % of the traced line was used. Eye, turns and widths are not told from the side':
    'die Seite des Kopfes folgt {} auf {} mm (rms; höchstens {}): {}; {} % der abgenommenen Linie wurden gebraucht. Auge, Umgänge und Breiten sagt die Seite nicht',
  'nothing, if that is near enough': 'Nichts, wenn das nahe genug ist',
  'measure eye and widths on the original and give them': 'Miss Auge und Breiten am Original und gib sie an',
  'the drawn head leaves the original{}': 'der gezeichnete Kopf verlässt das Original{}',
  ' at: {}': ' bei: {}',
  ' by {} mm (rms)': ' um {} mm (rms)',
  '{} mm or less as a whole and {} mm at each stretch':
    '{} mm oder weniger im Ganzen und {} mm auf jedem Abschnitt',
  'look whether it is worn or broken there, or was not photographed square from the side':
    'Sieh nach, ob er dort abgenutzt oder gebrochen ist oder nicht genau von der Seite fotografiert wurde',
  'heights that do not count from the gluing face; the rise is known, the arch height is not':
    'Höhen, die nicht ab der Leimfläche zählen; der Stich ist bekannt, die Wölbungshöhe nicht',
  'heights that do not count from the gluing face': 'Höhen, die nicht ab der Leimfläche zählen',
  'the arch height over the gluing face': 'die Wölbungshöhe über der Leimfläche',
  'give {}, or read the heights from the gluing face': 'Gib {} an oder lies die Höhen ab der Leimfläche',
  'two places in the photograph, in pixels, such as "120,80 1320,84"':
    'zwei Stellen auf dem Foto, in Bildpunkten, etwa "120,80 1320,84"',
  'read them in a picture viewer': 'Lies sie in einem Bildbetrachter ab',
  'a cross arch without its place': 'eine Querwölbung ohne ihre Stelle',
  'say where on the plate the arch was taken': 'Sag, wo auf der Platte die Wölbung genommen wurde',
  'say what lies at the right of the profile as it is photographed':
    'Sag, was rechts vom Profil liegt, wie es fotografiert ist',
  'a cross arch without its place on the plate': 'eine Querwölbung ohne ihre Stelle auf der Platte',
  'trace it again with its station, or add it': 'Nimm sie mit ihrer Stelle noch einmal ab oder füg sie hinzu',
  'taken from {} mm, {} mm aside: up to {} mm of the side of a thing {} mm high show beyond its edge':
    'aufgenommen aus {} mm, {} mm seitlich: bis zu {} mm von der Seite eines {} mm hohen Dings sind jenseits seiner Kante zu sehen',
  'at most {} mm': 'höchstens {} mm',
  'photograph from straight above its middle and from farther away, or trace a thinner thing':
    'Fotografier von genau über der Mitte und aus größerer Entfernung oder nimm etwas Dünneres ab',
  'no arch was fitted: {}': 'keine Wölbung eingepasst: {}',
  'their edges lie {} mm apart (rms; {} mm at most)':
    'ihre Ränder liegen {} mm auseinander (rms; höchstens {} mm)',
  '{} mm or less': '{} mm oder weniger',
  'look whether the instrument moved on the sheet between the photographs, and measure the height of its edge again':
    'Sieh nach, ob das Instrument zwischen den Fotos auf dem Blatt gerückt ist, und miss seine Randhöhe noch einmal',
  'neither side shows its edge here over {} mm; the outline follows the usual shape':
    'keine Seite zeigt hier auf {} mm ihren Rand; der Umriss folgt der üblichen Form',
  'an edge on one side at least': 'einen Rand wenigstens auf einer Seite',
  'mark two places on the true edge there, or photograph again with this stretch free and plain':
    'Zeig dort auf zwei Stellen des wahren Rands oder fotografier noch einmal mit dieser Strecke frei',
  'an edge {} mm above the sheet': 'ein Rand {} mm über dem Blatt',
  'measure from the sheet up to the middle of the edge of the plate that faces the camera, in millimetres':
    'Miss vom Blatt bis zur Mitte des Rands der Platte, die zur Kamera zeigt, in Millimetern',
  '{} mm for a body that then is {} mm long': '{} mm bei einem Korpus, der dann {} mm lang ist',
  '{} to {} mm where a whole instrument lies on the sheet':
    '{} bis {} mm, wo ein ganzes Instrument auf dem Blatt liegt',
  'look at the unit and measure again; leave it so only if a plate alone lies there':
    'Sieh dir die Einheit an und miss noch einmal; lass es nur so, wenn dort eine Platte allein liegt',
  '{} mm was given and used, but {} {} ± {} mm': '{} mm sind angegeben und gelten, aber {} {} ± {} mm',
  'heights that agree': 'Höhen, die übereinstimmen',
  'measure again from the sheet up to the edge that faces the camera, or leave the height out and let the other count':
    'Miss noch einmal vom Blatt bis zum Rand, der zur Kamera zeigt, oder lass die Höhe weg, dann gilt die andere',
  'what was followed stands {} mm outside the other half where ribs can show: taken for ribs or far plate, and the other half used':
    'was verfolgt wurde, steht {} mm außerhalb der anderen Hälfte, wo Zargen zu sehen sein können: für Zargen oder ferne Platte gehalten, und die andere Hälfte genommen',
  'the edge of the plate that faces the camera, on both halves':
    'den Rand der Platte, die zur Kamera zeigt, auf beiden Hälften',
  'photograph with the lens straight above the waist; if the other half has lost so much wood, overrule the stretch (--stretch "{} {}-{} as-found")':
    'Fotografier mit der Linse genau über der Mitte; wenn die andere Hälfte so viel Holz verloren hat, lass die Strecke, wie sie gefunden ist ({} {}-{})',
  'both sides lie {} mm inside the curve of the rest: worn alike, or so meant':
    'beide Seiten liegen {} mm innerhalb der Kurve des Rests: gleich abgenutzt oder so gemeint',
  'one side unworn there, or a purfling that tells where the edge stood':
    'dort eine Seite ohne Abnutzung oder eine Einlage, die sagt, wo der Rand stand',
  'look at the wood there; if it is worn, draw the outline from an unworn instrument or overrule the stretch':
    'Sieh dir das Holz dort an; wenn es abgenutzt ist, nimm den Umriss von einem unabgenutzten Instrument oder bestimm die Strecke selbst',
  'nothing is written there of how its outline was traced':
    'dort steht nichts davon, wie sein Umriss abgenommen wurde',
  'a trace, or a design drafted from one': 'eine Abnahme oder ein daraus gezeichneter Entwurf',
  'give the options of the trace one by one': 'Gib die Angaben der Abnahme einzeln',
  'no calibration sheet can be read in the photograph, so this was not used':
    'auf dem Foto ist kein Messblatt zu lesen, also wurde dies nicht gebraucht',
  'photograph again with the sheet, or rest on the known lengths alone':
    'Fotografier noch einmal mit dem Blatt oder verlass dich auf die bekannten Längen allein',
  'the sheet in every one of several photographs: it is what puts them together':
    'das Blatt auf jedem von mehreren Fotos: es fügt sie zusammen',
  'leave this photograph out, or trace it alone with a known length':
    'Lass dieses Foto weg oder nimm es allein mit einer bekannten Länge ab',
  'in {} places the camera looks down on the ribs, and the plates cannot be told apart there':
    'an {} Stellen sieht die Kamera auf die Zargen, und die Platten sind dort nicht zu unterscheiden',
  'an edge of the near plate that stands out from the ribs':
    'einen Rand der nahen Platte, der sich von den Zargen abhebt',
  'photograph again with the lens straight above the waist, from farther away':
    'Fotografier noch einmal mit der Linse genau über der Mitte, aus größerer Entfernung',
  'a calibration sheet in the photograph, but no height of the plate’s edge above it':
    'ein Messblatt auf dem Foto, aber keine Höhe des Plattenrands darüber',
  'that height: an edge 30 mm up reads about 2 % too large':
    'diese Höhe: ein Rand in 30 mm Höhe misst etwa 2 % zu groß',
  'measure from the sheet up to the middle of the edge of the plate that faces the camera; or stand a height card level with it; or add a second photograph, tilted by 10° to 20°':
    'Miss vom Blatt bis zur Mitte des Rands der Platte, die zur Kamera zeigt; oder stell eine Höhenkarte auf gleiche Höhe; oder mach ein zweites, um 10° bis 20° gekipptes Foto',
  'not the photograph that the record was made with': 'nicht das Foto, mit dem der Eintrag entstand',
  'the same file, where the same result is wanted': 'dieselbe Datei, wenn dasselbe Ergebnis gewünscht ist',
  'give that file, or look whether the recorded hints still lie where they should':
    'Gib diese Datei oder sieh nach, ob die eingetragenen Hinweise noch liegen, wo sie sollen',
  'straight or over-arch for the body length': 'straight oder over-arch für die Korpuslänge',
  'edge or purfling for a width': 'edge oder purfling für eine Breite',
  'say how this length was taken': 'Sag, wie diese Länge genommen wurde',
  'a name and a length, such as bodyLength=354, lowerBout=206±0.3 or "bodyLength=357 over-arch"':
    'einen Namen und eine Länge, etwa bodyLength=354, lowerBout=206±0.3 oder "bodyLength=357 over-arch"',
  'write it so': 'Schreib es so',
  '"{}" is no measurement that Garland knows': '"{}" ist kein Maß, das Garland kennt',
  'a name such as bodyLength, lowerBout, waist or upperBout':
    'einen Namen wie bodyLength, lowerBout, waist oder upperBout',
  'use one of these names': 'Nimm einen dieser Namen',
  'one length, or two with a comma: along the long side, then the short side':
    'eine Länge oder zwei mit Komma: längs der langen Seite, dann der kurzen',
  'measure the two 150 mm bars of the printed sheet': 'Miss die beiden 150-mm-Balken des gedruckten Blatts',
  'a resolution and a scale bar': 'eine Auflösung und ein Maßstabsbalken',
  'one of them': 'eines davon',
  'leave out the one that you trust less, and give it as a known length instead':
    'Lass weg, was du weniger glaubst, und gib es stattdessen als bekannte Länge an',
  'pixels an inch, between {} and {}, such as 300': 'Bildpunkte je Zoll zwischen {} und {}, etwa 300',
  'look at what the scanner was set to': 'Sieh nach, worauf der Scanner eingestellt war',
  'read the pixels of both ends of the bar in a picture viewer':
    'Lies die Bildpunkte beider Balkenenden in einem Bildbetrachter ab',
  'this is a HEIC picture, as some phones save them':
    'das ist ein HEIC-Bild, wie manche Telefone sie speichern',
  'a JPEG or PNG': 'ein JPEG oder PNG',
  'set the phone to save JPEG, or export the picture as JPEG at full size':
    'Stell das Telefon auf JPEG oder gib das Bild als JPEG in voller Größe aus',
  'it cannot be read as a picture ({})': 'es lässt sich nicht als Bild lesen ({})',
  'a whole JPEG or PNG': 'ein ganzes JPEG oder PNG',
  'open it in a picture viewer; if that fails too, copy it from the camera again':
    'Öffne es in einem Bildbetrachter; gelingt auch das nicht, kopier es noch einmal von der Kamera',
  'a strip of {} by {} pixels': 'ein Streifen von {} mal {} Bildpunkten',
  'a photograph at most {} times as long as wide': 'ein Foto, das höchstens {}-mal so lang wie breit ist',
  'use the picture as the camera saved it': 'Nimm das Bild, wie die Kamera es gespeichert hat',
  '{} by {} pixels, {} megapixels': '{} mal {} Bildpunkte, {} Megapixel',
  'at most {} megapixels': 'höchstens {} Megapixel',
  'save it at half the size; 12 to 50 megapixels are plenty':
    'Speicher es in halber Größe; 12 bis 50 Megapixel sind reichlich',
  'only {} by {} pixels': 'nur {} mal {} Bildpunkte',
  'at least {} pixels each way, better 4000': 'mindestens {} Bildpunkte in jeder Richtung, besser 4000',
  'use the picture as the camera saved it, not a preview of it':
    'Nimm das Bild, wie die Kamera es gespeichert hat, keine Vorschau davon',
  'in the middle': 'in der Mitte',
  '{} from {}': '{} von {}',
  'the left': 'links',
  'the right': 'rechts',
  ', a front': ', eine Decke',
  ', a back': ', ein Boden',
  'C bout': 'Mittelbügel',
  'C bouts': 'Mittelbügel',
  '{} bout': 'Bügel ({})',
  '{}, {} side': '{}, Seite: {}',
  'the top was asked for, but this body shows neither sound holes nor a fingerboard':
    'gefragt war die Decke, aber dieser Korpus zeigt weder F-Löcher noch Griffbrett',
  'the back was asked for, but this body shows sound holes or a fingerboard':
    'gefragt war der Boden, aber dieser Korpus zeigt F-Löcher oder ein Griffbrett',
  'a photograph of the {}': 'ein Foto von: {}',
  'say --face {} if this is the {}; if it is not, mark a place inside the body that is meant':
    'Wähl die andere Seite ({}), wenn es so ist ({}); sonst zeig auf eine Stelle in dem gemeinten Korpus',
  'the edge is seen on only {} % of this stretch': 'der Rand ist nur auf {} % dieses Abschnitts zu sehen',
  '{} %, or {} % where all else is plain, or a look by the maker':
    '{} %, oder {} %, wo alles andere klar ist, oder einen Blick von dir',
  'drag two points there onto the true edge, or confirm the outline as drawn':
    'Zieh dort zwei Punkte auf den wahren Rand oder bestätige den Umriss, wie er ist',
  'several readings of the picture differ by {} % in width':
    'mehrere Lesungen des Bildes weichen um {} % in der Breite ab',
  'no second reading of the picture confirms this outline':
    'keine zweite Lesung des Bildes bestätigt diesen Umriss',
  'agreement within {} %': 'Übereinstimmung auf {} %',
  'compare the outline with the picture and drag one point where it leaves the edge':
    'Vergleich den Umriss mit dem Bild und zieh einen Punkt dorthin, wo er den Rand verlässt',
  'ends of the body': 'Enden des Korpus',
  'a second outline that ends elsewhere is nearly as likely':
    'ein zweiter Umriss, der anderswo endet, ist fast ebenso wahrscheinlich',
  'one plain outline': 'einen klaren Umriss',
  'click where the lower end of the body lies on the centre line':
    'Klick auf das untere Ende des Korpus auf der Mittellinie',
  'length to lower bout': 'Länge zu Unterbügel',
  'upper to lower bout': 'Ober- zu Unterbügel',
  'waist to lower bout': 'Mittel- zu Unterbügel',
  '{} in the picture': '{} im Bild',
  '{} to {}, as bodies of this kind have': '{} bis {}, wie Körper dieser Art haben',
  'check whether the camera was tilted or the instrument stands aslant; if not, confirm the outline':
    'Prüf, ob die Kamera gekippt war oder das Instrument schief liegt; wenn nicht, bestätige den Umriss',
  'its middle stands {} mm beside the centre line': 'seine Mitte steht {} mm neben der Mittellinie',
  'check whether the instrument was turned about its long axis; photograph it squarely':
    'Prüf, ob das Instrument um seine Längsachse gedreht war; fotografier es gerade',
  '{} side': 'Seite: {}',
  '{} % of what was followed here is a line with one colour on either side: it may be the purfling':
    '{} % dessen, was hier verfolgt wurde, ist eine Linie mit gleicher Farbe auf beiden Seiten: es kann die Einlage sein',
  'an edge between the body and what it lies on': 'einen Rand zwischen dem Korpus und dem, worauf er liegt',
  'draw a line on the body there, between the purfling and the edge, or photograph it on a ground of another colour':
    'Zieh dort eine Linie auf dem Korpus, zwischen Einlage und Rand, oder fotografier ihn auf andersfarbigem Grund',
  'edge {} in the picture': 'Rand {} im Bild',
  'the ribs seem to show inside the outline on {} % of it: what was followed may be the far plate':
    'auf {} % des Umrisses scheinen innen die Zargen zu sehen: was verfolgt wurde, kann die ferne Platte sein',
  'the edge of the plate that faces the camera': 'den Rand der Platte, die zur Kamera zeigt',
  'photograph it with the lens straight above its middle and farther away, or drag points there onto the near edge':
    'Fotografier ihn mit der Linse genau über der Mitte und aus größerer Entfernung, oder zieh dort Punkte auf den nahen Rand',
  'to the right': 'rechts',
  'to the left': 'links',
  'its shape lies {} spreads from the usual': 'seine Form liegt {} Streuungen neben dem Üblichen',
  '{} or less': '{} oder weniger',
  'confirm that this is a body of the violin family with four corners':
    'Bestätige, dass dies ein Korpus der Geigenfamilie mit vier Ecken ist',
  'looking for the body': 'Der Korpus wird gesucht',
  'following its edge': 'Sein Rand wird verfolgt',
  'the outline is found': 'Der Umriss ist gefunden',
  'measuring its edge': 'Sein Rand wird gemessen',
  'known body length in the photograph': 'bekannte Korpuslänge auf dem Foto',
  'chosen body': 'gewählter Körper',
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
  'too little of the middle is free of fingerboard and tailpiece':
    'zu wenig der Mitte ist frei von Griffbrett und Saitenhalter',
  'no straight dark line near the centre line is plainer than the grain':
    'keine gerade dunkle Linie bei der Mittellinie ist deutlicher als die Maserung',
  'centre joint': 'Mittelfuge',
  'purfling, {}, {} side': 'Einlage, {}, Seite: {}',
  'sound holes': 'F-Löcher',
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
  '{} on the {}': '{}, {}',
  'the long arch is nearest to {} ({} mm rms); the design draws a circle':
    'die Längswölbung kommt {} am nächsten ({} mm rms); der Entwurf zeichnet einen Kreis',
  'a circle with end fillets': 'ein Kreis mit Ausrundungen an den Enden',
  'a flat top between falling circles': 'ein flacher Scheitel zwischen fallenden Kreisen',
  'a cycloid': 'eine Zykloide',
  'side of the head in {}': 'Seite des Kopfes in {}',
  'rise {} mm': 'Stich {} mm',
  'rise {} mm, half width {} mm, fullness {}': 'Stich {} mm, halbe Breite {} mm, Völligkeit {}',
  'cross arch at the waist': 'Querwölbung am Mittelbügel',
  '{} fitted to {}': '{}, eingepasst: {}',
  'edge less the channel of the arches fitted to {}': 'Rand weniger Hohlkehle der eingepassten Wölbungen: {}',
  'cross arch of the {} fitted to {}': 'Querwölbung, {}, eingepasst: {}',
  'crossArch or longArch: a scroll gives no arch':
    'Quer- oder Längswölbung: eine Schnecke gibt keine Wölbung',
  'the plate that it was taken from, top or back': 'die Platte, von der es genommen wurde, Decke oder Boden',
  'profile in {}': 'Profil in {}',
  'a closed line': 'eine geschlossene Linie',
  '{} side, {} to {} mm above the lower end': 'Seite: {}, {} bis {} mm über dem unteren Ende',
  '{} to {} mm above the lower end': '{} bis {} mm über dem unteren Ende',
  'average, bass or treble': 'average, bass oder treble',
  'name one of them': 'Nenn eines davon',
  'one width, or two (lower, upper), between {} and {} mm':
    'eine Breite oder zwei (untere, obere) zwischen {} und {} mm',
  'measure the short straight edge at the tip of a corner that is least worn':
    'Miss die kurze gerade Kante an der Spitze der am wenigsten abgenutzten Ecke',
  'a side, two heights above the lower end in mm and what to take there: outer, as-found, other or mean':
    'eine Seite, zwei Höhen über dem unteren Ende in mm und was dort gilt: outer, as-found, other oder mean',
  'write it like "bass 120-150 as-found"': 'Schreib es wie "bass 120-150 as-found"',
  'looking for the calibration sheet': 'Das Messblatt wird gesucht',
  'height card {} tells': 'Höhenkarte {} sagt',
  'the photographs together tell': 'die Fotos zusammen sagen',
  'restoring the outline': 'Der Umriss wird wiederhergestellt',
  'following purfling, sound holes and joint': 'Einlage, F-Löcher und Fuge werden verfolgt',
  'the outline is restored': 'Der Umriss ist wiederhergestellt',
  'two places and a length, such as "120,80 1320,80 = 100 mm"':
    'zwei Stellen und eine Länge, etwa "120,80 1320,80 = 100 mm"',
  'places at least {} pixels apart': 'Stellen, mindestens {} Bildpunkte auseinander',
  'fullness {} and {}': 'Völligkeit {} und {}',
  'both within {} to be drawn alike; each plate is drawn with its own':
    'beide innerhalb von {}, um gleich gezeichnet zu werden; jede Platte ist mit ihrer eigenen gezeichnet',
  'compare both with the instrument, or give the fullness that you want':
    'Vergleich beide mit dem Instrument oder gib die Völligkeit an, die du willst',
  'the {} read a second time, with a crest of {} mm where the first reading has {} mm; the second one is used':
    '{}: ein zweites Mal abgelesen, mit einem Scheitel von {} mm, wo die erste Ablesung {} mm hat; die zweite gilt',
  'both within {} mm': 'beide innerhalb von {} mm',
  'leave one of the readings out, or read the arch there again':
    'Lass eine der Ablesungen weg oder lies die Wölbung dort noch einmal ab',
  'the {} read {} mm high, {} {} mm at its crest': '{}: {} mm hoch abgelesen, {} {} mm am Scheitel',
  'read both again from the same level, or leave the wrong one out':
    'Lies beide noch einmal von derselben Höhe ab oder lass die falsche weg',
};
