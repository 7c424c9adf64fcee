### The words of a plan in German, as Project Fluent writes messages.
###
### What templates print may hold the tags of a line of text (templates/README.md); messages under "Plain
### words" hold words alone. A figure and its unit, and the words "step" and "page" and their number, stand
### together: no-break spaces.

## Figures and lists

# Between whole millimetres and their decimals.
decimal-mark = ,
list-comma = ,{" "}
list-last = {" "}und{" "}
list-more = {" "}und { $more } weitere
hours = { $hours } h
minutes = { $minutes } min
hours-and-minutes = { $hours } h { $minutes } min
# Month is a number from 1 to 12.
date = { $day }. { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
} { $year }
# Form is sheet, board or bar.
stock-count = { $form ->
    [sheet] { $count ->
        [one] { $count } Platte
       *[other] { $count } Platten
    }
    [board] { $count ->
        [one] { $count } Brett
       *[other] { $count } Bretter
    }
   *[bar] { $count ->
        [one] { $count } Stab
       *[other] { $count } Stäbe
    }
}
pieces = { $count } Stück
size-in = Maße, { $unit }
revision-line = Revision { $mark }, { $date }
mirrored-tag = { $count } gespiegelt
grain-along = Faser längs der { $along ->
    [width] Breite
   *[length] Länge
}
without = –
# A side of a part. An edge runs along the length of a part. All are feminine: messages say "der { $side }".
side = { $side ->
    [foot] Fußseite
    [head] Kopfseite
    [near] Nahkante
    [far] Fernkante
    [back] Rückseite
   *[face] Vorderseite
}
# The same where nothing but a side can be meant.
side-short = { $side ->
    [foot] Fuß
    [head] Kopf
    [near] Nahkante
    [far] Fernkante
    [back] Rückseite
   *[face] Vorderseite
}
steps-named = { $count ->
    [one] Schritt { $steps }
   *[other] Schritte { $steps }
}
# Messages say "nach { $towards }".
towards = { $towards ->
    [left] links
    [right] rechts
    [front] vorn
    [back] hinten
    [top] oben
   *[bottom] unten
}

## Change marks

marks-since-revision = Balken am Rand stehen neben allem, was anders ist als in Revision { $mark } vom { $date }; ein Dreieck ohne Balken steht, wo etwas weggefallen ist.
marks-since-first = Balken am Rand stehen neben allem, was anders ist als im Plan vor seiner ersten Revision; ein Dreieck ohne Balken steht, wo etwas weggefallen ist.

## Cover

cover-figure = { $title }, fertig, von vorn und oben gesehen
cover-size = Breite × Tiefe × Höhe
cover-mass = Masse, etwa
cover-level = Schwierigkeitsgrad
cover-time = Bauzeit
cover-time-and-more = { $time }, dazu { $steps ->
    [one] { $steps } Schritt
   *[other] { $steps } Schritte
} ohne Zeitangabe
cover-cost = Material und Beschläge
cover-cost-and-more = { $cost }, dazu { $items ->
    [one] { $items } Artikel
   *[other] { $items } Artikel
} ohne Preisangabe
cover-edition = Ausgabe
cover-author = Autor

## Read first

read-first = Zuerst lesen
read-first-lead = Lesen Sie dieses Kapitel und alle Schritte vor dem ersten Schnitt.
protect = Schützen Sie sich
protect-lead = Halten Sie bereit, was diese Zeichen verlangen. Bei jeder Gefahr unten stehen die zugehörigen Zeichen; die Kennungen sind die der ISO 7010. Keine Handschuhe in der Nähe von laufenden Sägeblättern, Bohrern oder Fräsern.
hazards = Was Sie bei diesem Bau verletzen kann
hazards-lead = Die schlimmsten Gefahren stehen vorn. Auf jede wird unmittelbar vor der Arbeit, zu der sie gehört, noch einmal hingewiesen.
how-to-read = So lesen Sie diesen Plan
how-figures = Maße
how-figures-systems = Jedes Maß steht in Millimetern und in Zoll. Arbeiten Sie durchgehend in einem System und mischen Sie beide nicht: Jedes Maß ist für sich gerundet. Maße stehen als Länge × Breite × Dicke, die Länge zuerst.
how-figures-rounded = Ein Maß mit <span class="rounded">~</span> davor ist gerundet; eines ohne ist exakt. Zoll sind auf { $inch } in gerundet, Millimeter auf { $mm } mm. Bohrer, Schrauben und Schnittfugen sind auf { $fine-inch } in und { $fine-mm } mm gerundet angegeben. Wo Teile passen müssen, reißen Sie das eine nach dem anderen an und addieren Sie keine gerundeten Maße.
how-drawings = Zeichnungen
how-drawings-lead = Ein Buchstabe im Kreis bezeichnet ein Teil; die Zuschnittliste nennt dessen Namen, Maße und Stückzahl. Dicke Linien sind sichtbare Kanten, dünne Strichlinien verdeckte Kanten. In einem Schritt heben sich neue Teile ab und sind von ihrem Platz abgerückt gezeichnet; folgen Sie den dünnen Linien zu diesem Platz. Links, rechts, vorn und hinten gelten für das fertige Möbel, von vorn gesehen. Zeichnungen sind nicht zum Abmessen da: Halten Sie sich an die eingetragenen Maße.
scale = Ist diese Seite maßstabsgetreu gedruckt?
scale-lead = Drucken Sie mit 100 %, ohne „An Seite anpassen“, und messen Sie das Quadrat nach.
scale-screen = Hier ist nichts maßstabsgetreu
scale-screen-lead = Diese Ausgabe ist für den Bildschirm. Alle Maße stehen in Zahlen; keine Zeichnung hat einen Maßstab, und keine ist zum Abmessen da.

## Signal words and boxes

signal = { $word ->
    [danger] GEFAHR
    [warning] WARNUNG
    [caution] VORSICHT
   *[notice] ACHTUNG
}
occasion-cutting = beim Zuschneiden der Teile
occasion-use = beim Gebrauch des Möbels
occasion-always = durchgehend
again = Bevor Sie beginnen, noch einmal: { $names } (siehe „{ $place }“).

## Contents

contents = Inhalt

## What to buy

buy = Einkaufsliste
buy-wood = Platten, Bretter und Stäbe
buy-material = Material
buy-buy = Kaufen
buy-each = Einzelpreis
buy-price = Preis
buy-on-hand = Schon vorhanden: { $title }, { $stock } zu { $size }.
buy-more-boards = { $title }: { $count ->
    [one] { $count } Brett wird
   *[other] { $count } Bretter werden
} mehr gekauft als eingeteilt, wegen Ästen, Rissen und Verdrehung.
buy-used = Gezählt nach den Zuschnittplänen; genutzt werden: { $used }. Messen Sie die Dicke des gekauften Materials, bevor Sie eine Nut schneiden: Platten sind oft dünner als ihr Nennmaß.
buy-used-of = { $title } zu { $percent } %
buy-lumber = Schnittholz unterschiedlicher Breite
buy-lumber-head = Schnittholz
buy-or-m2 = oder m²
buy-or-board-feet = oder Brettfuß
buy-a-unit = { $price } je { $unit ->
    [cubic_metre] m³
    [square_metre] m²
   *[board_foot] Brettfuß
}
buy-lumber-lead = Sägerau gemessen, Verschnitt eingerechnet: { $waste }. Nehmen Sie die Zuschnittliste mit und zeichnen Sie die Teile mit Kreide auf den Brettern an, die längsten zuerst, ohne Äste, Risse und Mark. Ein Brettfuß (board foot) sind 144 Kubikzoll.
buy-waste-of = { $percent } % mehr als die Rohteile aus { $title }
buy-hardware = Beschläge
buy-item = Artikel
buy-needed = Bedarf
buy-left-over = Übrig
buy-packs-of = { $packs ->
    [one] { $packs } Packung
   *[other] { $packs } Packungen
} zu { $pack }
buy-packs = { $packs ->
    [one] { $packs } Packung
   *[other] { $packs } Packungen
}
buy-rolls = { $packs ->
    [one] { $packs } Rolle
   *[other] { $packs } Rollen
}
buy-supplies = Leim und Oberflächenmittel
buy-supply = Hilfsstoff
buy-coats = Schichten
buy-for = Fläche, alle Schichten
buy-supplies-lead = Packungen sind nach der Ergiebigkeit laut Hersteller gezählt, dazu ein Zehntel mehr.
buy-together = Zusammen: <strong>{ $total }</strong>.
buy-together-without = Zusammen: <strong>{ $total }</strong>, nicht gerechnet { $lines ->
    [one] { $lines } Zeile
   *[other] { $lines } Zeilen
} ohne Preis.
buy-prices = Die Preise stammen vom Autor und ändern sich.
buy-prices-without-supplies = Die Preise stammen vom Autor und ändern sich. Leim, Schleifmittel und Oberflächenmittel sind nicht gerechnet.

## Tools

tools = Werkzeuge
tools-to = Arbeit
tools-tool = Werkzeug
tools-for = Wofür
tools-purpose = { $purpose ->
    [measure] Messen und Anreißen
    [saw] Sägen
    [shape] Hobeln und Feilen
    [drill] Bohren
    [rout] Fräsen
    [join] Zusammenbauen
    [clamp] Leimen und Spannen
    [finish] Schleifen und Oberfläche
    [protect] Schutz
   *[other] Außerdem
}
tools-cutting = Zuschnitt
tools-finishing = Oberfläche

## Cut list

cut-list = Zuschnittliste
cut-list-lead = Fertigmaße. Teile zwischen zwei Linien werden mit einer Einstellung des Parallelanschlags längs geschnitten; schneiden Sie die längsten zuerst.
cut-cut = Anz.
cut-part = Teil
cut-length = Länge
cut-width = Breite
cut-thick = Dicke
cut-bands = Kantenband an { $sides }
cut-from = aus { $count ->
    [one] Platte
   *[other] Platten
} { $numbers }
cut-blank-layers = { $count ->
    [one] { $count } Rohteil
   *[other] { $count } Rohteile
}: aus je { $layers } Lagen verleimen, dann auf Maß schneiden
cut-blank-band = auf dieses Maß sägen, dann Kantenband aufkleben
cut-blank-lumber = auf dieses Maß sägen, dann hobeln und auf Maß schneiden
cut-blank-trim = mit Übermaß sägen, dann auf Maß schneiden
cut-to-fit = Einpassen
cut-to-fit-lead = Jedes Maß ist für sich gerundet. In diesen Reihen von Teilen ergeben die gedruckten Maße etwas mehr oder weniger als das Maß des Ganzen: Arbeiten Sie im anderen System, oder schneiden Sie das genannte Teil als letztes von allen und passend zu der Öffnung, in die es kommt.
cut-in-a-row = In einer Reihe
cut-as-long-as = So lang wie
cut-figures-make = Summe der Maße
cut-figure-whole = Maß des Ganzen
cut-fit = Einpassen
cut-less-let-in = abzüglich des Eingelassenen
cut-beside-them = { $label } daneben
cut-mark = Kennzeichnen Sie auf jedem Teil gleich nach dem Schnitt den Buchstaben, die Vorderseite und wo oben ist, auf einer Seite, die verdeckt sein wird.

## Cutting layouts

layouts = Zuschnittpläne
layouts-lead = Besäumen Sie zuerst; jeder Schnitt läuft von Kante zu Kante. Führen Sie alle Schnitte aus, die mit einer Einstellung möglich sind, bevor Sie diese verändern: An den Schnitten steht die Nummer der Einstellung.
layouts-notice = Eine Säge reißt die Fläche aus, an der ihre Zähne das Holz verlassen. Tischkreissäge, Kapp- und Gehrungssäge, Handsäge: bessere Seite nach oben. Handkreissäge: bessere Seite nach unten.
layouts-on-hand = { $count ->
    [one] { $count } vorhandenes Reststück
   *[other] { $count } vorhandene Reststücke
}
layouts-nothing-bought = { $stock }; nichts wird gekauft.
layouts-at-least-cost = { $stock }, { $cost }; bei jeder Einteilung sind mindestens { $least } nötig.
layouts-alone = Nur aus { $size }: { $count }, { $cost }.
layouts-at-least = { $stock }; mindestens { $least ->
    [one] { $least } ist
   *[other] { $least } sind
} nötig.
layouts-one = { $form ->
    [sheet] Platte
    [board] Brett
   *[bar] Stab
} { $number } von { $count }
layouts-alike = { $form ->
    [sheet] Platten
    [board] Bretter
   *[bar] Stäbe
} { $number } bis { $last } von { $count }, gleich geschnitten
layouts-from-hand = Vorhandenes Reststück, { $size }
layouts-kerf = { $size }; Schnittfuge { $kerf }
layouts-trim-edges = { $trim } von jeder Kante abschneiden
layouts-trim-ends = { $trim } von beiden Enden abschneiden
layouts-figure = Zuschnittplan { $number } für { $title }: { $parts }
layouts-caption = Der Doppelpfeil zeigt die Faserrichtung. Graue Teile werden ausgeschnitten; punktierte Linien zeigen, was zuerst abgeschnitten wird.
layouts-gives = Ergibt { $parts }.
layouts-each-gives = Ergibt jeweils { $parts }.
layouts-grain-runs = Die Maserung läuft über { $parts } durch; diese Teile liegen in dieser Reihenfolge nebeneinander. Kennzeichnen Sie das, bevor Sie die Teile trennen.
layouts-rip = Längsschnitt, Parallelanschlag auf { $at }: { $cuts ->
    [one] { $cuts } Schnitt
   *[other] { $cuts } Schnitte
}
layouts-crosscut = Querschnitt, Längenanschlag auf { $at }: { $cuts ->
    [one] { $cuts } Schnitt
   *[other] { $cuts } Schnitte
}
layouts-left-over = Übrig: { $offcuts }.

## Part drawings

parts = Teilzeichnungen
parts-lead = Für jedes Teil, das mehr braucht als seine drei Maße. Zahlen in Kästchen stehen in der Tabelle unter der jeweiligen Zeichnung; Lagen werden vom Fuß aus gemessen, dem linken Ende, und von der anderen Seite, die die Tabelle nennt. Es gelten die Maße, nicht die Zeichnung.
parts-drawn = { $pieces } wie gezeichnet
parts-drawn-and-mirrored = { $pieces } wie gezeichnet, { $mirrored } spiegelbildlich
parts-figure = Zeichnung von { $title } { $label } mit Maßen; die Bearbeitungen stehen in der Tabelle
parts-section-figure = Schnitt { $letter } durch { $title } { $label }
parts-template = Eine Schablone in Originalgröße für die { $side ->
    [foot] Fußseite
    [head] Kopfseite
    [near] Nahkante
    [far] Fernkante
    [back] Rückseite
   *[face] Vorderseite
} steht am Ende des Plans.
parts-number = Nr.
parts-cut = Bearbeitung
parts-size = Ø, Maße
parts-depth = Tiefe
parts-from = Von
parts-through = durchgehend
parts-pocket-holes = { $count ->
    [one] Taschenbohrung
   *[other] { $count } Taschenbohrungen
} in der { $side }, Austritt an der { $out }, Vorbohrung { $pilot }
parts-edge-shape = { $kind ->
    [round-over] Abrundung
   *[chamfer] Fase
} zwischen { $one } und { $other }
parts-notches = { $count ->
    [one] Ausklinkung
   *[other] { $count } Ausklinkungen
}
parts-end-cut = { $kind ->
    [mitre] Gehrung
   *[bevel] Schrägschnitt
} an der { $side }, { $angle } gegenüber dem rechten Winkel, volles Maß an der { $long }
parts-taper = Verjüngung der { $side }, am stärksten an der { $most }, { $angle }
parts-spline-slot = Nut für eine Feder in der Schräge der { $side }, Mitte { $inner } von deren innerer Kante
parts-spline-slot-frame = Nut für eine Feder längs der Schräge der { $side }, in der Mitte der Dicke
parts-tenon = Zapfen in der Mitte der { $side }, { $length } lang
parts-cuts = { $kind ->
    [hole] { $count ->
        [one] Bohrung
       *[other] { $count } Bohrungen
    }
    [countersunk-hole] { $count ->
        [one] Senkbohrung
       *[other] { $count } Senkbohrungen
    }
    [dado] { $count ->
        [one] Quernut
       *[other] { $count } Quernuten
    }
    [groove] { $count ->
        [one] Längsnut
       *[other] { $count } Längsnuten
    }
    [rabbet] { $count ->
        [one] Falz
       *[other] { $count } Falze
    }
    [mortise] { $count ->
        [one] Zapfenloch
       *[other] { $count } Zapfenlöcher
    }
    [lap] { $count ->
        [one] Überblattung
       *[other] { $count } Überblattungen
    }
   *[recess] { $count ->
        [one] Aussparung
       *[other] { $count } Aussparungen
    }
} in der { $side }
parts-mouth = { $cut }, gesenkt auf { $mouth }
parts-mouth-deep = { $cut }, Flachsenkung { $mouth }, { $depth } tief
parts-grid-row = { $cut }, { $across } mal { $along }, Teilung { $pitch }; die erste:
parts-grid = { $cut }, { $across } mal { $along }, Teilung { $pitch } mal { $other-pitch }; die erste:
parts-grid-proof = Raster { $numbers }: diagonal von Eckbohrung zu Eckbohrung { $diagonal }, in beiden Richtungen.
parts-grid-proof-triangle = Raster { $numbers }: diagonal von Eckbohrung zu Eckbohrung { $diagonal }, in beiden Richtungen. Um den rechten Winkel zu prüfen, zählen Sie von einer Eckbohrung aus { $steps } Bohrungen an der einen Kante weiter und { $other-steps } an der anderen ({ $leg } und { $other-leg }): Zwischen diesen beiden Bohrungen sind es { $long }.
parts-outline = Umriss, von Fuß und Nahkante aus: { $corners }.
parts-arc-to = Bogen mit Radius { $radius } bis { $place }
parts-setting-out = Anreißen von Raster { $numbers } in { $title } { $label }
parts-setting-out-figure = Anreißzeichnung von Raster { $numbers } in { $title } { $label }
parts-setting-out-lead = Reißen Sie die erste Reihe und die erste Spalte von den beiden dick gezeichneten Kanten aus an, { $one } und { $other }, ohne das Lineal zwischen den Bohrungen zu versetzen. Prüfen Sie dann den rechten Winkel, bevor Sie bohren.
parts-setting-out-triangle = Das Dreieck misst { $steps } mal { $other-steps } Teilungen; seine Seiten verhalten sich wie drei, vier und fünf.
parts-setting-out-square = Das Raster ist rechtwinklig, wenn die lange Seite des Dreiecks { $long } misst und beide Diagonalen des ganzen Rasters { $diagonal } messen.
parts-setting-out-square-alone = Das Raster ist rechtwinklig, wenn die lange Seite des Dreiecks { $long } misst und die andere Diagonale des Rasters ebenso viel.

## Hardware and drilling

hardware = Beschläge
hardware-item = Artikel
hardware-pieces = Anz.
hardware-steps = Schritte
hardware-pilot = Vorbohrung { $size }
hardware-clearance = Durchgangsloch { $size }
hardware-lead = Gezählt nach den Verbindungen des Möbels. Vorbohrungen gelten für Holz mittlerer Härte: Probieren Sie sie zuerst an einem Reststück aus.
drilling = Bohrliste
drilling-lead = Jede Zeile ist ein Bohrer mit einer Einstellung des Tiefenanschlags. Die Lagen stehen in den Teilzeichnungen.
drilling-bit = Bohrer, { $unit } ({ $other })
drilling-depth = Tiefe
drilling-for = Für
drilling-where = Wo
drilling-holes = Löcher
drilling-stepped = gestuft Ø { $size }
drilling-plain = Ø { $size }
drilling-by-jig = nach Bohrlehre
drilling-purpose = { $purpose ->
    [screw] Schrauben, Durchgang
    [bite] Schrauben, Vorbohren
    [dowel] Dübel
    [bolt] Maschinenschrauben, Durchgang
    [insert] Gewindeeinsätze
    [pin] Bodenträger
    [magnet] Magnete
    [pocket] Schrauben in Taschenbohrungen
    [mouth] Flachsenkungen
   *[plain] nach Zeichnung
}
drilling-place = { $part }, { $side }: { $each }
drilling-place-pieces = { $part }, { $side }: { $each } × { $pieces } Stück

## The whole piece

whole = Das ganze Möbel
whole-finished = Das fertige Möbel
whole-finished-figure = Das fertige Möbel von vorn und oben
whole-views = Von vorn, von rechts und von oben
whole-views-figure = Vorderansicht, Seitenansicht und Draufsicht mit Gesamtmaßen
whole-apart = Explosionsdarstellung aller Teile; Buchstaben wie in der { $place }
whole-apart-figure = Explosionsdarstellung aller Teile, jedes mit seinem Buchstaben
whole-cut-list = Zuschnittliste

## Steps

steps = Schritte
steps-lead = { $count ->
    [one] { $count } Schritt
   *[other] { $count } Schritte
}. Halten Sie die Reihenfolge ein: Lesen Sie einen Schritt bis zum Ende und legen Sie bereit, was er braucht, bevor Sie beginnen, und haken Sie seine Prüfpunkte ab, bevor Sie weitermachen.
steps-lead-time = { $count ->
    [one] { $count } Schritt
   *[other] { $count } Schritte
}, etwa { $time }. Halten Sie die Reihenfolge ein: Lesen Sie einen Schritt bis zum Ende und legen Sie bereit, was er braucht, bevor Sie beginnen, und haken Sie seine Prüfpunkte ab, bevor Sie weitermachen.
step-title = Schritt { $number }: { $title }
step-make-alike = Fertigen Sie { $count } Stück, alle gleich. Das Bild zeigt eines; Tabelle und Zeit gelten für alle.
step-make-mirrored = Fertigen Sie { $count } Stück, davon { $mirrored } spiegelbildlich. Das Bild zeigt eines; Tabelle und Zeit gelten für alle.
step-make-one = Bauen Sie diese Baugruppe für sich zusammen, bevor sie in das Ganze kommt.
step-for-this = Für diesen Schritt
step-take = Anz.
step-whole-from = { $title } aus Schritt { $step }
step-time = <strong>Zeit:</strong> { $time }.
step-supplies = <strong>Hilfsstoffe:</strong> { $supplies }.
step-tools = <strong>Werkzeuge:</strong> { $tools }.
step-check = Prüfen Sie, bevor Sie weitermachen:

## Final checks

final = Endprüfung
final-lead = Messen und probieren Sie, bevor das Möbel in Gebrauch kommt:
final-size = Breite × Tiefe × Höhe: { $size }. Einige Millimeter mehr oder weniger im Ganzen sind kein Fehler, Schiefstand ist einer.
final-stands = Das Möbel steht oder hängt, ohne zu wackeln, und die Diagonalen seiner offenen Seiten sind gleich.
final-joints = Jede Verbindung ist geschlossen, und wo Hände hinkommen, ist weder Leim noch Splitter noch scharfe Kante.
final-screws = Jede Schraube ist fest, und ihr Kopf steht nicht vor.
final-left-over = Aus ganzen Packungen übrig: { $items }. Ist mehr übrig, wurde etwas vergessen.
final-removable = { $part }: von Hand herausnehmbar und wieder einsetzbar.
final-load = { $part }: Traglast { $mass }; belasten Sie nach und nach.
final-load-middle = { $part }: Traglast { $mass } in der Mitte; belasten Sie nach und nach.
final-bends = Die Durchbiegung beträgt anfangs etwa { $first }; nach Jahren unter der Last darf sie höchstens { $limit } betragen.
final-nothing-gives = Nach und nach bis zur vorgesehenen Last belastet, biegt sich nichts sichtbar durch, reißt nichts und gibt nichts nach.
final-meant = So gewollt
final-meant-lead = Die Prüfung dieses Plans fragt nach dem Folgenden; der Autor hat entschieden.

## Figures of the piece

figures = Das Möbel in Zahlen
figures-lead = Gerechnet mit Mittelwerten für fehlerfreies Holz, ohne Beschläge. Ihre Bretter weichen davon ab; die Größenordnung nicht.
figures-loads = Was es trägt
figures-piece = Teil
figures-load = Last
figures-span = Stützweite, { $unit } ({ $other })
figures-at-first = Biegung anfangs
figures-lasting = Nach Jahren
figures-limit = Höchstens
figures-in-middle = { $mass }, in der Mitte
figures-supported = liegt ganz auf dem auf, was darunter ist
figures-no-species = nicht berechnet: Holzart nicht angegeben
figures-movement = Wie das Holz übers Jahr arbeitet
figures-across = Quer zur Faser, { $unit }
figures-moves = Arbeitet um
figures-moisture = Bei Holzfeuchten zwischen { $dry } % und { $damp } %. Längs der Faser arbeitet Holz kaum.
figures-mass = Was es wiegt
figures-one = Je Stück
figures-all = Alle
figures-weighs = Das Ganze wiegt etwa <strong>{ $mass }</strong>.
figures-centre = Sein Schwerpunkt liegt { $left } von links, { $front } von vorn und { $high } hoch.
figures-standing = Leer und frei stehend kippt es am leichtesten nach { $towards }, von selbst ab { $degrees }° Neigung; ein Zug von { $pull } an der oberen Vorderkante kippt es nach vorn.
figures-surface = Alle Oberflächen zusammen messen { $surface }; danach wird Oberflächenmittel gekauft.
figures-surface-glue = Alle Oberflächen zusammen messen { $surface }; danach wird Oberflächenmittel gekauft. Die Leimflächen messen { $glue }.

## Options

options = Varianten
options-lead = Dieser Plan gilt für je eine Auswahl. Was eine andere Auswahl ändert, steht unten, wobei alle übrigen bleiben, wie sie sind; die abweichenden Schritte stehen in dem Plan, der für diese Auswahl erstellt wird.
options-instead = Stattdessen: { $title }
options-same = Ändert kein Teil, keinen Einkauf und kein Werkzeug.
options-left-out = entfällt ({ $before })
options-more-of = zusätzlich { $after }, aus { $material }
options-otherwise = { $after }, anders geschnitten oder gebohrt
options-replaced = { $after } statt { $before }
options-replaced-of = { $after } aus { $material } statt { $before }
options-hardware-more = { $after } mehr
options-hardware-none = keine statt { $before }
options-hardware = { $after } statt { $before }
options-more-tools = Zusätzlich nötige Werkzeuge: { $tools }.
options-fewer-tools = Nicht mehr nötige Werkzeuge: { $tools }.
options-cost-more = Material und Beschläge: { $by } mehr.
options-cost-less = Material und Beschläge: { $by } weniger.
options-mass-more = Masse: etwa { $by } mehr.
options-mass-less = Masse: etwa { $by } weniger.
options-time-more = Zeit: { $by } mehr.
options-time-less = Zeit: { $by } weniger.

## Revisions

revisions = Revisionen
revisions-mark = Index
revisions-date = Datum
revisions-note = Änderung

## Terms and measures

terms = Begriffe und Maße
term-blank = Rohteil
term-blank-is = Ein Stück, größer zugeschnitten als das fertige Teil und noch auf Maß zu schneiden.
term-crosscut = Querschnitt, Längsschnitt
term-crosscut-is = Ein Schnitt quer zur Länge einer Platte oder eines Bretts und einer längs dazu.
term-dado = Quernut, Längsnut
term-dado-is = Eine Nut quer zur Faser und eine längs der Faser.
term-face = Vorderseite, Rückseite
term-face-is = Die beiden Breitseiten eines Teils; die Vorderseite ist die, von der der Plan misst.
term-grain = Faserrichtung
term-grain-is = Die Richtung der Holzfasern; bei einer Platte die ihrer Decklagen.
term-kerf = Schnittfuge
term-kerf-is = Die Breite des Sägeschnitts, die als Späne verloren geht.
term-mirrored = Spiegelbildlich
term-mirrored-is = Als Spiegelbild der Zeichnung gefertigt, wie linke und rechte Hand.
term-pilot = Vorbohrung
term-pilot-is = Ein Loch, in dem eine Schraube greift, ohne das Holz zu spalten.
term-rabbet = Falz
term-rabbet-is = Eine Stufe entlang einer Kante.
terms-units = 1 in sind genau 25,4 mm. 1 ft sind 12 in. 1 lb sind 0,4536 kg.

## The sheet for those who own an earlier plan

errata-title = Berichtigungen: { $title }
errata-running = { $title }: { $before } zu { $after }
errata-revision = Revision { $mark } vom { $date }
errata-no-revision = Plan ohne Revision
errata-lead = Für alle, die den früheren Plan besitzen ({ $before }): An seine Stelle tritt { $after }. Bewahren Sie dieses Blatt bei Ihrem Plan auf; wo beide voneinander abweichen, gilt dieses Blatt.
errata-same = Was gebaut wird und wie, ist in beiden gleich. Es gibt nichts zu tun.
errata-why = Was sich geändert hat und warum
errata-new-hazards = <strong>Neu im Kapitel „Zuerst lesen“: { $hazards }.</strong> Lesen Sie es im neuen Plan, bevor Sie weitermachen.
errata-cut-already = Schon zugeschnittene Teile
errata-all-serve = Alle Teile sind verwendbar, wie sie sind.
errata-others-serve = Jedes Teil, das hier nicht genannt ist, ist verwendbar, wie es ist.
errata-fate = { $fate ->
    [remake] Neu anfertigen
    [trim] Auf Maß schneiden
    [rework] Weiter schneiden oder bohren
    [new] Neue Teile
    [no_longer] Nicht mehr nötig
   *[serves] Verwendbar, wie sie sind
}
errata-advice = { $fate ->
    [remake] Was nach dem früheren Plan zugeschnitten wurde, ist nicht verwendbar: Legen Sie es für anderes beiseite.
    [trim] Was nach dem früheren Plan zugeschnitten wurde, ist größer: Schneiden Sie am Kopf und an der Fernkante ab, damit Bohrungen und Nuten ihren Abstand zu den Seiten behalten, von denen aus sie gemessen sind, und prüfen Sie das Teil dann anhand seiner neuen Zeichnung.
    [rework] Was nach dem früheren Plan zugeschnitten wurde, ist verwendbar; die neue Zeichnung zeigt, was noch zu schneiden oder zu bohren ist.
    [new] Der frühere Plan enthielt diese Teile nicht.
    [no_longer] Der neue Plan kommt ohne diese Teile aus.
   *[serves] Bei diesen Teilen ist nur Name, Buchstabe oder Anzahl anders als zuvor.
}
errata-other = Was anders ist
errata-was-called = zuvor { $part }
errata-material = aus { $after }, zuvor aus { $before }
errata-grain = { $after }, zuvor { $before }
errata-pieces = { $after } Stück, zuvor { $before }
errata-cut-otherwise = andere Bohrungen, Nuten oder Form: siehe Zeichnung
errata-of = aus { $material }
errata-was = zuvor
errata-goods = Zu kaufen und übrig
errata-buy-more = Kaufen Sie { $by } mehr: { $title } (insgesamt { $count }).
errata-left-over = { $by } übrig: { $title } ({ $count } werden verwendet).
errata-cost = Material und Beschläge kosten { $after }, zuvor { $before }.
errata-mass = Das Möbel wiegt etwa { $after }, zuvor { $before }.
errata-joints = Verbindungen und Lagen
errata-joined = { $one } und { $other }: { $after }
errata-not-joined = { $one } und { $other }: nicht mehr verbunden
errata-joined-was = { $joined }, zuvor { $before }.
errata-joined-new = { $joined }, zuvor nicht verbunden.
joint = { $kind ->
    [screws] Schrauben
    [pocket_screws] Schrauben in Taschenbohrungen
    [dado] Quernut
    [groove] Längsnut
    [rabbet] Falz
    [dowels] Dübel
    [loose_tenons] Fremdzapfen
    [mortise_and_tenon] Zapfen und Zapfenloch
    [half_lap] Überblattung
    [box_joint] Fingerzinken
    [mitre] Gehrung
    [tongue_and_groove] Nut und Feder
    [lamination] Aufdopplung
    [bolts] Maschinenschrauben
    [nails] Nägel
    [hinges] Scharniere
    [runners] Auszüge
    [strips] Führungsleisten
    [shelf_pins] Bodenträger
    [magnets] Magnete
   *[glue] Leimfuge
}
joint-with = { $joint } mit { $hardware }
joint-glued = { $joint }, verleimt
joint-dry = { $joint }, unverleimt
errata-moved = { $part }: { $ways }.
errata-farther = { $by } weiter nach { $towards }
errata-steps = Schritte mit anderem Text
errata-was-step = { $title } (zuvor Schritt { $number })
errata-step-out = Dieser Schritt entfällt.
errata-step-new = Dieser Schritt ist neu: Folgen Sie dem neuen Plan.
errata-step-called = Er hieß „{ $title }“.
errata-comes-in = Kommt hier hinzu: { $parts }.
errata-no-longer-in = Kommt nicht mehr hinzu: { $parts }.
errata-text-was = Zuvor: { $text }
errata-text-now = Jetzt: { $text }
errata-choices = Neu zur Auswahl
errata-fewer-choices = Nicht mehr zur Auswahl: { $choices }.
errata-fewer-hazards = Nicht mehr im Kapitel „Zuerst lesen“: { $hazards }.

## The page of a library

library = Bibliothek
library-version = Version { $version }
library-language = Sprache { $language }
library-lead = Die Namen in Fettschrift importiert ein Plan. Die Zeichnungen sind mit den Werten der letzten Spalte erstellt; ein Plan gibt seine eigenen an.
library-wholes = Baugruppen
library-as-drawn = wie gezeichnet { $size }
library-overview-figure = { $title }, fertig
library-exploded-figure = { $title }, Explosionsdarstellung
library-given = Angabe
library-kind = Art
library-preset = Vorgabe
library-range = Von … bis
library-shown = Gezeichnet
library-part = Teil
library-pieces = Anz.
library-from = Aus
library-materials = Materialien
library-name = Name
library-called = Heißt im Plan
library-thick = Dicke
library-figures-of = Werte von
library-hardware = Beschläge
library-supplies = Leim und Oberflächenmittel

## Full-size templates

full-size = Schablonen in Originalgröße
full-size-lead = Was eine Rundung oder viele Bohrungen hat, ist mit Papier schneller angerissen als mit dem Maßstab. Kleben Sie diese Blätter auf das Holz und sägen Sie an der dicken Linie entlang.
full-size-on-screen = Die folgenden Blätter sind keine Bildschirmseiten: Drucken Sie sie auf Papier in der Größe, die in der Tabelle steht.
full-size-caution = Drucken Sie mit 100 %, ohne „An Seite anpassen“, und messen Sie vor dem Sägen auf jedem Blatt das Quadrat nach: 100 mm das durchgezogene, 4 in das gestrichelte. Ein Druck, der zwei Prozent zu klein ist, ergibt ein Teil, das nicht passt.
full-size-print = Drucken Sie die Blätter mit 100 % („tatsächliche Größe“).
full-size-measure = Messen Sie das Quadrat auf jedem Blatt in beiden Richtungen. Stimmt eines nicht, drucken Sie dieses Blatt noch einmal.
full-size-join = Bei mehreren Blättern: Schneiden Sie eines an seiner Strichlinie ab, legen Sie es so auf das nächste, dass sich Ringe und Kreuze decken, und kleben Sie es fest. Die Übersicht am Fuß zeigt, wohin ein Blatt gehört; dort durchgekreuzte Blätter sind leer und nicht gedruckt.
full-size-paste = Kleben Sie das Papier so auf das Holz, dass die Faser läuft, wie der Pfeil zeigt, stechen Sie die Mitten der Bohrungen durch und sägen Sie an der dicken Linie entlang. Dünne Linien sind Kanten von Ausnehmungen, Strichpunktlinien die Mitten des Teils.
full-size-part = Teil
full-size-side = Seite
full-size-size = Maße
full-size-sheets = Blätter
full-size-one-sheet = ein Blatt { $paper }
full-size-sheets-of = { $count ->
    [one] { $count } Blatt { $paper }
   *[other] { $count } Blatt { $paper }
}: { $rows } × { $columns }
full-size-left-out = ohne { $count } { $count ->
    [one] leeres
   *[other] leere
}
full-size-of = Schablone für { $title } { $label }, { $side ->
    [foot] Fußseite
    [head] Kopfseite
    [near] Nahkante
    [far] Fernkante
    [back] Rückseite
   *[face] Vorderseite
}
full-size-figure = Schablone in Originalgröße für { $title } { $label }
full-size-figure-sheet = Schablone in Originalgröße für { $title } { $label }, Reihe { $row }, Spalte { $column }

## Plain words: what the plan says of hazards
## A place `mass` holds a figure with its unit in both systems, `small` and `planed` parts, every other one a length.

statement = Dieser Plan ist eine allgemeine Information. Lesen und befolgen Sie die Anleitung jedes Werkzeugs, Klebstoffs und Oberflächenmittels sowie die Vorschriften und das Baurecht an Ihrem Ort. Schutzvorrichtungen sind nur der Deutlichkeit halber abgenommen dargestellt. Arbeiten an Elektrik, Gas, Tragwerk oder Brandabschottung gehören in die Hand einer zugelassenen Fachkraft. Die Prüfungen von Festigkeit und Standsicherheit beruhen hier auf Mittelwerten für Holz; prüfen Sie das fertige Möbel vor dem Gebrauch, und verwenden Sie es nicht für Lasten, Höhen oder Benutzer, die der Plan nicht nennt.

caution-angled-cuts = schräg gestellte Säge
caution-angled-cuts-hazard = Werkstück, das am Anschlag entlangwandert, und geneigtes Sägeblatt unter der Hand.
caution-angled-cuts-consequence = Das Sägeblatt erreicht die Hand, oder es erfasst die Spitze und schleudert sie weg.
caution-angled-cuts-avoidance = Spannen Sie das Werkstück am Anschlag oder am Gehrungsanschlag fest; halten Sie beide Hände weit weg, auf der Seite, die der Neigung abgewandt ist. Prüfen Sie den Weg des Sägeblatts bei stromloser Maschine. Klemmen Sie den Abschnitt nie zwischen Sägeblatt und Anschlag ein, und warten Sie, bis das Sägeblatt steht, bevor Sie ihn wegnehmen.
caution-childrens-use = Benutzung durch Kinder
caution-childrens-use-hazard = Kinder klettern, stecken Dinge in den Mund und bleiben stecken.
caution-childrens-use-consequence = Sie können ersticken, mit Kopf oder Fingern eingeklemmt werden oder stürzen.
caution-childrens-use-avoidance = Lassen Sie für Finger nur Spalte unter { $narrow } oder von { $wide } bis { $widest } zu, und keine Öffnung von { $small } bis { $large }, in der ein Kopf stecken bleibt. Runden Sie alle Kanten ab, lassen Sie nichts Kleines daran, das sich löst, und verwenden Sie ein Oberflächenmittel, das sein Hersteller als unbedenklich für Kinderartikel angibt. Die Vorschriften an Ihrem Ort gehen vor.
caution-chiselling = Stechbeitel
caution-chiselling-hazard = Ein Stechbeitel rutscht aus dem Schnitt.
caution-chiselling-consequence = Er dringt tief in das ein, was vor ihm ist, meist eine Hand.
caution-chiselling-avoidance = Spannen Sie das Werkstück fest. Halten Sie beide Hände hinter der Schneide und arbeiten Sie vom Körper weg. Halten Sie die Schneide scharf: Eine stumpfe braucht Kraft und rutscht ab.
caution-crosscutting-boards = Säge zum Ablängen
caution-crosscutting-boards-hazard = Hand im Weg der Säge beim Ablängen von Brettern.
caution-crosscutting-boards-consequence = Das Sägeblatt schneidet bis auf den Knochen, und ein loser Abschnitt wird weggeschleudert.
caution-crosscutting-boards-avoidance = Halten Sie das Brett am Anschlag, beide Hände weit weg und nie überkreuzt. Spannen Sie kurze Stücke fest. Ist der Schnitt durch, warten Sie, bis das Sägeblatt steht, bevor Sie es anheben.
caution-curves = Stichsäge oder Bandsäge
caution-curves-hazard = Finger nahe am Sägeblatt beim Sägen von Umrissen, Ausklinkungen, Verjüngungen und Ecken.
caution-curves-consequence = Das Sägeblatt schneidet tief, und ein verbogenes bricht.
caution-curves-avoidance = Spannen Sie das Werkstück für die Stichsäge fest und halten Sie die andere Hand von seiner Unterseite fern. Stellen Sie an der Bandsäge die Blattführung dicht über das Werkstück, machen Sie zuerst Entlastungsschnitte, und fahren Sie nicht aus einer Kurve zurück, solange das Sägeblatt läuft.
caution-drilling = Bohren
caution-drilling-hazard = Werkstück, das sich mit dem Bohrer dreht, und fliegende Späne.
caution-drilling-consequence = Hände und Handgelenke werden getroffen oder geschnitten, Augen verletzt.
caution-drilling-avoidance = Spannen Sie das Werkstück auf ein Unterlagebrett, in das der Bohrer laufen darf, und stellen Sie einen Tiefenanschlag ein. Tragen Sie keine Handschuhe, weiten Ärmel oder offenen Haare in der Nähe eines drehenden Bohrers.
caution-driving-screws = Schrauben eindrehen
caution-driving-screws-hazard = Abrutschen des Bits und Schraubenspitze dort, wo eine Hand die Teile hält.
caution-driving-screws-consequence = Spitze oder Bit dringt in die Hand ein.
caution-driving-screws-avoidance = Spannen Sie die Teile fest, statt sie zu halten. Halten Sie die Hände von dort fern, wohin die Spitzen gehen. Bohren Sie die Löcher, die der Plan angibt, drücken Sie gerade auf die Schraube, und stellen Sie die Drehmomentkupplung niedrig ein.
caution-dust = Staub
caution-dust-hazard = Feiner Staub vom Sägen, Fräsen und Schleifen.
caution-dust-consequence = Über Jahre eingeatmet, schadet er der Lunge und kann Krebs verursachen; in der Luft oder im Staubbeutel kann er brennen.
caution-dust-avoidance = Saugen Sie an der Maschine ab, tragen Sie eine dicht sitzende Maske, schleifen Sie im Freien oder mit Absaugung. Saugen Sie auf; nicht fegen und nicht abblasen. Leeren Sie den Staubbehälter fern von Funken. Schleifen Sie nie alte Anstriche oder behandeltes Holz unbekannter Art.
caution-finishing = Oberflächenmittel
caution-finishing-hazard = Dämpfe von Oberflächenmitteln brennen und schaden der Lunge.
caution-finishing-consequence = Ein Funke oder eine Zündflamme entzündet sie.
caution-finishing-avoidance = Lüften Sie den Raum, und halten Sie Flammen und Funken fern. Befolgen Sie das Etikett, auch bei allem, was Sie wegwerfen.
caution-finishing-oil-hazard = Lappen mit Öl erhitzen sich von selbst, und Dämpfe von Oberflächenmitteln brennen.
caution-finishing-oil-consequence = Ein Haufen öliger Lappen kann binnen Stunden in Flammen stehen.
caution-finishing-oil-avoidance = Breiten Sie gebrauchte Lappen im Freien flach aus, bis sie hart sind, oder bewahren Sie sie unter Wasser in einem geschlossenen Metallbehälter auf. Lüften Sie den Raum, und halten Sie Flammen und Funken fern. Befolgen Sie das Etikett.
caution-food-contact = Kontakt mit Lebensmitteln
caution-food-contact-hazard = Nicht jedes Holz, nicht jeder Leim und nicht jedes Oberflächenmittel ist für Lebensmittel geeignet.
caution-food-contact-consequence = Geschmack, Flecken oder schädliche Spuren gehen in die Lebensmittel über.
caution-food-contact-avoidance = Nehmen Sie feinporiges Holz sowie Leim und Oberflächenmittel, die nach Angabe der Hersteller ausgehärtet für Lebensmittel geeignet sind. Lassen Sie beide so lange aushärten, wie das Etikett sagt.
caution-gluing = Leim und Schraubzwingen
caution-gluing-hazard = Klebstoff auf der Haut und in den Augen, und Finger unter Schraubzwingen.
caution-gluing-consequence = Manche Klebstoffe reizen, lösen Allergien aus oder verkleben die Haut; Schraubzwingen quetschen.
caution-gluing-avoidance = Lesen Sie das Etikett, lüften Sie den Raum, und tragen Sie Handschuhe bei Epoxid-, Polyurethan- und Sekundenklebstoff. Bauen Sie zuerst alles trocken und mit Schraubzwingen zusammen.
caution-heavy-piece = Gewicht des Möbels
caution-heavy-piece-hazard = Das fertige Möbel wiegt etwa { $mass }.
caution-heavy-piece-consequence = Es überlastet den Rücken und quetscht Füße und Finger.
caution-heavy-piece-avoidance = Wenden, heben und tragen Sie es zu zweit, und bauen Sie es nahe an seinem späteren Standort.
caution-heavy-sheet = schwere Platten
caution-heavy-sheet-hazard = Eine ganze Platte wiegt etwa { $mass }.
caution-heavy-sheet-consequence = Sie überlastet den Rücken, quetscht Finger und kippt um, wenn sie an einer Wand lehnt.
caution-heavy-sheet-avoidance = Tragen Sie die Platte zu zweit oder mit einem Plattenträger, oder lassen Sie die ersten Schnitte dort machen, wo Sie kaufen. Lagern Sie Platten flach. Ziehen Sie Tragehandschuhe aus, bevor Sie sägen.
caution-large-bits = große Bohrer
caution-large-bits-hazard = Bohrer bis { $largest } drehen das Werkstück mit.
caution-large-bits-consequence = Ein Bohrer, der hakt, bricht ein Handgelenk oder schleudert das Werkstück weg.
caution-large-bits-avoidance = Verwenden Sie einen Bohrständer oder eine Bohrmaschine mit Zusatzhandgriff, niedrige Drehzahl und nur festgespannte Werkstücke. Unterlegen Sie das Werkstück, wo der Bohrer austritt, und heben Sie den Bohrer oft an, um Späne auszuräumen.
caution-magnets = starke Magnete
caution-magnets-hazard = Kleine starke Magnete, die sich lösen, werden von Kindern verschluckt.
caution-magnets-consequence = Zwei davon klemmen den Darm zwischen sich ein; das kann töten.
caution-magnets-avoidance = Kleben Sie jeden Magneten mit Epoxidharz ein, tiefer als die Oberfläche, und ziehen Sie an ihm, sobald der Klebstoff hart ist. Halten Sie übrige Magnete von Kindern und von Herzschrittmachern fern.
caution-nailing = Nägel
caution-nailing-hazard = Ein Nagel wird von der Faser abgelenkt und tritt aus, wo er nicht soll.
caution-nailing-consequence = Er geht durch die Hand, die das Werkstück hält.
caution-nailing-avoidance = Spannen Sie das Werkstück fest, statt es zu halten; keine Hand näher als { $hand-clear } an der Mündung eines Naglers. Verwenden Sie dessen Einzelauslösung, richten Sie ihn stets auf das Werkstück, und trennen Sie Druckluft oder Akku, bevor Sie eine Störung beheben.
caution-narrow-strips = schmale Streifen am Sägeblatt
caution-narrow-strips-hazard = Längsschnitte von Streifen bis herab zu { $narrowest } Breite.
caution-narrow-strips-consequence = Die Hand, die einen schmalen Streifen führt, wird in das Sägeblatt gezogen.
caution-narrow-strips-avoidance = Verwenden Sie einen Schiebestock oder ein Schiebeholz, wo eine Hand dem Sägeblatt näher als { $hand-from-blade } käme. Lassen Sie den schmalen Streifen möglichst auf der vom Anschlag abgewandten Seite abfallen, oder spannen Sie eine Führungsschiene auf und verwenden Sie eine Handkreissäge. Stehen Sie nicht in der Linie des Streifens.
caution-planing = Dickenhobel
caution-planing-hazard = Messer des Dickenhobels beim Abhobeln auf Dicke: { $planed }.
caution-planing-consequence = Kurzes Holz wird herausgeschleudert oder eingezogen, und die Hand mit ihm.
caution-planing-avoidance = Hobeln Sie kein Stück, das kürzer ist als { $shortest } oder als der Hersteller zulässt: Hobeln Sie zuerst das ganze Brett, und schneiden Sie es danach auf. Verwenden Sie Schiebehölzer, nehmen Sie dünne Späne ab, und achten Sie vorher auf Nägel und lose Äste.
caution-pocket-holes = Bohrer für Taschenbohrungen
caution-pocket-holes-hazard = Der Stufenbohrer hakt im schrägen Loch und kommt nahe an das Ende des Teils.
caution-pocket-holes-consequence = Die Bohrlehre verdreht sich in der Hand, und der Bohrer schneidet in das, was hinter dem Teil liegt.
caution-pocket-holes-avoidance = Spannen Sie Bohrlehre und Teil zusammen fest. Stellen Sie den Stellring zuerst an einem Reststück gleicher Dicke ein. Halten Sie die Hände von dem Ende fern, an dem die Schraube austreten wird, und bringen Sie den Bohrer auf volle Drehzahl, bevor er das Holz berührt.
caution-routing = Oberfräse
caution-routing-hazard = Der Fräser hakt, wenn er in falscher Richtung oder zu tief geführt wird.
caution-routing-consequence = Die Maschine springt, der Fräser bricht oder schneidet die Hand, die das Werkstück hält.
caution-routing-avoidance = Spannen Sie Werkstück und Anschlag fest. Führen Sie die Maschine gegen die Drehrichtung des Fräsers, in Durchgängen von höchstens { $deepest-pass }. Stecken Sie den Schaft zu drei Vierteln seiner Länge in die Spannzange, und ziehen Sie diese gut fest; lassen Sie große Fräser langsam laufen. Ziehen Sie den Netzstecker, bevor Sie einen Fräser wechseln.
caution-sawing-sheets = Sägeblatt und Rückschlag
caution-sawing-sheets-hazard = Rückschlag und Berührung mit dem Sägeblatt beim Sägen von Platten.
caution-sawing-sheets-consequence = Eine Platte, die das Sägeblatt klemmt, wird auf Sie geschleudert; ein Sägeblatt trennt augenblicklich Finger ab.
caution-sawing-sheets-avoidance = Lassen Sie Spaltkeil und Schutzhaube montiert. Stützen Sie beide Seiten so ab, dass sich die Schnittfuge nicht schließen kann; stellen Sie das Sägeblatt etwas tiefer ein, als die Platte dick ist. Stehen Sie neben der Linie des Sägeblatts, verwenden Sie einen Schiebestock, und warten Sie, bis das Sägeblatt steht, bevor Sie etwas wegräumen.
caution-small-pieces = kleine Werkstücke
caution-small-pieces-hazard = Kleine Werkstücke nahe an einem laufenden Sägeblatt, Bohrer oder Fräser: { $small }.
caution-small-pieces-consequence = Ein kleines Werkstück kippt, wird erfasst und zieht die Hand nach.
caution-small-pieces-avoidance = Bearbeiten Sie Kanten, Nuten und Bohrungen, solange das Stück noch Teil eines längeren Streifens ist, mindestens { $safe-length } lang, und schneiden Sie es zuletzt ab. Spannen Sie den Rest fest, oder halten Sie ihn in einer Vorrichtung, nie mit der Hand.
caution-splines = Schlitze quer durch Gehrungen
caution-splines-hazard = Ein Gehrungsende oder eine Gehrungsecke kippt, während der Schlitz geschnitten wird.
caution-splines-consequence = Das Sägeblatt erfasst das Werkstück, schleudert es weg und nimmt die Hand mit.
caution-splines-avoidance = Schneiden Sie die Schlitze, während Ende oder Ecke in einer Vorrichtung festgespannt ist, die am Anschlag läuft, nie von Hand gehalten. Halten Sie die Finger aus dem Weg des Sägeblatts, auch dort, wo es austritt.
caution-tip-over = Umkippen
caution-tip-over-hazard = Ein Möbel von { $height } Höhe und { $depth } Tiefe kann umkippen.
caution-tip-over-consequence = Umstürzende Möbel töten kleine Kinder, die daran hochklettern oder daran ziehen.
caution-tip-over-avoidance = Befestigen Sie das Möbel an der tragenden Konstruktion der Wand, nicht an der Gipsplatte allein, mit einer für diese Wand gemachten Kippsicherung, bevor etwas hineinkommt. Stellen Sie Schweres nach unten, und Verlockendes nicht obenauf.
caution-wall-fixing = Befestigung an der Wand
caution-wall-fixing-hazard = Befestigung, die die Wand nicht hält, und Kabel und Rohre in ihr.
caution-wall-fixing-consequence = Das Möbel fällt auf jemanden; ein Bohrer im Kabel tötet.
caution-wall-fixing-avoidance = Orten Sie zuerst Ständer, Kabel und Rohre. Verwenden Sie für diese Wand gemachte Befestigungsmittel, die mindestens das Vierfache dessen halten, was daran hängt. Fragen Sie im Zweifel eine zugelassene Fachkraft.
caution-wall-fixing-avoidance-mass = Orten Sie zuerst Ständer, Kabel und Rohre. Verwenden Sie für diese Wand gemachte Befestigungsmittel, die mindestens das Vierfache dessen halten, was daran hängt: allein für das leere Möbel { $mass }. Fragen Sie im Zweifel eine zugelassene Fachkraft.

## Plain words: tools

tool-measuring = Rollbandmaß, Winkel, Anreißmesser und Bleistift
tool-sheet-saw = Tauchsäge mit Führungsschiene oder Tischkreissäge mit Helfer, für Platten
tool-crosscutting = Kapp- und Gehrungssäge oder Handsäge, mit Anschlag für gleiche Längen
tool-ripping = Tischkreissäge oder Bandsäge, zum Längsschnitt auf Breite
tool-angled-saw = Kapp- und Gehrungssäge oder Tischkreissäge mit neigbarem Sägeblatt
tool-tenon-saw = Rückensäge oder Bandsäge mit Parallel- und Längenanschlag
tool-curve-saw = Stichsäge oder Bandsäge
tool-planer = Dickenhobel oder Handhobel
tool-chisel = Scharfer Stechbeitel, zum Nacharbeiten der Brüstungen
tool-files = Raspel oder Feile, für runde Ecken
tool-drill = Bohrmaschine mit Tiefenanschlag
tool-bit = Bohrer, { $diameter }
tool-flat-bit = Forstnerbohrer oder Lochsäge, { $diameter }
tool-countersink = Kegelsenker, 90°
tool-pocket-jig = Bohrlehre für Taschenbohrungen
tool-stepped-bit = Stufenbohrer für Taschenbohrungen, { $diameter }, mit Stellring
tool-router = Oberfräse mit Parallelanschlag
tool-channel-bit = Nutfräser, { $width } breit oder schmaler
tool-mortise-bit = Fräser für Zapfenlöcher, { $width } breit
tool-round-over-bit = Abrundfräser, Radius { $radius }
tool-chamfer-bit = Fasefräser, 45°
tool-flush-saw = Bündigsäge, zum Abschneiden von Holzstopfen
tool-slot-jig = Vorrichtung, die eine Ecke an Tischkreissäge oder Oberfräse hält, zum Schlitzen von Gehrungen
tool-hammer = Hammer und Versenker oder Nagler
tool-spanner = Schraubenschlüssel oder Sechskant-Stiftschlüssel, passend zu den Maschinenschrauben
tool-insert-driver = Eindrehwerkzeug für Gewindeeinsätze
tool-wall-finder = Ortungsgerät für Ständer, Kabel und Rohre
tool-driver = Schraubendreher oder Bohrschrauber mit Drehmomentkupplung
tool-clamps-opening = Schraubzwingen mit Spannweite { $opening } oder mehr
tool-clamps = Schraubzwingen
tool-sanding = Schleifklotz oder Schleifmaschine, Körnung 120 und 180
tool-extraction = Staubabsaugung

## Plain words: what safety signs mean

sign-M002 = Gebrauchsanweisung beachten
sign-M003 = Gehörschutz benutzen
sign-M004 = Augenschutz benutzen
sign-M008 = Fußschutz benutzen
sign-M009 = Handschutz benutzen
sign-M016 = Maske benutzen
sign-P003 = Keine offene Flamme; Feuer, offene Zündquelle und Rauchen verboten
sign-P028 = Benutzen von Handschuhen verboten
sign-W012 = Warnung vor elektrischer Spannung
sign-W024 = Warnung vor Handverletzungen

## Plain words: pages

page-of = Seite { $number } von { $count }
page-info = GUT ZU WISSEN
page-metric-square = Durchgezogenes Quadrat: 100 mm, Teilstriche alle 10 mm
page-inch-square = Gestricheltes Quadrat: 4 in, Teilstriche alle 1⁄2 in
page-scale-advice = Legen Sie ein Lineal von der linken unteren Ecke aus an beide Kanten. Ist der Druck nicht maßgenau, drucken Sie noch einmal mit 100 % („tatsächliche Größe“), und messen Sie in keiner Zeichnung dieses Drucks.

## Plain words: the web edition
## A button says what it does; ticks are the boxes of finished steps, cut parts, goods bought and checks.

web-skip = Zum Plan springen
web-done = Erledigt
web-done-step = Erledigt: { $what }
web-cut = Zugeschnitten: { $what }
web-bought = Gekauft: { $what }
web-changed = Geändert:
web-left-out = Hier ist etwas entfallen.
web-larger = Größer
web-larger-drawing = Größer: { $what }
web-ticks-kept = Häkchen bleiben in diesem Browser gespeichert, für diese Revision des Plans.
web-clear = Alle Häkchen löschen
web-clear-ask = Alle Häkchen dieses Plans löschen?

## Plain words: drawings
## The fields of a title block are those of ISO 7200.

## Plain words: what figures show

figure-size = { $figure }: { $width } breit, { $depth } tief, { $height } hoch
figure-parts = { $figure }: { $parts }
figure-part = { $title } { $label } mit Maßen
figure-setting-out = { $title }: ein Bohrraster, angerissen von { $one } und { $other }
figure-layout = { $size }, aufgeteilt in { $parts }
figure-so-far = der bisherige Stand der Arbeit
figure-step = Schritt { $number }, { $title }: { $what }
figure-comes = { $count ->
    [one] { $part }
   *[other] { $count } × { $part }
} { $way ->
    [left] { $count ->
        [one] kommt von links hinzu
       *[other] kommen von links hinzu
    }
    [right] { $count ->
        [one] kommt von rechts hinzu
       *[other] kommen von rechts hinzu
    }
    [front] { $count ->
        [one] kommt von vorn hinzu
       *[other] kommen von vorn hinzu
    }
    [back] { $count ->
        [one] kommt von hinten hinzu
       *[other] kommen von hinten hinzu
    }
    [top] { $count ->
        [one] kommt von oben hinzu
       *[other] kommen von oben hinzu
    }
    [bottom] { $count ->
        [one] kommt von unten hinzu
       *[other] kommen von unten hinzu
    }
   *[none] { $count ->
        [one] steht an seinem Platz
       *[other] stehen an ihrem Platz
    }
}
figure-joined = , verbunden mit { $others } ({ $joint })

drawing-owner = Gesetzlicher Eigentümer
drawing-document-type = Dokumentenart
drawing-part-drawing = Teilzeichnung
drawing-title = Titel
drawing-identification = Zeichnungsnummer
drawing-created-by = Erstellt durch
drawing-approved-by = Genehmigt durch
drawing-revision = Änd.-Index
drawing-date-of-issue = Ausgabedatum
drawing-sheet = Blatt
drawing-scale = Maßstab { $scale }
drawing-scale-thick = Maßstab { $scale }, { $thickness } dick
drawing-no-scale = Nicht maßstäblich
drawing-no-scale-thick = Nicht maßstäblich, { $thickness } dick
drawing-sign = Sicherheitszeichen { $code }: { $meaning }

## Plain words: full-size templates

template-shown = Originalgröße, { $side } oben.
template-sheet = Blatt { $short }: Reihe { $row } von { $rows }, Spalte { $column } von { $columns }
template-sheet-short = R{ $row } S{ $column }
template-print = Mit 100 % drucken, ohne „An Seite anpassen“. Vor dem Sägen das Quadrat nachmessen.
template-join = Ein Blatt an seiner Strichlinie abschneiden, so auf das nächste legen, dass sich Ringe und Kreuze decken, und ankleben. In der Übersicht durchgekreuzte Blätter sind leer.
template-mirrored = { $mirrored ->
    [one] Ein Stück ist spiegelbildlich: dafür die Schablone umdrehen.
   *[other] { $mirrored } Stück sind spiegelbildlich: dafür die Schablone umdrehen.
}
template-grain = Faserrichtung
