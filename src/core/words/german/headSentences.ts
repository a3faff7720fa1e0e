import type { Catalogue } from '../catalogue.ts';

/** What is found in the head. */
export const headSentences: Catalogue = {
  'a silhouette of {} places of which {} lie near the side of a head':
    'eine Silhouette aus {} Stellen, von denen {} nahe der Seite eines Kopfes liegen',
  'the whole side of a head, seen square on': 'die ganze Seite eines Kopfes, senkrecht gesehen',
  'trace it again with the head flat on its side, and look at the traced line':
    'Nimm sie noch einmal ab, den Kopf flach auf der Seite, und sieh dir die Linie an',
  'the {} string {} the {} peg from the nut on its way to its own':
    'die {}-Saite {} den {}-Wirbel, vom Obersattel auf dem Weg zu ihrem eigenen',
  '{} or more between them': '{} oder mehr dazwischen',
  'move these pegs farther apart, or take thinner ones':
    'Setz diese Wirbel weiter auseinander oder nimm dünnere',
  'the {} string {} the wall of the pegbox': 'die {}-Saite {} die Wand des Wirbelkastens',
  'a string clear of the wall': 'eine Saite frei von der Wand',
  'widen the pegbox, thin its walls, or bring the strings closer together at the nut':
    'Mach den Wirbelkasten breiter, seine Wände dünner oder rück die Saiten am Obersattel zusammen',
  'a peg hole {} mm from the nut': 'ein Wirbelloch {} mm vom Obersattel',
  'a place inside the pegbox, {} to {} mm from the nut':
    'eine Stelle im Wirbelkasten, {} bis {} mm vom Obersattel',
  'correct it, or lengthen the head': 'Berichtige sie oder mach den Kopf länger',
  '{} turns; {} are drawn': '{} Umgänge; {} werden gezeichnet',
  'whole quarters, as the spiral is made of quarter circles':
    'ganze Viertel, denn die Spirale besteht aus Viertelkreisen',
  'give the nearest quarter': 'Gib das nächste Viertel an',
  'a number': 'eine Zahl',
  'a number above 0': 'eine Zahl über 0',
  'correct it: the {}': 'Berichtige: {}',
  'a back {} behind the gluing face, where the spiral leaves at {}':
    'ein Rücken {} hinter der Leimfläche, wo die Spirale bei {} abgeht',
  'a back farther behind than the place where it leaves the spiral':
    'einen Rücken, der weiter hinten liegt als die Stelle, wo er die Spirale verlässt',
  'check headDepth, scrollHeight, scrollFront and backLeaveAngle':
    'Prüf headDepth, scrollHeight, scrollFront und backLeaveAngle',
  'a hollow of {} and a chin {} behind the gluing face, {} {} the straight back carried on':
    'eine Mulde von {} und ein Kinn {} hinter der Leimfläche, {} {} dem verlängerten geraden Rücken',
  before: 'vor',
  'a straight back that runs through a hollow into the tip of the chin':
    'einen geraden Rücken, der durch eine Mulde in die Spitze des Kinns läuft',
  'raise backHollow or backLeanAngle, or check chinBehind and headLength':
    'Mach backHollow oder backLeanAngle größer oder prüf chinBehind und headLength',
  'a front edge turning {}° back under a scroll {} high whose top is {} from the nut':
    'eine Vorderkante, die {}° unter eine {} hohe Schnecke zurückläuft, deren oberste Stelle {} vom Obersattel liegt',
  'a front edge that passes under the scroll in one long round':
    'eine Vorderkante, die in einem langen Bogen unter der Schnecke hindurchgeht',
  'change pegboxFrontAngle, or check headTop, scrollHeight and scrollFront':
    'Ändere pegboxFrontAngle oder prüf headTop, scrollHeight und scrollFront',
  'a throat {} wide ending in a round of {}': 'eine Kehle, {} weit, die in einer Rundung von {} endet',
  'a round at least half as large as the throat is wide, ending under the outer turn':
    'eine Rundung, mindestens halb so groß wie die Kehle weit, die unter dem äußeren Umgang endet',
  'raise throatRadius or lower throatGap': 'Mach throatRadius größer oder throatGap kleiner',
  'a chin whose tip lies {} below the nut and {} behind the gluing face, and a neck {} thick at {}':
    'ein Kinn, dessen Spitze {} unter dem Obersattel und {} hinter der Leimfläche liegt, und ein Hals von {} Dicke bei {}',
  'a chin that stands out behind the back of the neck, and above where it runs into it':
    'ein Kinn, das hinter dem Halsrücken vorsteht und über der Stelle, wo es in ihn läuft',
  'check chinBehind, headLength, headTop and chinReach': 'Prüf chinBehind, headLength, headTop und chinReach',
  'a head {} wide at its top and {} over the ears, whose turns widen by {} on the front alone':
    'ein Kopf, oben {} und über die Ohren {} breit, dessen Umgänge allein vorn um {} breiter werden',
  'ears wider than top and turns together': 'Ohren, breiter als oben und Umgänge zusammen',
  'widen scrollEars, or make outerTurnAngle, middleTurnAngle or innerTurnAngle smaller':
    'Mach scrollEars breiter oder outerTurnAngle, middleTurnAngle oder innerTurnAngle kleiner',
  'ears {} apart, for which the turns widen {} behind than on the front':
    'Ohren {} auseinander, wofür die Umgänge hinten {} breiter werden als vorn',
  'far slower': 'viel langsamer',
  'far faster': 'viel schneller',
  'turns that widen about evenly all the way round': 'Umgänge, die rundum etwa gleichmäßig breiter werden',
  'widen scrollEars, or make the angles of the turns smaller':
    'Mach scrollEars breiter oder die Winkel der Umgänge kleiner',
  'narrow scrollEars, or make the angles of the turns larger':
    'Mach scrollEars schmaler oder die Winkel der Umgänge größer',
  'an end sloping in by {} mm under the nut and {} mm of wood before the throat, which leave no inside':
    'ein Ende, das unter dem Obersattel um {} mm einläuft, und {} mm Holz vor der Kehle, die kein Inneres lassen',
  'a pegbox that is open between its ends': 'einen Wirbelkasten, der zwischen seinen Enden offen ist',
  'make pegboxWeb or pegboxEndSlope smaller': 'Mach pegboxWeb oder pegboxEndSlope kleiner',
  'walls of {} to {} mm, {} mm more at the floor, in a pegbox {} to {} mm wide':
    'Wände von {} bis {} mm, am Grund {} mm mehr, in einem Wirbelkasten von {} bis {} mm Breite',
  'room between the walls, down to the floor': 'Platz zwischen den Wänden, bis zum Grund',
  'thin the walls, or widen the pegbox': 'Mach die Wände dünner oder den Wirbelkasten breiter',
  'a floor {} mm inside the back of the head': 'ein Grund {} mm innerhalb des Kopfrückens',
  'a floor thinner than the round of the back': 'einen Grund, dünner als die Rundung des Rückens',
  'lower pegboxFloor, or check headDepth': 'Mach pegboxFloor kleiner oder prüf headDepth',
  '{} turns from the throat to the eye': '{} Umgänge von der Kehle bis zum Auge',
  'half a turn to {}': 'einen halben Umgang bis {}',
  'count them from the throat inward; most scrolls have two and a half':
    'Zähl sie von der Kehle nach innen; die meisten Schnecken haben zweieinhalb',
  'a scroll {} mm high with an eye of {} mm and {} turns':
    'eine Schnecke, {} mm hoch, mit einem Auge von {} mm und {} Umgängen',
  'a spiral whose turns grow smaller from the outside to the eye':
    'eine Spirale, deren Umgänge von außen bis zum Auge kleiner werden',
  'check scrollHeight, scrollEye, scrollTurns and scrollQuickening':
    'Prüf scrollHeight, scrollEye, scrollTurns und scrollQuickening',
  'at the throat': 'an der Kehle',
  'beside the floor, {} mm from the nut': 'neben dem Grund, {} mm vom Obersattel',
  'walls of the pegbox {} thick {}': 'Wände des Wirbelkastens, {} dick {}',
  '{} or more, or they split at the pegs': '{} oder mehr, sonst spalten sie an den Wirbeln',
  'raise pegboxWallLean or pegboxFloor, or widen the back of the head':
    'Mach pegboxWallLean oder pegboxFloor größer oder den Kopfrücken breiter',
  'make them thicker, or widen the pegbox': 'Mach sie dicker oder den Wirbelkasten breiter',
  'a floor of the pegbox {} thick': 'ein Grund des Wirbelkastens von {} Dicke',
  'raise pegboxFloor': 'Mach pegboxFloor größer',
  'in front of it': 'davor',
  'between it and the floor': 'zwischen ihm und dem Grund',
  '{} peg hole from the nut with {} {}': 'Wirbelloch ({} vom Obersattel) mit {} {}',
  'move the peg along, thin the floor, or deepen the head':
    'Rück den Wirbel, mach den Grund dünner oder den Kopf tiefer',
  '{} peg hole from the nut with {} to the end of the pegbox':
    'Wirbelloch ({} vom Obersattel) mit {} bis zum Ende des Wirbelkastens',
  '{} or more, for the windings of the string': '{} oder mehr, für die Windungen der Saite',
  'move the peg along': 'Rück den Wirbel',
  '{} and {} peg hole {} apart': 'Wirbellöcher {} und {}, {} auseinander',
  '{} or more, for fingers and for the wood between':
    '{} oder mehr, für die Finger und für das Holz dazwischen',
  'move one of them along': 'Rück einen davon',
  'comes within {} of': 'kommt auf {} heran an',
  first: 'erstes',
  second: 'zweites',
  third: 'drittes',
  fourth: 'viertes',
  'a pegbox that stands out {} on either side of the neck at the nut, without shoulders':
    'ein Wirbelkasten, der am Obersattel auf jeder Seite {} über den Hals vorsteht, ohne Schultern',
  'shoulders that round it out from the neck, or a pegbox hardly wider than the neck':
    'Schultern, die ihn vom Hals aus runden, oder einen Wirbelkasten, der kaum breiter als der Hals ist',
  'give pegboxShoulder, about {} for a quarter circle':
    'Gib pegboxShoulder an, etwa {} für einen Viertelkreis',
  'shoulders on a pegbox {} wide at the nut, no wider than the neck of {}':
    'Schultern an einem Wirbelkasten, der am Obersattel {} breit ist, nicht breiter als der Hals mit {}',
  'a pegbox wider than the neck': 'einen Wirbelkasten, der breiter als der Hals ist',
  'widen the pegbox at the nut, or set pegboxShoulder to 0':
    'Mach den Wirbelkasten am Obersattel breiter oder setz pegboxShoulder auf 0',
  'shoulders {} long on a pegbox of {}': 'Schultern, {} lang, an einem Wirbelkasten von {}',
  '{} or less, or they are a taper and no shoulders':
    'höchstens {}, sonst sind es keine Schultern, sondern eine Verjüngung',
  'correct it: it is the length from the nut over which the pegbox rounds out':
    'Berichtige es: die Länge vom Obersattel an, über die sich der Wirbelkasten rundet',
  'pegs {} mm thick: number {} from the nut would run out at the front or through the floor of the pegbox':
    'Wirbel, {} mm dick: Nummer {} vom Obersattel aus bräche vorn oder durch den Grund des Wirbelkastens',
  'pegs that fit between its front and its floor':
    'Wirbel, die zwischen seine Vorderkante und seinen Grund passen',
  'correct their diameter, or the places of the pegs':
    'Berichtige ihren Durchmesser oder die Stellen der Wirbel',
};
