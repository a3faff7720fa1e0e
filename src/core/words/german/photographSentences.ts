import type { Catalogue } from '../catalogue.ts';

/** What is found in photographs of bodies, and in what is said of them. */
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
  'on neither side can the plates be told apart over {} places here; the outline follows the usual shape':
    'auf keiner der beiden Seiten sind die Platten hier über {} Stellen zu unterscheiden; der Umriss folgt der üblichen Form',
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
  'two numbers: across and down, px': 'zwei Zahlen: quer und abwärts, px',
  'a list of places, each two numbers: across and down, px':
    'eine Liste von Stellen, jede zwei Zahlen: quer und abwärts, px',
  'two points or more': 'zwei Punkte oder mehr',
  'three corners or more': 'drei Ecken oder mehr',
  'a list of lines, each a list of places': 'eine Liste von Linien, jede eine Liste von Stellen',
  'hints for "{}", which is not among the photographs': 'Hinweise zu „{}“, das nicht unter den Fotos ist',
  '{} of {} marks beside the picture, the first ({}) at {}, {} px':
    '{} von {} Marken neben dem Bild, die erste ({}) bei {}, {} px',
  'marks in a picture of {} × {} px': 'Marken in einem Bild von {} × {} px',
  'look whether the hints belong to this photograph and were made on it at this size, then mark it anew or remove them':
    'sieh nach, ob die Hinweise zu diesem Foto gehören und auf ihm in dieser Größe gemacht wurden; markier dann neu oder nimm sie heraus',
  'a whole number, 1 or more': 'eine ganze Zahl, 1 oder mehr',
  'a half interval of 0 mm or more': 'ein halbes Intervall von 0 mm oder mehr',
  'the name of one of the photographs that are traced': 'den Namen eines der Fotos, die gelesen werden',
  'correct the name in the hints, or trace that photograph too':
    'berichtige den Namen in den Hinweisen oder lies auch jenes Foto',
  'hints that do not say which of the photographs they are for':
    'Hinweise, die nicht sagen, zu welchem der Fotos sie gehören',
  'the name of one of them': 'den Namen eines davon',
  'add "photograph" with its file name to the hints':
    'füge den Hinweisen „photograph“ mit dem Dateinamen hinzu',
  'two files of hints that say otherwise of the same instrument ({})':
    'zwei Dateien mit Hinweisen, die vom selben Instrument Verschiedenes sagen ({})',
  'the same in both, or said in one of them only': 'dasselbe in beiden, oder nur in einer davon gesagt',
  'see which is right, and take it out of the other':
    'sieh nach, was stimmt, und nimm es aus der anderen heraus',
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
  'too little of the middle is free of fingerboard and tailpiece':
    'zu wenig der Mitte ist frei von Griffbrett und Saitenhalter',
  'no straight dark line near the centre line is plainer than the grain':
    'keine gerade dunkle Linie bei der Mittellinie ist deutlicher als die Maserung',
  'centre joint': 'Mittelfuge',
  'purfling, {}, {} side': 'Einlage, {}, Seite: {}',
  'sound holes': 'F-Löcher',
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
  'one width, or two that cannot be taken for one':
    'eine Breite, oder zwei, die sich nicht als eine lesen lassen',
  'write one with a point (7.2), two with a semicolon between them (7; 2)':
    'Schreib eine mit Punkt (7.2), zwei mit Strichpunkt dazwischen (7; 2)',
};
