import type { stepsEn } from './stepsEn.ts';

/** Die Arbeit an der Bank, Schritt um Schritt; alles allgemein üblich, in Kürze. */
export const stepsDe: typeof stepsEn = {
  count: (of) => `${of} Schritte über der Innenform`,
  lead: 'In der üblichen Folge. Was abgehakt ist, wird mit dieser Sitzung im Browser aufgehoben.',
  done: (day) => `getan ${day}`,
  rests: (days) => days,
  doneToday: 'Heute getan',
  notAfterAll: 'Doch nicht getan',
  measure: 'unterwegs zu messen',
  pieces: 'Teile für diesen Schritt',
  steps: {
    blocks: {
      name: 'Klötze auf der Form',
      rests: 'ruht dann einen Tag',
      says: [
        'Die Form außerhalb der Linie sägen und auf sie feilen, winklig zu den Flächen. Ihren Rand wachsen, die Aussparungen nicht.',
        'Die Klötze saugend einpassen, Fasern aufrecht, nur mit einem Punkt leimen: sie lösen sich wieder von der Form.',
        'Die Klötze nach der inneren Umrissschablone und den Klotzlehren formen.',
      ],
      care: 'Säge und Stechbeitel: Werkstück spannen, beide Hände hinter der Schneide. Bei Fräse oder Bandsäge gilt deren Anleitung.',
    },
    ribs: {
      name: 'Zargen gebogen und geleimt',
      rests: 'ruht dann einen Tag',
      says: [
        'Die Streifen auf Stärke und Breite hobeln; zuerst die Mittelzargen biegen, feucht und unter einem Band.',
        'Die Mittelzargen mit ihren Zulagen leimen, ihre Enden mit dem Klotz abstechen, dann Ober- und Unterzargen darüber biegen und leimen.',
        'Alle vier Ecken gerade abschneiden.',
      ],
      care: 'Das Biegeeisen brennt lange, bevor es heiß aussieht, und Dampf verbrüht. Abseits stellen und abkühlen lassen, bevor man es anfasst.',
    },
    linings: {
      name: 'Reifchen',
      rests: 'ruht dann einen Tag',
      says: [
        'Die Zapfenlöcher in die Eckklötze schneiden, wenn die Zargen stehen.',
        'Die Reifchen wie die Zargen biegen und unter vielen kleinen Klammern einleimen.',
      ],
      care: 'Heißer Leim und sein Topf verbrühen. Dünne Streifen spalten unter Messer und Hobel: gegen einen Anschlag schneiden.',
    },
    levelled: {
      name: 'Zargenkranz abgerichtet',
      rests: '',
      says: [
        'Beide Seiten auf einem Brett mit Schleifpapier eben reiben, bis die Höhenlehren am Hals und unten passen.',
        'Mit dem Lineal quer prüfen; die Höhe nimmt gleichmäßig ab.',
      ],
      care: 'Holzstaub schadet Nase und Lunge: Maske tragen, Staub absaugen.',
    },
    outline: {
      name: 'Platten gefügt, Umriss geschnitten',
      rests: 'ruht dann einen Tag',
      says: [
        'Die Mittelfuge fügen, bis kein Licht hindurchscheint, und leimen.',
        'Den Zargenkranz auflegen und die Umrissschablone daran prüfen: der Überstand soll gleichmäßig sein. Wo der Kranz seinen eigenen Weg ging, folgt die Platte dem Kranz.',
        'Außerhalb der Linie sägen und auf sie feilen, die Ecken zuletzt.',
      ],
      care: 'Hände aus der Schnittlinie der Säge; die Platte spannen.',
    },
    arching: {
      name: 'Wölbung',
      rests: 'ruht dann zwei Tage',
      says: [
        'Die Stufen des Vorwölbplans fräsen oder sägen, oder nach seiner Karte bohren, nie tiefer, als sie sagt.',
        'Mit Hohleisen, Hobel und Ziehklinge zuerst nach der langen, dann nach den fünf queren Schablonen für den gewölbten Stand arbeiten.',
        'Unter einer tiefen Lampe die Platte entlangsehen: sie zeigt, was keine Schablone zeigt.',
      ],
      care: 'Die Platte in ihrer Lade spannen, beide Hände hinter der Schneide. Fräse: Schutz auf, Augen und Ohren bedeckt, flache Schnitte, zuerst die Anleitung.',
    },
    purfling: {
      name: 'Einlage und Rand',
      rests: 'ruht dann einen Tag',
      says: [
        'Den Graben in kleinen Schnitten mit Messer und Haken ausheben, Gehrungen zuletzt; die Einlage trocken probieren.',
        'Einleimen, dann die Hohlkehle nach den fertigen Schablonen stechen und den Rand nach seinen Stufen runden.',
      ],
      care: 'Das Messer läuft mit der Faser davon: von der haltenden Hand weg schneiden.',
    },
    hollowing: {
      name: 'aushöhlen und auf Stärke bringen',
      rests: '',
      says: [
        'Nach der Karte bohren, reichlich davor aufhören, und bis zu den Löchern ausstechen.',
        'Mit der Ziehklinge auf die Stärkenkarte bringen, den Taster an ihren Stellen; die Innenschablonen halten die Form.',
        'Die Platte hin und wieder wiegen.',
      ],
      care: 'Ein Stich durch die Platte ist nicht zurückzunehmen: vor jedem letzten Schnitt messen. Staub: Maske und Absaugung.',
    },
    holesAndBar: {
      name: 'Schalllöcher und Balken',
      rests: 'ruht dann einen Tag',
      says: [
        'Die Augen durch die flachgelegte Schablone anstechen, bohren, innerhalb der Linie sägen und mit dem Messer fertig schneiden.',
        'Den Balken nach seiner Kurve einpassen, bis er steht, ohne zu kippeln, leimen und auf Höhe schneiden.',
      ],
      care: 'Messer und Laubsäge rutschen in dünner Fichte: Decke polstern und hinterlegen, beide Hände hinter der Schneide.',
    },
    closed: {
      name: 'Korpus geschlossen',
      rests: 'ruht dann zwei Tage',
      says: [
        'Den Kranz von der Form nehmen, Klötze und Reifchen innen verputzen, zeichnen, wenn du magst.',
        'Den Boden leimen, dann die Decke mit dünnerem Leim, ringsum gezwingt; prüfen, dass der Überstand gleichmäßig ist.',
      ],
      care: 'Alle Zwingen bereitlegen, bevor der Leim heiß ist; er verbrüht.',
    },
    head: {
      name: 'Kopf und Hals geschnitzt',
      rests: '',
      says: [
        'Die Seitenansicht nach der Schablone sägen, hinten und vorn mit Wickelschablone und Breitentabelle anreißen.',
        'Die Windungen Stufe um Stufe stechen, den Wirbelkasten zuletzt aushöhlen, die Wirbellöcher bohren und reiben.',
      ],
      care: 'Von der haltenden Hand weg schnitzen; zum Bohren und Reiben den Kopf spannen.',
    },
    neck: {
      name: 'Hals eingesetzt',
      rests: 'ruht dann einen Tag',
      says: [
        'Den Halsausschnitt nach Plan und Tiefenlehre schneiden, ein wenig zu klein.',
        'Nachstechen, bis Mensur, Überstand, Projektion und Mittellinie zugleich stimmen, dann leimen.',
      ],
      care: 'Stechbeitel: beide Hände hinter der Schneide, der Korpus von einem Zweiten oder einer Lade gehalten.',
    },
    varnish: {
      name: 'Lack',
      rests: 'sechs Wochen im Ganzen',
      says: [
        'Flächen säubern, nässen und abziehen, grundieren und in dünnen Schichten lackieren, jede trocken vor der nächsten.',
      ],
      care: 'Lösungsmittel und ölige Lappen entzünden sich von selbst: Lappen flach ins Freie legen oder unter Wasser in einer geschlossenen Dose. Lüften; die Etiketten beachten.',
    },
    setUp: {
      name: 'Einrichtung',
      rests: 'setzt sich drei Wochen lang',
      says: [
        'Ober- und Untersattel, Wirbel und Stimme einpassen, dann den Steg auf Kurve und Höhe schneiden.',
        'Die Saiten langsam und einzeln hochziehen und sehen, dass der Steg aufrecht steht.',
      ],
      care: 'Eine Saite kann reißen: Augen aus ihrer Linie. Staub von Ebenholz und Bein schadet der Lunge.',
    },
  },
};
