### The words of a plan in English, as Project Fluent writes messages.
###
### What templates print may hold the tags of a line of text (templates/README.md); messages under "Plain
### words" hold words alone. A figure and its unit, and the words "step" and "page" and their number, stand
### together: no-break spaces.

## Figures and lists

# Between whole millimetres and their decimals.
decimal-mark = ,
list-comma = ,{" "}
list-last = {" "}et{" "}
list-more = {" "}et { $more } { $more ->
    [one] autre
   *[other] autres
}
hours = { $hours } h
minutes = { $minutes } min
hours-and-minutes = { $hours } h { $minutes } min
# Month is a number from 1 to 12.
date = { $day ->
    [1] { $day }er
   *[other] { $day }
} { $month ->
    [1] janvier
    [2] février
    [3] mars
    [4] avril
    [5] mai
    [6] juin
    [7] juillet
    [8] août
    [9] septembre
    [10] octobre
    [11] novembre
   *[12] décembre
} { $year }
# Form is sheet, board or bar.
stock-count = { $form ->
    [sheet] { $count ->
        [one] { $count } panneau
       *[other] { $count } panneaux
    }
    [board] { $count ->
        [one] { $count } planche
       *[other] { $count } planches
    }
   *[bar] { $count ->
        [one] { $count } barre
       *[other] { $count } barres
    }
}
pieces = { $count ->
    [one] { $count } pièce
   *[other] { $count } pièces
}
size-in = Cotes, { $unit }
revision-line = Révision { $mark }, { $date }
mirrored-tag = { $count } en symétrique
grain-along = fil dans le sens de la { $along ->
    [width] largeur
   *[length] longueur
}
without = –
# A side of a part. An edge runs along the length of a part.
side = { $side ->
    [foot] le bout de pied
    [head] le bout de tête
    [near] le chant proche
    [far] le chant éloigné
    [back] le contre-parement
   *[face] le parement
}
# The same where nothing but a side can be meant.
side-short = { $side ->
    [foot] pied
    [head] tête
    [near] chant proche
    [far] chant éloigné
    [back] contre-parement
   *[face] parement
}
steps-named = { $count ->
    [one] étape { $steps }
   *[other] étapes { $steps }
}
towards = { $towards ->
    [left] la gauche
    [right] la droite
    [front] l’avant
    [back] l’arrière
    [top] le haut
   *[bottom] le bas
}

## Change marks

marks-since-revision = Une barre en marge signale ce qui diffère de la révision { $mark } du { $date } ; un triangle sans barre marque l’endroit d’une suppression.
marks-since-first = Une barre en marge signale ce qui diffère du plan avant sa première révision ; un triangle sans barre marque l’endroit d’une suppression.

## Cover

cover-figure = { $title }, état fini, vue de l’avant et d’en haut
cover-size = Largeur × profondeur × hauteur
cover-mass = Masse, environ
cover-level = Niveau
cover-time = Durée de réalisation
cover-time-and-more = { $time }, plus { $steps ->
    [one] { $steps } étape
   *[other] { $steps } étapes
} sans durée indiquée
cover-cost = Matériaux et quincaillerie
cover-cost-and-more = { $cost }, plus { $items ->
    [one] { $items } article
   *[other] { $items } articles
} sans prix indiqué
cover-edition = Édition
cover-author = Auteur

## Read first

read-first = À lire d’abord
read-first-lead = Lire ce chapitre et toutes les étapes avant la première coupe.
protect = Se protéger
protect-lead = Tenir prêt ce que ces signaux demandent. Chaque danger ci-dessous porte les siens ; les codes sont ceux de l’ISO 7010. Pas de gants près d’une lame, d’un foret ou d’un outil de coupe en rotation.
hazards = Ce qui peut blesser pendant la réalisation
hazards-lead = Les dangers les plus graves viennent en premier. Chacun est rappelé juste avant le travail concerné.
how-to-read = Comment lire ce plan
how-figures = Cotes
how-figures-systems = Toutes les cotes sont données en millimètres et en pouces. Travailler du début à la fin dans un seul système, sans mélanger les deux : chaque cote est arrondie séparément. Les dimensions sont dans l’ordre longueur × largeur × épaisseur, la longueur en premier.
how-figures-rounded = Une cote précédée de <span class="rounded">~</span> est arrondie ; sans ce signe, elle est exacte. Les pouces sont arrondis à { $inch } in près, les millimètres à { $mm } mm près. Forets, vis et traits de scie sont donnés à { $fine-inch } in et à { $fine-mm } mm près. Là où des pièces doivent s’ajuster, tracer l’une d’après l’autre et ne pas additionner de cotes arrondies.
how-drawings = Dessins
how-drawings-lead = Une lettre dans un cercle désigne une pièce ; la fiche de débit en donne le nom, les cotes et le nombre. Les traits forts sont les arêtes vues, les traits interrompus fins les arêtes cachées. Dans une étape, les pièces nouvelles ressortent et sont dessinées à l’écart de leur emplacement ; suivre les traits fins pour le trouver. Gauche, droite, avant et arrière s’entendent pour l’ouvrage terminé, vu de l’avant. Ne pas mesurer sur les dessins : s’en tenir aux cotes inscrites.
scale = Cette page est-elle imprimée à l’échelle ?
scale-lead = Imprimer à 100 %, sans « ajuster à la page », et mesurer le carré.
scale-screen = Rien ici n’est à l’échelle
scale-screen-lead = Cette édition est faite pour un écran. Toutes les cotes y sont en chiffres ; aucun dessin n’a d’échelle, et aucun n’est fait pour être mesuré.

## Signal words and boxes

signal = { $word ->
    [danger] DANGER
    [warning] AVERTISSEMENT
    [caution] ATTENTION
   *[notice] AVIS
}
occasion-cutting = au débit des pièces
occasion-use = pendant l’utilisation de l’ouvrage
occasion-always = en permanence
again = Avant de commencer, rappel : { $names } (voir « { $place } »).

## Contents

contents = Sommaire

## What to buy

buy = À acheter
buy-wood = Panneaux, planches et barres
buy-material = Matériau
buy-buy = Acheter
buy-each = L’unité
buy-price = Prix
buy-on-hand = Déjà disponible : { $title }, { $stock } de { $size }.
buy-more-boards = { $title } : { $count ->
    [one] { $count } planche est achetée
   *[other] { $count } planches sont achetées
} en plus de celles des plans de découpe, pour compenser nœuds, fentes et gauchissement.
buy-used = Quantités comptées d’après les plans de découpe, avec un taux d’utilisation de { $used }. Mesurer l’épaisseur de ce qui est acheté avant de creuser la moindre rainure : les panneaux sont souvent plus minces que leur épaisseur nominale.
buy-used-of = { $percent } % pour { $title }
buy-lumber = Bois massif en largeurs variables
buy-lumber-head = Bois massif
buy-or-m2 = ou m²
buy-or-board-feet = ou pieds-planche
buy-a-unit = { $price } le { $unit ->
    [cubic_metre] m³
    [square_metre] m²
   *[board_foot] pied-planche
}
buy-lumber-lead = Mesuré brut de sciage, pertes comprises : { $waste }. Emporter la fiche de débit et tracer les pièces à la craie sur les planches, les plus longues d’abord, à l’écart des nœuds, des fentes et de la moelle. Un pied-planche vaut 144 pouces cubes.
buy-waste-of = { $percent } % de plus que les ébauches pour { $title }
buy-hardware = Quincaillerie
buy-item = Article
buy-needed = Besoin
buy-left-over = Reste
buy-packs-of = { $packs ->
    [one] { $packs } paquet
   *[other] { $packs } paquets
} de { $pack }
buy-packs = { $packs ->
    [one] { $packs } unité
   *[other] { $packs } unités
}
buy-rolls = { $packs ->
    [one] { $packs } rouleau
   *[other] { $packs } rouleaux
}
buy-supplies = Colle et finition
buy-supply = Produit
buy-coats = Couches
buy-for = Surface, toutes couches
buy-supplies-lead = Les unités de vente sont comptées d’après la surface couverte annoncée par les fabricants, plus un dixième.
buy-together = Total : <strong>{ $total }</strong>.
buy-together-without = Total : <strong>{ $total }</strong>, sans compter { $lines ->
    [one] { $lines } ligne
   *[other] { $lines } lignes
} sans prix.
buy-prices = Les prix sont ceux de l’auteur et varient.
buy-prices-without-supplies = Les prix sont ceux de l’auteur et varient. Colle, abrasifs et produits de finition ne sont pas comptés.

## Tools

tools = Outils
tools-to = Pour
tools-tool = Outil
tools-for = Emploi
tools-purpose = { $purpose ->
    [measure] mesurer et tracer
    [saw] scier
    [shape] raboter et limer
    [drill] percer
    [rout] défoncer
    [join] assembler
    [clamp] coller et serrer
    [finish] poncer et finir
    [protect] se protéger
   *[other] et
}
tools-cutting = débit
tools-finishing = finition

## Cut list

cut-list = Fiche de débit
cut-list-lead = Cotes finies. Les pièces comprises entre deux lignes se délignent sur un seul réglage du guide parallèle ; couper d’abord les plus longues.
cut-cut = Qté
cut-part = Pièce
cut-length = Long.
cut-width = Larg.
cut-thick = Ép.
cut-bands = bande de chant sur { $sides }
cut-from = { $count ->
    [one] du panneau
   *[other] des panneaux
} { $numbers }
cut-blank-layers = { $count ->
    [one] { $count } ébauche
   *[other] { $count } ébauches
} : coller { $layers } épaisseurs pour chacune, puis mettre aux cotes finies
cut-blank-band = scier à ces cotes, puis coller la bande de chant
cut-blank-lumber = scier à ces cotes, puis raboter et mettre aux cotes finies
cut-blank-trim = scier avec surcote, puis mettre aux cotes finies
cut-to-fit = À ajuster
cut-to-fit-lead = Chaque cote est arrondie séparément. Dans ces alignements de pièces, la somme des cotes imprimées est un peu supérieure ou inférieure à la cote de l’ensemble : travailler dans l’autre système, ou couper en tout dernier la pièce indiquée, à la mesure de l’ouverture qui la reçoit.
cut-in-a-row = Alignement
cut-as-long-as = Même longueur que
cut-figures-make = Somme des cotes
cut-figure-whole = Cote d’ensemble
cut-fit = Ajuster
cut-less-let-in = moins ce qui est encastré
cut-beside-them = { $label } à côté
cut-mark = Dès qu’une pièce est coupée, y marquer sa lettre, son parement et son haut, sur un côté qui sera caché.

## Cutting layouts

layouts = Plans de découpe
layouts-lead = Affranchir d’abord les bords ; chaque coupe va d’un bord à l’autre. Faire toutes les coupes possibles sur un même réglage avant de le changer : son numéro est inscrit sur ces coupes.
layouts-notice = Une scie fait éclater la face par laquelle ses dents sortent du bois. Scie circulaire sur table, scie à onglet et scie à main : la plus belle face dessus. Scie circulaire portative : la plus belle face dessous.
layouts-on-hand = { $count ->
    [one] { $count } chute disponible
   *[other] { $count } chutes disponibles
}
layouts-nothing-bought = { $stock } ; rien à acheter.
layouts-at-least-cost = { $stock }, { $cost } ; quel que soit le plan de découpe, il faut au moins { $least }.
layouts-alone = Avec le seul format { $size } : { $count }, { $cost }.
layouts-at-least = { $stock } ; au moins { $least ->
    [one] { $least } est nécessaire
   *[other] { $least } sont nécessaires
}.
layouts-one = { $form ->
    [sheet] Panneau
    [board] Planche
   *[bar] Barre
} { $number } sur { $count }
layouts-alike = { $form ->
    [sheet] Panneaux
    [board] Planches
   *[bar] Barres
} { $number } à { $last } sur { $count }, même découpe
layouts-from-hand = Chute disponible, { $size }
layouts-kerf = { $size } ; trait de scie { $kerf }
layouts-trim-edges = affranchir { $trim } sur chaque bord
layouts-trim-ends = affranchir { $trim } aux deux bouts
layouts-figure = Plan de découpe { $number }, { $title } : { $parts }
layouts-caption = La double flèche indique le fil. Les pièces en gris sont à découper ; les lignes pointillées montrent ce qui est affranchi d’abord.
layouts-gives = Donne { $parts }.
layouts-each-gives = Donne chaque fois { $parts }.
layouts-grain-runs = Le fil se poursuit de l’une à l’autre sur { $parts } : elles sont côte à côte dans cet ordre. Repérer cet ordre avant de les séparer.
layouts-rip = Délignage, guide à { $at } : { $cuts ->
    [one] { $cuts } coupe
   *[other] { $cuts } coupes
}
layouts-crosscut = Tronçonnage, butée à { $at } : { $cuts ->
    [one] { $cuts } coupe
   *[other] { $cuts } coupes
}
layouts-left-over = Reste : { $offcuts }.

## Part drawings

parts = Dessins de pièces
parts-lead = Pour chaque pièce que ses trois cotes ne suffisent pas à décrire. Les numéros encadrés renvoient au tableau sous chaque dessin ; les emplacements se mesurent depuis le pied, c’est-à-dire le bout gauche, et depuis l’autre côté indiqué dans le tableau. Ce sont les cotes qui comptent, pas le dessin.
parts-drawn = { $pieces } selon le dessin
parts-drawn-and-mirrored = { $pieces } selon le dessin, { $mirrored } en symétrique
parts-figure = Dessin coté : { $title } { $label } ; ses usinages figurent dans le tableau
parts-section-figure = Coupe { $letter } : { $title } { $label }
parts-template = Un gabarit grandeur nature { $side ->
    [foot] du bout de pied
    [head] du bout de tête
    [near] du chant proche
    [far] du chant éloigné
    [back] du contre-parement
   *[face] du parement
} se trouve à la fin du plan.
parts-number = N°
parts-cut = Usinage
parts-size = Ø, cotes
parts-depth = Prof.
parts-from = Depuis
parts-through = débouchant
parts-pocket-holes = { $count ->
    [one] perçage en biais
   *[other] { $count } perçages en biais
} dans { $side }, sortie par { $out }, avant-trou { $pilot }
parts-edge-shape = { $kind ->
    [round-over] arrondi
   *[chamfer] chanfrein
} entre { $one } et { $other }
parts-notches = { $count ->
    [one] encoche
   *[other] { $count } encoches
}
parts-end-cut = { $kind ->
    [mitre] coupe d’onglet
   *[bevel] coupe en biseau
} sur { $side }, { $angle } par rapport à l’équerre, côté long : { $long }
parts-taper = coupe fuselée sur { $side }, la plus forte vers { $most }, { $angle }
parts-spline-slot = rainure pour fausse languette dans la pente de { $side }, milieu à { $inner } de son arête intérieure
parts-spline-slot-frame = rainure pour fausse languette sur toute la pente de { $side }, au milieu de l’épaisseur
parts-tenon = tenon centré sur { $side }, longueur { $length }
parts-cuts = { $kind ->
    [hole] { $count ->
        [one] perçage
       *[other] { $count } perçages
    }
    [countersunk-hole] { $count ->
        [one] perçage fraisé
       *[other] { $count } perçages fraisés
    }
    [dado] { $count ->
        [one] rainure transversale
       *[other] { $count } rainures transversales
    }
    [groove] { $count ->
        [one] rainure
       *[other] { $count } rainures
    }
    [rabbet] { $count ->
        [one] feuillure
       *[other] { $count } feuillures
    }
    [mortise] { $count ->
        [one] mortaise
       *[other] { $count } mortaises
    }
    [lap] { $count ->
        [one] entaille à mi-bois
       *[other] { $count } entailles à mi-bois
    }
   *[recess] { $count ->
        [one] évidement
       *[other] { $count } évidements
    }
} dans { $side }
parts-mouth = { $cut }, entrée élargie à { $mouth }
parts-mouth-deep = { $cut }, entrée élargie à { $mouth }, profondeur { $depth }
parts-grid-row = { $cut }, { $across } par { $along }, pas { $pitch } ; le premier :
parts-grid = { $cut }, { $across } par { $along }, pas { $pitch } par { $other-pitch } ; le premier :
parts-grid-proof = Grille { $numbers } : d’un trou d’angle au trou d’angle opposé, { $diagonal } dans les deux sens.
parts-grid-proof-triangle = Grille { $numbers } : d’un trou d’angle au trou d’angle opposé, { $diagonal } dans les deux sens. Pour vérifier l’équerrage, avancer à partir d’un trou d’angle de { $steps } trous le long d’un bord et de { $other-steps } le long de l’autre ({ $leg } et { $other-leg }) : d’un point à l’autre, la distance est de { $long }.
parts-outline = Contour, depuis le pied et le chant proche : { $corners }.
parts-arc-to = arc de rayon { $radius } jusqu’à { $place }
parts-setting-out = Traçage de la grille { $numbers } : { $title } { $label }
parts-setting-out-figure = Dessin de traçage de la grille { $numbers } : { $title } { $label }
parts-setting-out-lead = Tracer la première rangée et la première colonne à partir des deux bords en trait fort, { $one } et { $other }, sans déplacer le réglet d’un trou à l’autre. Contrôler ensuite l’équerrage avant de percer.
parts-setting-out-triangle = Le triangle fait { $steps } pas sur { $other-steps }, ses côtés étant entre eux comme trois, quatre et cinq.
parts-setting-out-square = La grille est d’équerre si le grand côté du triangle mesure { $long } et si les deux diagonales de la grille entière mesurent { $diagonal }.
parts-setting-out-square-alone = La grille est d’équerre si le grand côté du triangle mesure { $long } et si l’autre diagonale de la grille mesure autant.

## Hardware and drilling

hardware = Quincaillerie
hardware-item = Article
hardware-pieces = Qté
hardware-steps = Étapes
hardware-pilot = avant-trou { $size }
hardware-clearance = trou de passage { $size }
hardware-lead = Quantités comptées d’après les assemblages de l’ouvrage. Les avant-trous valent pour un bois moyen : essayer d’abord sur une chute.
drilling = Perçage
drilling-lead = Chaque ligne correspond à un foret et à un réglage de la butée de profondeur. Les emplacements figurent sur les dessins de pièces.
drilling-bit = Foret, { $unit } ({ $other })
drilling-depth = Prof.
drilling-for = Pour
drilling-where = Où
drilling-holes = Trous
drilling-stepped = étagé Ø { $size }
drilling-plain = Ø { $size }
drilling-by-jig = selon le gabarit
drilling-purpose = { $purpose ->
    [screw] passage de vis
    [bite] avant-trous de vis
    [dowel] tourillons
    [bolt] passage de boulons
    [insert] inserts filetés
    [pin] taquets d’étagère
    [magnet] aimants
    [pocket] vis en biais
    [mouth] entrées élargies
   *[plain] selon le dessin
}
drilling-place = { $part }, { $side } : { $each }
drilling-place-pieces = { $part }, { $side } : { $each } × { $pieces } pièces

## The whole piece

whole = L’ouvrage entier
whole-finished = L’ouvrage terminé
whole-finished-figure = L’ouvrage terminé, vu de l’avant et d’en haut
whole-views = Vues de face, de droite et de dessus
whole-views-figure = Vue de face, vue de côté et vue de dessus avec cotes d’encombrement
whole-apart = Toutes les pièces, en vue éclatée ; lettres comme dans la { $place }
whole-apart-figure = Toutes les pièces en vue éclatée, chacune avec sa lettre
whole-cut-list = fiche de débit

## Steps

steps = Étapes
steps-lead = { $count ->
    [one] { $count } étape
   *[other] { $count } étapes
}. Respecter l’ordre : lire chaque étape jusqu’au bout et préparer ce qu’elle demande avant de commencer, puis cocher ses contrôles avant de continuer.
steps-lead-time = { $count ->
    [one] { $count } étape
   *[other] { $count } étapes
}, environ { $time }. Respecter l’ordre : lire chaque étape jusqu’au bout et préparer ce qu’elle demande avant de commencer, puis cocher ses contrôles avant de continuer.
step-title = Étape { $number } : { $title }
step-make-alike = en faire { $count }, à l’identique. L’image en montre un exemplaire ; le tableau et la durée valent pour tous.
step-make-mirrored = en faire { $count }, dont { $mirrored ->
    [one] { $mirrored } exemplaire symétrique
   *[other] { $mirrored } exemplaires symétriques
}. L’image en montre un exemplaire ; le tableau et la durée valent pour tous.
step-make-one = à assembler à part, avant l’intégration à l’ensemble.
step-for-this = Pour cette étape
step-take = Prendre
step-whole-from = { $title } de l’étape { $step }
step-time = <strong>Durée :</strong> { $time }.
step-supplies = <strong>Produits :</strong> { $supplies }.
step-tools = <strong>Outils :</strong> { $tools }.
step-check = À contrôler avant de continuer :

## Final checks

final = Contrôles finaux
final-lead = Avant la mise en service de l’ouvrage, mesurer et essayer :
final-size = Largeur × profondeur × hauteur : { $size }. Quelques millimètres de plus ou de moins sur l’ensemble ne sont pas un défaut ; un faux aplomb en est un.
final-stands = L’ouvrage, posé ou suspendu, tient sans osciller, et les diagonales de ses côtés ouverts sont égales.
final-joints = Tous les assemblages sont fermés, et il n’y a ni colle, ni écharde, ni arête vive là où passent les mains.
final-screws = Chaque vis est serrée et sa tête ne dépasse pas.
final-left-over = Reste des paquets entiers : { $items }. S’il en reste davantage, un élément a été oublié.
final-removable = { $part } : dépose et repose possibles à la main.
final-load = { $part } : charge à supporter { $mass } ; charger peu à peu.
final-load-middle = { $part } : charge à supporter { $mass }, au milieu ; charger peu à peu.
final-bends = La flèche est d’environ { $first } au début ; après des années sous la charge, elle ne doit pas dépasser { $limit }.
final-nothing-gives = Chargé peu à peu jusqu’à la charge prévue, l’ouvrage ne présente ni flexion visible, ni fissure, ni rupture.
final-meant = Voulu ainsi
final-meant-lead = Le contrôle de ce plan interroge sur les points suivants ; l’auteur a tranché.

## Figures of the piece

figures = L’ouvrage en chiffres
figures-lead = Calculs faits avec des valeurs moyennes de bois sans défaut, hors quincaillerie. Vos planches diffèrent ; l’ordre de grandeur, non.
figures-loads = Ce qu’il porte
figures-piece = Pièce
figures-load = Charge
figures-span = Portée, { $unit } ({ $other })
figures-at-first = Flèche au début
figures-lasting = Après des années
figures-limit = Au plus
figures-in-middle = { $mass }, au milieu
figures-supported = repose entièrement sur ce qui est dessous
figures-no-species = non calculé : essence non indiquée
figures-movement = Comment le bois travaille dans l’année
figures-across = En travers du fil, { $unit }
figures-moves = Variation
figures-moisture = Entre { $dry } % et { $damp } % d’humidité du bois. Dans le sens du fil, le bois ne travaille presque pas.
figures-mass = Ce qu’il pèse
figures-one = Une
figures-all = Toutes
figures-weighs = L’ensemble pèse environ <strong>{ $mass }</strong>.
figures-centre = Son centre de gravité est à { $left } de la gauche, à { $front } de l’avant et à { $high } de hauteur.
figures-standing = Vide et posé librement, l’ouvrage bascule le plus facilement vers { $towards }, de lui-même à partir de { $degrees }° ; une traction de { $pull } sur son arête supérieure avant le fait basculer vers l’avant.
figures-surface = La surface totale est de { $surface }, base de l’achat du produit de finition.
figures-surface-glue = La surface totale est de { $surface }, base de l’achat du produit de finition ; les faces à coller mesurent { $glue }.

## Options

options = Options
options-lead = Ce plan est établi pour un seul choix de chaque option. Ce qu’un autre choix modifie est indiqué ci-dessous, tous les autres restant inchangés ; les étapes qui diffèrent figurent dans le plan établi pour ce choix.
options-instead = À la place : { $title }
options-same = Ne change aucune pièce, aucun achat et aucun outil.
options-left-out = en moins ({ $before })
options-more-of = { $after } en plus, en { $material }
options-otherwise = { $after }, coupe ou perçage différents
options-replaced = { $after } au lieu de { $before }
options-replaced-of = { $after } en { $material } au lieu de { $before }
options-hardware-more = { $after } en plus
options-hardware-none = rien au lieu de { $before }
options-hardware = { $after } au lieu de { $before }
options-more-tools = Outils nécessaires en plus : { $tools }.
options-fewer-tools = Outils devenus inutiles : { $tools }.
options-cost-more = Matériaux et quincaillerie : { $by } de plus.
options-cost-less = Matériaux et quincaillerie : { $by } de moins.
options-mass-more = Masse : environ { $by } de plus.
options-mass-less = Masse : environ { $by } de moins.
options-time-more = Durée : { $by } de plus.
options-time-less = Durée : { $by } de moins.

## Revisions

revisions = Révisions
revisions-mark = Indice
revisions-date = Date
revisions-note = Modifications

## Terms and measures

terms = Termes et mesures
term-blank = Ébauche
term-blank-is = Pièce coupée plus grande que la pièce finie, à mettre ensuite aux cotes.
term-crosscut = Tronçonnage, délignage
term-crosscut-is = Coupe en travers de la longueur d’un panneau ou d’une planche, et coupe dans le sens de cette longueur.
term-dado = Rainure transversale, rainure
term-dado-is = Creusée en travers du fil, et creusée dans le sens du fil.
term-face = Parement, contre-parement
term-face-is = Les deux grandes faces d’une pièce ; le parement est celle à partir de laquelle le plan mesure.
term-grain = Fil
term-grain-is = La direction des fibres du bois ; pour un panneau, celle de ses couches extérieures.
term-kerf = Trait de scie
term-kerf-is = La largeur de la coupe de scie, perdue en sciure.
term-mirrored = Symétrique
term-mirrored-is = Réalisé comme l’image du dessin dans un miroir, comme la main gauche et la main droite.
term-pilot = Avant-trou
term-pilot-is = Trou dans lequel une vis mord sans fendre le bois.
term-rabbet = Feuillure
term-rabbet-is = Décrochement le long d’un bord.
terms-units = 1 in vaut exactement 25,4 mm. 1 ft vaut 12 in. 1 lb vaut 0,4536 kg.

## The sheet for those who own an earlier plan

errata-title = Corrections : { $title }
errata-running = { $title } : de { $before } à { $after }
errata-revision = révision { $mark } du { $date }
errata-no-revision = plan sans révision
errata-lead = Pour qui possède l’édition « { $before } » : l’édition « { $after } » en prend la place. Conserver cette feuille avec le plan ; là où les deux diffèrent, c’est cette feuille qui est juste.
errata-same = Ce qui est construit, et la manière de le construire, sont identiques dans les deux. Il n’y a rien à faire.
errata-why = Ce qui a changé, et pourquoi
errata-new-hazards = <strong>Nouveau dans le chapitre « À lire d’abord » : { $hazards }.</strong> Le lire dans le nouveau plan avant de continuer.
errata-cut-already = Pièces déjà coupées
errata-all-serve = Toutes les pièces conviennent telles quelles.
errata-others-serve = Toute pièce qui n’est pas nommée ici convient telle quelle.
errata-fate = { $fate ->
    [remake] À refaire
    [trim] À recouper aux cotes
    [rework] À couper ou percer encore
    [new] Pièces nouvelles
    [no_longer] Plus nécessaires
   *[serves] Conviennent telles quelles
}
errata-advice = { $fate ->
    [remake] Ce qui a été coupé d’après l’ancien plan ne convient pas : le mettre de côté pour un autre usage.
    [trim] Ce qui a été coupé d’après l’ancien plan est plus grand : le recouper côté tête et côté chant éloigné, pour que perçages et rainures gardent leur distance aux côtés d’où ils sont mesurés, puis le contrôler d’après son nouveau dessin.
    [rework] Ce qui a été coupé d’après l’ancien plan convient ; le nouveau dessin montre ce qui reste à couper ou à percer.
    [new] L’ancien plan ne comportait pas ces pièces.
    [no_longer] Le nouveau plan se passe de ces pièces.
   *[serves] Seuls le nom, la lettre ou le nombre de ces pièces ont changé.
}
errata-other = Différences
errata-was-called = auparavant { $part }
errata-material = en { $after }, auparavant en { $before }
errata-grain = { $after }, auparavant { $before }
errata-pieces = { $after ->
    [one] { $after } pièce
   *[other] { $after } pièces
}, auparavant { $before }
errata-cut-otherwise = autres perçages, rainures ou forme : voir le dessin
errata-of = en { $material }
errata-was = auparavant
errata-goods = À acheter, et en trop
errata-buy-more = Acheter { $by } de plus : { $title } ({ $count } en tout).
errata-left-over = { $by } en trop : { $title } (il en est utilisé { $count }).
errata-cost = Matériaux et quincaillerie reviennent à { $after }, auparavant { $before }.
errata-mass = L’ouvrage pèse environ { $after }, auparavant { $before }.
errata-joints = Assemblages et emplacements
errata-joined = { $one } et { $other } : { $after }
errata-not-joined = { $one } et { $other } : plus d’assemblage désormais
errata-joined-was = { $joined }, auparavant { $before }.
errata-joined-new = { $joined }, auparavant sans assemblage.
joint = { $kind ->
    [screws] vis
    [pocket_screws] vis en biais
    [dado] rainure transversale
    [groove] rainure
    [rabbet] feuillure
    [dowels] tourillons
    [loose_tenons] faux tenons
    [mortise_and_tenon] tenon et mortaise
    [half_lap] mi-bois
    [box_joint] queues droites
    [mitre] onglet
    [tongue_and_groove] rainure et languette
    [lamination] contre-collage
    [bolts] boulons
    [nails] clous
    [hinges] charnières
    [runners] coulisses
    [strips] tasseaux
    [shelf_pins] taquets d’étagère
    [magnets] aimants
   *[glue] colle
}
joint-with = { $joint } avec { $hardware }
joint-glued = { $joint }, avec colle
joint-dry = { $joint }, sans colle
errata-moved = { $part } : { $ways }.
errata-farther = { $by } plus loin vers { $towards }
errata-steps = Étapes au texte modifié
errata-was-step = { $title } (auparavant étape { $number })
errata-step-out = Cette étape est supprimée.
errata-step-new = Cette étape est nouvelle : suivre le nouveau plan.
errata-step-called = Elle s’appelait « { $title } ».
errata-comes-in = Intervient désormais ici : { $parts }.
errata-no-longer-in = N’intervient plus ici : { $parts }.
errata-text-was = Avant : { $text }
errata-text-now = Maintenant : { $text }
errata-choices = Nouveaux choix
errata-fewer-choices = Choix supprimés : { $choices }.
errata-fewer-hazards = Ne figure plus dans le chapitre « À lire d’abord » : { $hazards }.

## The page of a library

library = Bibliothèque
library-version = Version { $version }
library-language = langue { $language }
library-lead = Les noms en gras sont ceux qu’un plan importe. Les dessins sont faits avec les valeurs de la dernière colonne ; un plan donne les siennes.
library-wholes = Sous-ensembles
library-as-drawn = selon le dessin { $size }
library-overview-figure = { $title }, état fini
library-exploded-figure = { $title }, pièces en vue éclatée
library-given = À donner
library-kind = Type
library-preset = Par défaut
library-range = De … à
library-shown = Au dessin
library-part = Pièce
library-pieces = Qté
library-from = Matériau
library-materials = Matériaux
library-name = Nom
library-called = Nom dans le plan
library-thick = Épaisseur
library-figures-of = Valeurs de
library-hardware = Quincaillerie
library-supplies = Colle et finition

## Full-size templates

full-size = Gabarits grandeur nature
full-size-lead = Ce qui porte une courbe ou beaucoup de perçages se trace plus vite avec du papier qu’avec une règle. Coller ces feuilles sur le bois et couper le long du trait fort.
full-size-on-screen = Les feuilles qui suivent ne sont pas des pages d’écran : les imprimer sur du papier au format indiqué dans le tableau.
full-size-caution = Imprimer à 100 %, sans « ajuster à la page », et mesurer le carré de chaque feuille avant de couper : 100 mm pour le carré en trait plein, 4 in pour celui en trait interrompu. Une impression trop petite de deux pour cent donne une pièce qui ne va pas.
full-size-print = Imprimer les feuilles à 100 % (« taille réelle »).
full-size-measure = Mesurer le carré de chaque feuille dans les deux sens. S’il n’est pas juste, réimprimer cette feuille.
full-size-join = S’il y a plusieurs feuilles : en couper une le long de son trait interrompu, la poser sur la suivante en faisant coïncider cercles et croix, puis la coller. Le plan d’assemblage en bas montre la place de chaque feuille ; celles qui y sont barrées sont vides et ne sont pas imprimées.
full-size-paste = Coller le papier sur le bois, le fil dans le sens de la flèche, pointer les centres des perçages et couper le long du trait fort. Les traits fins sont les arêtes des usinages, les traits mixtes les axes de la pièce.
full-size-part = Pièce
full-size-side = Côté
full-size-size = Dimensions
full-size-sheets = Feuilles
full-size-one-sheet = une feuille { $paper }
full-size-sheets-of = { $count ->
    [one] { $count } feuille { $paper }
   *[other] { $count } feuilles { $paper }
} : { $rows } × { $columns }
full-size-left-out = moins { $count } { $count ->
    [one] vide
   *[other] vides
}
full-size-of = Gabarit : { $title } { $label }, { $side ->
    [foot] bout de pied
    [head] bout de tête
    [near] chant proche
    [far] chant éloigné
    [back] contre-parement
   *[face] parement
}
full-size-figure = Gabarit grandeur nature : { $title } { $label }
full-size-figure-sheet = Gabarit grandeur nature : { $title } { $label }, rangée { $row }, colonne { $column }

## Plain words: what the plan says of hazards
## A place `mass` holds a figure with its unit in both systems, `small` and `planed` parts, every other one a length.

statement = Ce plan donne des informations générales. Lire et respecter la notice de chaque outil, colle et produit de finition, ainsi que les règles et les codes de construction en vigueur sur place. Les protecteurs ne sont représentés déposés que pour la clarté du dessin. Les travaux touchant l’électricité, le gaz, la structure ou le cloisonnement coupe-feu sont réservés à un professionnel habilité. Les vérifications de résistance et de stabilité s’appuient ici sur des valeurs moyennes du bois ; essayer l’ouvrage terminé avant usage, et ne pas l’employer pour des charges, des hauteurs ou des utilisateurs que le plan ne mentionne pas.

caution-angled-cuts = sciage en angle
caution-angled-cuts-hazard = Pièce qui glisse peu à peu le long du guide, et lame inclinée sous la main.
caution-angled-cuts-consequence = La lame atteint la main, ou accroche la pointe et la projette.
caution-angled-cuts-avoidance = Fixer la pièce au serre-joint contre le guide ou le guide d’onglet ; tenir les deux mains bien à l’écart, du côté opposé à l’inclinaison. Contrôler la trajectoire de la lame, machine hors tension. Ne jamais coincer la chute entre la lame et le guide, et attendre l’arrêt de la lame avant de retirer cette chute.
caution-childrens-use = usage par des enfants
caution-childrens-use-hazard = Les enfants grimpent, portent des objets à la bouche et se coincent.
caution-childrens-use-consequence = Ils peuvent s’étouffer, se coincer la tête ou les doigts, ou tomber.
caution-childrens-use-avoidance = Pour les doigts, ne laisser d’interstices que de moins de { $narrow } ou de { $wide } à { $widest } ; pour la tête, aucune ouverture de { $small } à { $large }, qui la coincerait. Arrondir toutes les arêtes, ne rien laisser de petit qui puisse se détacher, et employer un produit de finition que son fabricant déclare sans danger pour les articles pour enfants. Les règles en vigueur sur place priment.
caution-chiselling = ciseau à bois
caution-chiselling-hazard = Ciseau qui dérape hors de la coupe.
caution-chiselling-consequence = Il s’enfonce profondément dans ce qui se trouve devant, le plus souvent une main.
caution-chiselling-avoidance = Serrer la pièce. Garder les deux mains derrière le tranchant et couper en s’éloignant du corps. Tenir le tranchant bien affûté : émoussé, il demande de la force et dérape.
caution-crosscutting-boards = scie pour la mise à longueur
caution-crosscutting-boards-hazard = Main sur la trajectoire de la scie lors de la mise à longueur des planches.
caution-crosscutting-boards-consequence = La lame coupe jusqu’à l’os, et une chute non maintenue est projetée.
caution-crosscutting-boards-avoidance = Tenir la planche contre le guide, les deux mains bien à l’écart et jamais croisées. Serrer les pièces courtes au serre-joint. La coupe terminée, attendre l’arrêt de la lame avant de la relever.
caution-curves = scie sauteuse ou scie à ruban
caution-curves-hazard = Doigts près de la lame lors du sciage de contours, d’encoches, de coupes fuselées et d’angles.
caution-curves-consequence = La lame coupe profondément ; tordue, elle casse.
caution-curves-avoidance = À la scie sauteuse, serrer la pièce et ne pas mettre l’autre main dessous. À la scie à ruban, régler le guide-lame juste au-dessus de la pièce, faire d’abord des coupes de dégagement, et ne pas ressortir d’une courbe en reculant tant que la lame tourne.
caution-drilling = perceuse
caution-drilling-hazard = Pièce entraînée en rotation par la perceuse, et projection de copeaux.
caution-drilling-consequence = Mains et poignets sont frappés ou coupés, les yeux blessés.
caution-drilling-avoidance = Serrer la pièce sur une planche martyre dans laquelle le foret peut pénétrer, et régler une butée de profondeur. Ni gants, ni manches amples, ni cheveux détachés près d’un foret en rotation.
caution-driving-screws = vissage
caution-driving-screws-hazard = Embout de vissage qui dérape, et pointe de vis là où une main tient les pièces.
caution-driving-screws-consequence = La pointe ou l’embout s’enfonce dans la main.
caution-driving-screws-avoidance = Serrer les pièces au serre-joint au lieu de les tenir. Garder les mains hors de la trajectoire des pointes. Percer les trous indiqués par le plan, appuyer bien dans l’axe de la vis, et régler le limiteur de couple sur une valeur faible.
caution-dust = poussière
caution-dust-hazard = Poussière fine du sciage, du défonçage et du ponçage.
caution-dust-consequence = Respirée pendant des années, elle abîme les poumons et peut provoquer un cancer ; dans l’air ou dans un sac, elle peut s’enflammer.
caution-dust-avoidance = Capter la poussière sur la machine, porter un masque étanche au visage, poncer dehors ou avec aspiration. Nettoyer à l’aspirateur, sans balayer ni souffler. Vider le collecteur loin des étincelles. Ne jamais poncer de peinture ancienne ni de bois traité de nature inconnue.
caution-finishing = produit de finition
caution-finishing-hazard = Les vapeurs de produit de finition sont inflammables et nocives pour les poumons.
caution-finishing-consequence = Une étincelle ou la flamme d’une veilleuse les enflamme.
caution-finishing-avoidance = Aérer le local, et tenir flammes et étincelles à distance. Suivre l’étiquette, y compris pour les déchets.
caution-finishing-oil-hazard = Les chiffons huilés s’échauffent d’eux-mêmes, et les vapeurs de produit de finition sont inflammables.
caution-finishing-oil-consequence = Un tas de chiffons huilés peut être en feu en quelques heures.
caution-finishing-oil-avoidance = Étaler les chiffons usagés à plat en plein air jusqu’à ce qu’ils soient durs, ou les conserver sous l’eau dans un récipient métallique fermé. Aérer le local, et tenir flammes et étincelles à distance. Suivre l’étiquette.
caution-food-contact = contact alimentaire
caution-food-contact-hazard = Certains bois, colles et produits de finition ne conviennent pas au contact alimentaire.
caution-food-contact-consequence = Goût, taches ou traces nocives passent dans les aliments.
caution-food-contact-avoidance = Choisir un bois à grain serré, ainsi qu’une colle et un produit de finition que leurs fabricants déclarent aptes au contact alimentaire une fois durcis. Laisser durcir aussi longtemps que l’indique l’étiquette.
caution-gluing = colle et serre-joints
caution-gluing-hazard = Colle sur la peau et dans les yeux, et doigts sous les serre-joints.
caution-gluing-consequence = Certaines colles irritent, provoquent des allergies ou collent la peau ; les serre-joints pincent.
caution-gluing-avoidance = Lire l’étiquette, aérer le local, et porter des gants pour les colles époxy, polyuréthane et instantanées. Faire d’abord un montage complet à blanc, serre-joints posés.
caution-heavy-piece = poids de l’ouvrage
caution-heavy-piece-hazard = L’ouvrage terminé pèse environ { $mass }.
caution-heavy-piece-consequence = Il abîme le dos et écrase pieds et doigts.
caution-heavy-piece-avoidance = Le retourner, le soulever et le porter à deux, et le construire près de son emplacement.
caution-heavy-sheet = panneaux lourds
caution-heavy-sheet-hazard = Un panneau entier pèse environ { $mass }.
caution-heavy-sheet-consequence = Il abîme le dos, écrase les doigts et bascule s’il est adossé à un mur.
caution-heavy-sheet-avoidance = Le porter à deux ou avec un porte-panneau, ou faire exécuter les premières coupes sur le lieu d’achat. Stocker les panneaux à plat. Retirer les gants de manutention avant de scier.
caution-large-bits = gros forets
caution-large-bits-hazard = Des forets allant jusqu’à { $largest } entraînent la pièce avec eux.
caution-large-bits-consequence = Un foret qui accroche casse un poignet ou projette la pièce.
caution-large-bits-avoidance = Utiliser un support de perçage ou une perceuse à poignée latérale, à basse vitesse, et uniquement sur une pièce serrée. Soutenir la pièce par un martyr là où le foret débouche, et relever souvent le foret pour dégager les copeaux.
caution-magnets = aimants puissants
caution-magnets-hazard = De petits aimants puissants qui se détachent sont avalés par des enfants.
caution-magnets-consequence = Deux aimants pincent l’intestin entre eux, ce qui peut tuer.
caution-magnets-avoidance = Coller chaque aimant à l’époxy, en retrait de la surface, et tirer dessus une fois la colle dure. Tenir les aimants de réserve hors de portée des enfants et loin des stimulateurs cardiaques.
caution-nailing = clous
caution-nailing-hazard = Un clou dévie dans le fil et ressort là où il ne devrait pas.
caution-nailing-consequence = Il traverse la main qui tient la pièce.
caution-nailing-avoidance = Serrer la pièce au serre-joint au lieu de la tenir ; aucune main à moins de { $hand-clear } du nez d’un cloueur. Utiliser sa détente coup par coup, le garder pointé vers la pièce, et couper l’air ou retirer la batterie avant de dégager un clou coincé.
caution-narrow-strips = bandes étroites près de la lame
caution-narrow-strips-hazard = Délignage de bandes étroites, la plus étroite de { $narrowest } de largeur.
caution-narrow-strips-consequence = La main qui guide une bande étroite est entraînée dans la lame.
caution-narrow-strips-avoidance = Utiliser un bâton-poussoir ou un bloc-poussoir partout où une main passerait à moins de { $hand-from-blade } de la lame. Si possible, laisser tomber la bande étroite du côté opposé au guide, ou fixer une règle au serre-joint et utiliser une scie portative. Se tenir hors de l’axe de la bande.
caution-planing = raboteuse
caution-planing-hazard = Fers de la raboteuse, lors de la mise à l’épaisseur : { $planed }.
caution-planing-consequence = Une pièce courte est éjectée ou happée, et la main avec elle.
caution-planing-avoidance = Ne raboter aucune pièce plus courte que { $shortest } ou que ne le permet le fabricant : raboter la planche entière, puis la débiter. Utiliser des blocs-poussoirs, prendre des passes fines, et rechercher auparavant les clous et les nœuds non adhérents.
caution-pocket-holes = foret pour perçage en biais
caution-pocket-holes-hazard = Le foret étagé accroche dans un trou oblique et arrive près du bout de la pièce.
caution-pocket-holes-consequence = Le gabarit se tord dans la main, et le foret entame ce qui se trouve derrière la pièce.
caution-pocket-holes-avoidance = Serrer ensemble le gabarit et la pièce. Régler d’abord la bague de butée sur une chute de même épaisseur. Tenir les mains à l’écart du bout par lequel la vis sortira, et percer en amenant le foret à pleine vitesse avant qu’il touche la pièce.
caution-routing = défonceuse
caution-routing-hazard = La fraise accroche si elle avance dans le mauvais sens ou trop profond.
caution-routing-consequence = La machine saute, la fraise casse ou coupe la main qui tient la pièce.
caution-routing-avoidance = Serrer la pièce et son guide. Avancer contre le sens de rotation de la fraise, par passes de { $deepest-pass } au plus. Engager la queue de la fraise dans la pince sur les trois quarts de sa longueur et bien serrer ; faire tourner lentement les grosses fraises. Débrancher avant de changer de fraise.
caution-sawing-sheets = lame de scie et recul
caution-sawing-sheets-hazard = Recul de la scie ou rejet du panneau, et contact avec la lame, lors du sciage de panneaux.
caution-sawing-sheets-consequence = Un panneau qui pince la lame est projeté sur vous ; une lame sectionne des doigts en un instant.
caution-sawing-sheets-avoidance = Laisser en place le couteau diviseur et le protecteur de lame. Soutenir les deux côtés pour que le trait de scie ne puisse pas se refermer ; régler la profondeur de coupe un peu au-delà de l’épaisseur du panneau. Se tenir à côté de l’axe de la lame, utiliser un bâton-poussoir, et attendre l’arrêt de la lame avant de dégager quoi que ce soit.
caution-small-pieces = petites pièces
caution-small-pieces-hazard = Petites pièces près d’une lame, d’un foret ou d’une fraise en rotation : { $small }.
caution-small-pieces-consequence = Une petite pièce bascule, est happée et entraîne la main avec elle.
caution-small-pieces-avoidance = Usiner chants, rainures et perçages tant que la pièce fait encore partie d’une bande plus longue, d’au moins { $safe-length } de longueur, et la détacher en dernier. Serrer ce qui reste au serre-joint ou le tenir dans un gabarit, jamais à la main.
caution-splines = rainures en travers des onglets
caution-splines-hazard = Un bout ou un angle d’onglet bascule pendant que l’on y creuse la rainure.
caution-splines-consequence = La lame l’accroche, le projette et emporte la main.
caution-splines-avoidance = Creuser les rainures avec le bout ou l’angle serré dans un gabarit qui coulisse le long du guide, jamais tenu à la main. Tenir les doigts hors de la trajectoire de la lame, y compris là où elle ressort.
caution-tip-over = basculement
caution-tip-over-hazard = Un ouvrage de { $height } de haut et de { $depth } de profondeur peut basculer.
caution-tip-over-consequence = Un meuble qui tombe tue les petits enfants qui y grimpent ou s’y agrippent.
caution-tip-over-avoidance = Le fixer à la structure du mur, et non à la seule plaque de plâtre, avec un ancrage prévu pour ce mur, avant d’y mettre quoi que ce soit. Placer les objets lourds en bas, et rien de tentant sur le dessus.
caution-wall-fixing = fixation au mur
caution-wall-fixing-hazard = Fixation que le mur ne retient pas, et câbles et conduites dans le mur.
caution-wall-fixing-consequence = L’ouvrage tombe sur quelqu’un ; un foret dans un câble tue.
caution-wall-fixing-avoidance = Repérer d’abord montants, câbles et conduites. Utiliser des fixations prévues pour ce mur, qui tiennent au moins quatre fois ce qui y est suspendu. En cas de doute, s’adresser à un professionnel habilité.
caution-wall-fixing-avoidance-mass = Repérer d’abord montants, câbles et conduites. Utiliser des fixations prévues pour ce mur, qui tiennent au moins quatre fois ce qui y est suspendu : pour le seul ouvrage vide, { $mass }. En cas de doute, s’adresser à un professionnel habilité.

## Plain words: tools

tool-measuring = Mètre ruban, équerre, couteau à tracer et crayon
tool-sheet-saw = Scie plongeante sur rail, ou scie circulaire sur table avec un aide, pour les panneaux
tool-crosscutting = Scie à onglet ou scie à main, avec une butée pour les longueurs égales
tool-ripping = Scie circulaire sur table ou scie à ruban, pour déligner à la largeur
tool-angled-saw = Scie à onglet, ou scie circulaire sur table à lame inclinable
tool-tenon-saw = Scie à dos, ou scie à ruban avec guide et butée
tool-curve-saw = Scie sauteuse ou scie à ruban
tool-planer = Raboteuse ou rabot
tool-chisel = Ciseau à bois bien affûté, pour ajuster les arasements
tool-files = Râpe ou lime, pour les angles arrondis
tool-drill = Perceuse avec butée de profondeur
tool-bit = Foret, { $diameter }
tool-flat-bit = Foret à fond plat ou scie cloche, { $diameter }
tool-countersink = Fraise conique à noyer, 90°
tool-pocket-jig = Gabarit de perçage en biais
tool-stepped-bit = Foret étagé pour perçage en biais, { $diameter }, avec bague de butée
tool-router = Défonceuse avec guide parallèle
tool-channel-bit = Fraise droite de défonceuse, largeur { $width } ou moins
tool-mortise-bit = Fraise à mortaiser, largeur { $width }
tool-round-over-bit = Fraise quart-de-rond, rayon { $radius }
tool-chamfer-bit = Fraise à chanfreiner, 45°
tool-flush-saw = Scie à araser, pour couper les bouchons
tool-slot-jig = Gabarit tenant un angle sur la scie circulaire sur table ou la défonceuse, pour rainurer les onglets
tool-hammer = Marteau et chasse-clou, ou cloueur
tool-spanner = Clé plate ou clé six pans adaptée aux boulons
tool-insert-driver = Outil de pose pour inserts filetés
tool-wall-finder = Détecteur de montants, câbles et conduites
tool-driver = Tournevis, ou perceuse-visseuse à limiteur de couple
tool-clamps-opening = Serre-joints d’une ouverture de { $opening } ou plus
tool-clamps = Serre-joints
tool-sanding = Cale à poncer ou ponceuse, grain 120 et 180
tool-extraction = Aspiration des poussières

## Plain words: what safety signs mean

sign-M002 = Consulter le manuel d’instructions
sign-M003 = Protection auditive obligatoire
sign-M004 = Lunettes de protection obligatoires
sign-M008 = Chaussures de sécurité obligatoires
sign-M009 = Gants de protection obligatoires
sign-M016 = Masque obligatoire
sign-P003 = Flammes nues interdites
sign-P028 = Port de gants interdit
sign-W012 = Électricité
sign-W024 = Écrasement des mains

## Plain words: pages

page-of = page { $number } sur { $count }
page-info = BON À SAVOIR
page-metric-square = Carré en trait continu : 100 mm, graduations tous les 10 mm
page-inch-square = Carré en trait interrompu : 4 in, graduations tous les 1⁄2 in
page-scale-advice = Poser un réglet le long des deux bords à partir de l’angle inférieur gauche. Si l’impression n’est pas exacte, imprimer de nouveau à 100 % (« taille réelle ») et ne mesurer aucun dessin de cette impression.

## Plain words: the web edition
## A button says what it does; ticks are the boxes of finished steps, cut parts, goods bought and checks.

web-skip = Aller au plan
web-done = Fait
web-done-step = Fait : { $what }
web-cut = Débité : { $what }
web-bought = Acheté : { $what }
web-changed = Modifié :
web-left-out = Quelque chose a été supprimé ici.
web-larger = Agrandir
web-larger-drawing = Agrandir : { $what }
web-ticks-kept = Les cases cochées sont conservées dans ce navigateur, pour cette révision du plan.
web-clear = Décocher toutes les cases
web-clear-ask = Décocher toutes les cases de ce plan ?

## Plain words: drawings
## The fields of a title block are those of ISO 7200.

## Plain words: what figures show

figure-size = { $figure } : { $width } de large, { $depth } de profondeur, { $height } de haut
figure-parts = { $figure } : { $parts }
figure-part = { $title } { $label } avec ses cotes
figure-setting-out = { $title } : un réseau de perçages, tracé depuis { $one } et { $other }
figure-layout = { $size }, débité en { $parts }
figure-so-far = l’ouvrage à ce stade
figure-step = Étape { $number }, { $title } : { $what }
figure-comes = { $count ->
    [one] { $part }
   *[other] { $count } × { $part }
} { $way ->
    [left] { $count ->
        [one] arrive par la gauche
       *[other] arrivent par la gauche
    }
    [right] { $count ->
        [one] arrive par la droite
       *[other] arrivent par la droite
    }
    [front] { $count ->
        [one] arrive par l’avant
       *[other] arrivent par l’avant
    }
    [back] { $count ->
        [one] arrive par l’arrière
       *[other] arrivent par l’arrière
    }
    [top] { $count ->
        [one] arrive par le dessus
       *[other] arrivent par le dessus
    }
    [bottom] { $count ->
        [one] arrive par le dessous
       *[other] arrivent par le dessous
    }
   *[none] { $count ->
        [one] est en place
       *[other] sont en place
    }
}
figure-joined = , assemblage avec { $others } ({ $joint })

drawing-owner = Propriétaire légal
drawing-document-type = Type de document
drawing-part-drawing = Dessin de pièce
drawing-title = Titre
drawing-identification = Identification
drawing-created-by = Créé par
drawing-approved-by = Approuvé par
drawing-revision = Rév.
drawing-date-of-issue = Date d’émission
drawing-sheet = Folio
drawing-scale = Échelle { $scale }
drawing-scale-thick = Échelle { $scale }, épaisseur { $thickness }
drawing-no-scale = Sans échelle
drawing-no-scale-thick = Sans échelle, épaisseur { $thickness }
drawing-sign = Signal de sécurité { $code } : { $meaning }

## Plain words: full-size templates

template-shown = Grandeur nature, { $side } dessus.
template-sheet = Feuille { $short } : rangée { $row } sur { $rows }, colonne { $column } sur { $columns }
template-sheet-short = R{ $row } C{ $column }
template-print = Imprimer à 100 %, sans « ajuster à la page ». Mesurer le carré avant de couper.
template-join = Couper une feuille le long de son trait interrompu, la poser sur la suivante en faisant coïncider cercles et croix, puis la coller. Les feuilles barrées sur le plan d’assemblage sont vides et ne sont pas imprimées.
template-mirrored = { $mirrored ->
    [one] Une pièce est symétrique : retourner le gabarit pour la tracer.
   *[other] { $mirrored } pièces sont symétriques : retourner le gabarit pour les tracer.
}
template-grain = fil du bois
