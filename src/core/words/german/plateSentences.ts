import type { Catalogue } from '../catalogue.ts';

/** What is found in thicknesses, bar, post and sound holes. */
export const plateSentences: Catalogue = {
  'the {} comes down to {} mm {}, {} mm short ({})': '{}: kommt auf {} mm herunter, {}, {} mm zu wenig ({})',
  '{} mm or more there ({})': 'dort {} mm oder mehr ({})',
  'leave it thicker there, or set {} in the design if so little is meant':
    'Lass es dort dicker oder setz {} im Entwurf, wenn so wenig gemeint ist',
  'no number': 'keine Zahl',
  'a {} that would stand off the plate': '{}: stünde neben der Platte',
  'under half of {} mm, less {} mm, a {} of {} mm would stand across the centre line':
    'Unter der Hälfte von {} mm, weniger {} mm, stünde ein {} von {} mm über der Mittellinie',
  'check these three numbers': 'Prüf diese drei Zahlen',
  'a {} on its own half of the top, under a foot of the bridge':
    '{} auf der eigenen Hälfte der Decke, unter einem Stegfuß',
  'check the body stop, the width of the bridge feet, and the sizes of bar and post':
    'Prüf die Korpusmensur, die Breite der Stegfüße und die Größen von Balken und Stimmstock',
  'a bar that runs over block or lining at its {} end':
    'ein Balken, der am Ende ({}) über Klotz oder Reifchen läuft',
  'a bar that ends inside the hollow of the top': 'einen Balken, der in der Höhlung der Decke endet',
  'shorten it': 'Mach ihn kürzer',
  'linings {} mm thick': 'Reifchen von {} mm Stärke',
  'a thickness above 0 mm that leaves room inside them': 'eine Stärke über 0 mm, die innen Platz lässt',
  '{} mm of {} under an outside that is rounder than that, {}':
    '{} mm {} unter einer Außenseite, die enger gerundet ist, {}',
  'an outside whose round is larger than the thickness':
    'eine Außenseite, deren Rundung größer ist als die Stärke',
  'make the plate thinner there, or the arch less sharply rounded':
    'Mach die Platte dort dünner oder die Wölbung weniger eng gerundet',
  'the {} comes out {} mm thick instead of {} mm, {}: its outside lies so low there that the inside would go through the gluing face':
    '{}: wird {} mm dick statt {} mm, {}: die Außenseite liegt dort so tief, dass das Innere durch die Leimfläche ginge',
  'an outside at least {} mm over the gluing face': 'eine Außenseite, mindestens {} mm über der Leimfläche',
  'leave the edge thicker, make the channel shallower, or thin the plate less there':
    'Lass den Rand dicker, mach die Hohlkehle flacher oder die Platte dort weniger dünn',
  'a thickness of {} mm': 'eine Stärke von {} mm',
  'a thickness above 0 mm': 'eine Stärke über 0 mm',
  'give it in millimetres': 'Gib sie in Millimetern an',
  '{} mm in the channel, with {} in the middle, {} in the bouts and {} at the flanks':
    '{} mm in der Hohlkehle, bei {} in der Mitte, {} in den Bügeln und {} an den Flanken',
  'a channel no thicker than the rest': 'eine Hohlkehle, die nicht dicker ist als der Rest',
  'make the channel thinner, or ask for more at single places with points':
    'Mach die Hohlkehle dünner oder verlang an einzelnen Stellen mehr, mit Punkten',
  '{} mm more at the {} over {} mm, on a plate of {} mm at its thinnest':
    '{} mm mehr: {}, auf {} mm, bei einer Platte von {} mm an der dünnsten Stelle',
  'wood left everywhere: if thinner, then by less than the plate is thick, over a reach above 0 mm':
    'überall bleibendes Holz: wenn dünner, dann um weniger, als die Platte dick ist, auf einer Reichweite über 0 mm',
  'correct extra and reach': 'Berichtige Zugabe und Reichweite',
  '{} mm at {}, {}': '{} mm bei {}, {}',
  'a thickness above 0 mm at a place on the plate, across from the centre line and up from the lower end':
    'eine Stärke über 0 mm an einer Stelle auf der Platte, quer ab der Mittellinie und aufwärts ab dem unteren Ende',
  'two thicknesses at {}, {}, or at that place on both sides':
    'zwei Stärken bei {}, {}, oder an dieser Stelle auf beiden Seiten',
  'one thickness at a place; both halves are alike': 'eine Stärke je Stelle; beide Hälften sind gleich',
  'leave one of them out': 'Lass eine davon weg',
  'an eye of {} mm in the {} end of a hole {} mm long':
    'ein Auge von {} mm am Ende ({}) eines Lochs von {} mm Länge',
  'an eye that leaves a hook round it': 'ein Auge, um das ein Haken bleibt',
  'make the eye smaller, or the hole longer': 'Mach das Auge kleiner oder das Loch länger',
  'a stem whose edge has no room for the {} hook':
    'ein Schaft, dessen Kante keinen Platz für den Haken hat ({})',
  'eyes to both sides of the stem': 'Augen zu beiden Seiten des Schafts',
  'check the width of the stem against the length of the hole and its eyes':
    'Prüf die Breite des Schafts gegen die Länge des Lochs und seine Augen',
  'a sound hole whose line crosses itself': 'ein F-Loch, dessen Linie sich selbst kreuzt',
  'one opening': 'eine Öffnung',
  'check its length, both eyes, the stem and the opening at the tips of the wings':
    'Prüf seine Länge, beide Augen, den Schaft und die Öffnung an den Flügelspitzen',
  'a sound hole so near to the edge that it cannot be laid flat from the arch: no template hugs it':
    'ein F-Loch, das so nahe am Rand liegt, dass es sich nicht von der Wölbung abwickeln lässt: keine Schablone schmiegt sich an',
  'wood of the arch all round the hole': 'Holz der Wölbung rund um das Loch',
  'use the template in plan, or bring the hole farther from the edge':
    'Nimm die Schablone im Grundriss oder rück das Loch weiter vom Rand',
  'a flat template of the sound hole that must give by {} % to lie on the arch':
    'eine abgewickelte Schablone des F-Lochs, die um {} % nachgeben muss, um auf der Wölbung zu liegen',
  '{} % or less (from memory)': '{} % oder weniger (aus dem Gedächtnis)',
  'cut it in two at the bridge line and lay each half by its own eye, or lower the arch':
    'Schneid sie an der Steglinie entzwei und leg jede Hälfte nach ihrem eigenen Auge auf, oder mach die Wölbung niedriger',
  'an arch that slopes by {}° under the sound hole': 'eine Wölbung, die unter dem F-Loch um {}° geneigt ist',
  '30° or less (chosen by us)': '30° oder weniger (von uns gewählt)',
  'lower the arch, or bring the hole nearer to the centre line':
    'Mach die Wölbung niedriger oder rück das Loch näher zur Mittellinie',
  'a sound hole that runs over the edge of the top or over the centre line':
    'ein F-Loch, das über den Deckenrand oder über die Mittellinie läuft',
  'each hole on its own half of the top': 'jedes Loch auf seiner eigenen Hälfte der Decke',
  'check the length of the holes, the distance between the upper eyes and the body stop':
    'Prüf die Länge der Löcher, den Abstand der oberen Augen und die Korpusmensur',
  'a sound hole {} mm from the edge of the top, {} mm {} its nicks':
    'ein F-Loch {} mm vom Deckenrand, {} mm {} seinen Kerben',
  '{} mm or more (from memory): less breaks out, and leaves the glue joint no room':
    '{} mm oder mehr (aus dem Gedächtnis): weniger bricht aus und lässt der Leimfuge keinen Platz',
  'shorten the hole, bring the upper eyes nearer together, or give a larger lowerEyeToEdge':
    'Mach das Loch kürzer, rück die oberen Augen zusammen oder gib lowerEyeToEdge größer an',
  '{} mm from the lower eye to the edge; the hole turned {} comes to {} mm, and farther it is not turned':
    '{} mm vom unteren Auge bis zum Rand; das Loch, {} gedreht, kommt auf {} mm, und weiter wird es nicht gedreht',
  'a distance that goes with the length of the hole and the distance between the upper eyes on this outline':
    'einen Abstand, der bei diesem Umriss zur Länge des Lochs und zum Abstand der oberen Augen passt',
  'give {} mm, or {}': 'Gib {} mm an, oder {}',
  'set the upper eyes farther apart or make the hole longer':
    'setz die oberen Augen weiter auseinander oder mach das Loch länger',
  'set the upper eyes nearer together or make the hole shorter':
    'setz die oberen Augen näher zusammen oder mach das Loch kürzer',
  'the lower eye {} mm from the nearest place of the edge':
    'das untere Auge {} mm von der nächsten Stelle des Randes',
  'usually {} to {} mm ({}); none of these says to which place it is measured':
    'üblich {} bis {} mm ({}); keine davon sagt, bis zu welcher Stelle gemessen ist',
  'keep it if it is meant; for another lowerEyeToEdge the hole is turned about its inner nick':
    'Behalte es, wenn es so gemeint ist; für ein anderes lowerEyeToEdge wird das Loch um seine innere Kerbe gedreht',
  'inner nicks {} mm {} the bridge line, {} mm from the upper end':
    'innere Kerben {} mm {} der Steglinie, {} mm vom oberen Ende',
  'nicks at the stop, {} mm: whoever sets up the bridge goes by them':
    'Kerben an der Mensur, {} mm: danach richtet sich, wer den Steg aufstellt',
  'keep it only if it copies an instrument; the bridge line, post and bar stay at the stop':
    'Behalte es nur, wenn es ein Instrument nachbildet; Steglinie, Stimmstock und Balken bleiben an der Mensur',
  'the lower corner block, as it stands in the form, reaches {} mm under the sound hole':
    'der untere Eckklotz, wie er in der Form steht, reicht {} mm unter das F-Loch',
  '{} mm or less, which comes off when the block is trimmed inside (chosen by us)':
    '{} mm oder weniger, die abfallen, wenn der Klotz innen beschnitten wird (von uns gewählt)',
  'make the block shorter along the waist, or trim its inside well back once the form is out, before the top goes on':
    'Mach den Klotz längs des Mittelbügels kürzer oder nimm ihn innen weit zurück, wenn die Form heraus ist und bevor die Decke aufkommt',
  'a sound hole that runs over {}': 'ein F-Loch, das über Folgendes läuft: {}',
  'an opening clear of blocks and linings': 'eine Öffnung frei von Klötzen und Reifchen',
  'shorten the hole, bring it nearer to the centre line, or make linings and corner blocks smaller':
    'Mach das Loch kürzer, rück es näher zur Mittellinie oder mach Reifchen und Eckklötze kleiner',
  'a sound hole that runs {} mm over the {}': 'ein F-Loch, das {} mm über Folgendes läuft: {}',
  'a sound hole {} mm beside the {}': 'ein F-Loch {} mm daneben: {}',
  '{} mm free or more (from memory)': '{} mm frei oder mehr (aus dem Gedächtnis)',
  'set the upper eyes farther apart, or make the feet of the bridge narrower':
    'Setz die oberen Augen weiter auseinander oder mach die Stegfüße schmaler',
  'a bridge {} mm over its feet, upper eyes {} mm apart':
    'ein Steg, über die Füße {} mm, obere Augen {} mm auseinander',
  'feet no wider than between the upper eyes, as is published and usual':
    'Füße, nicht breiter als zwischen den oberen Augen, wie veröffentlicht und üblich',
  'use a narrower bridge, or set the eyes farther apart':
    'Nimm einen schmaleren Steg oder setz die Augen weiter auseinander',
  'an opening of {} mm beside an eye': 'eine Öffnung von {} mm neben einem Auge',
  '{} mm or more for a saw blade and the knife (from memory)':
    '{} mm oder mehr für ein Sägeblatt und das Messer (aus dem Gedächtnis)',
  'make that eye smaller, or the hole longer': 'Mach dieses Auge kleiner oder das Loch länger',
  'an opening of {} mm at the tip of a wing': 'eine Öffnung von {} mm an der Spitze eines Flügels',
  '{} mm or more; chosen by us after holes measured on photographs':
    '{} mm oder mehr; von uns gewählt nach Löchern, die an Fotos gemessen sind',
  'widen it, or saw only as far as the tips and finish with the knife':
    'Mach sie weiter oder säg nur bis zu den Spitzen und vollende mit dem Messer',
  'middles of the eyes {} mm apart': 'die Mitten der Augen {} mm auseinander',
  '{} mm by {}': '{} mm nach {}',
  'keep it if it is meant; a longer or shorter hole changes it':
    'Behalte es, wenn es so gemeint ist; ein längeres oder kürzeres Loch ändert es',
  'the lower eye {} mm from the centre line, {} mm from the edge':
    'das untere Auge {} mm von der Mittellinie, {} mm vom Rand',
  '{} mm from the centre line by {}: on this outline that would leave {} mm to the edge, so both cannot be met':
    '{} mm von der Mittellinie nach {}: bei diesem Umriss ließe das {} mm bis zum Rand, beides zugleich geht also nicht',
  'keep it: the distance to the edge comes first; or give lowerEyeToEdge {} to go by the rule':
    'Behalte es: der Abstand zum Rand geht vor; oder gib lowerEyeToEdge {} an, um der Regel zu folgen',
  'round the middle': 'um die Mitte',
  'at the flanks of the waist': 'an den Flanken des Mittelbügels',
  'in the channel': 'in der Hohlkehle',
  'under the post': 'unter dem Stimmstock',
  'under the bar': 'unter dem Balken',
  'in the design': 'im Entwurf',
  'in the design: thicker there than the map': 'im Entwurf: dort dicker als der Plan',
  'beyond it that fades into the map; 15 mm on a violin unless said':
    'darüber hinaus geht es in den Plan über; 15 mm bei der Geige, wenn nichts gesagt ist',
  '{} mm above the lower end, {} mm from the centre line':
    '{} mm über dem unteren Ende, {} mm von der Mittellinie',
  '{}, channel': '{}, Hohlkehle',
  '{}, thickness point {}': '{}, Stärkenpunkt {}',
  '{}, thickness points': '{}, Stärkenpunkte',
  'toward the edge': 'zum Rand',
  'toward the centre line': 'zur Mittellinie',
  'the {} lining': 'das Reifchen ({})',
  'a published rule of dividers (A. T. King, 2004), one maker’s reading of old violins':
    'einer veröffentlichten Zirkelregel (A. T. King, 2004), wie ein Geigenbauer alte Geigen liest',
  'a length, 0 at the stop': 'eine Länge, 0 an der Mensur',
  'too high': 'zu hoch',
  'too low': 'zu tief',
  'make the plate thinner there, leave its edge thicker, or make the channel shallower':
    'Mach die Platte dort dünner, lass ihren Rand dicker oder die Hohlkehle flacher',
  'make the plate thinner there, or its arch higher': 'Mach die Platte dort dünner oder ihre Wölbung höher',
};
