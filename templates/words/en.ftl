### The words of a plan in English, as Project Fluent writes messages.
###
### What templates print may hold the tags of a line of text (templates/README.md); messages under "Plain
### words" hold words alone. A figure and its unit, and the words "step" and "page" and their number, stand
### together: no-break spaces.

## Figures and lists

# Between whole millimetres and their decimals.
decimal-mark = .
list-comma = ,{" "}
list-last = {" "}and{" "}
list-more = {" "}and { $more } more
hours = { $hours } h
minutes = { $minutes } min
hours-and-minutes = { $hours } h { $minutes } min
# Month is a number from 1 to 12.
date = { $day } { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
} { $year }
# Form is sheet, board or bar.
stock-count = { $form ->
    [sheet] { $count ->
        [one] { $count } sheet
       *[other] { $count } sheets
    }
    [board] { $count ->
        [one] { $count } board
       *[other] { $count } boards
    }
   *[bar] { $count ->
        [one] { $count } bar
       *[other] { $count } bars
    }
}
pieces = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
}
size-in = Size, { $unit }
revision-line = Revision { $mark }, { $date }
mirrored-tag = { $count } mirrored
grain-along = grain along its { $along ->
    [width] width
   *[length] length
}
without = –
# A side of a part. An edge runs along the length of a part.
side = { $side ->
    [foot] foot
    [head] head
    [near] near edge
    [far] far edge
    [back] back
   *[face] face
}
# The same where nothing but a side can be meant.
side-short = { $side ->
    [foot] foot
    [head] head
    [near] near
    [far] far
    [back] back
   *[face] face
}
steps-named = { $count ->
    [one] step { $steps }
   *[other] steps { $steps }
}
towards = { $towards ->
    [left] left
    [right] right
    [front] front
    [back] back
    [top] top
   *[bottom] bottom
}

## Change marks

marks-since-revision = Bars in the margin stand beside what is other than in revision { $mark } of { $date }; a triangle without a bar stands where something was left out.
marks-since-first = Bars in the margin stand beside what is other than in the plan before its first revision; a triangle without a bar stands where something was left out.

## Cover

cover-figure = { $title }, finished, seen from the front and above
cover-size = Width × depth × height
cover-mass = Mass, about
cover-level = Level
cover-time = Time to build
cover-time-and-more = { $time }, and { $steps ->
    [one] { $steps } step
   *[other] { $steps } steps
} without a stated time
cover-cost = Material and hardware
cover-cost-and-more = { $cost }, and { $items ->
    [one] { $items } item
   *[other] { $items } items
} without a stated price
cover-edition = Edition
cover-author = Author

## Read first

read-first = Read first
read-first-lead = Read this chapter and all steps before the first cut.
protect = Protect yourself
protect-lead = Have ready what these signs ask for. Each hazard below shows its own; the codes are those of ISO 7010. No gloves near a turning blade, bit or cutter.
hazards = What can hurt you in this build
hazards-lead = The worst come first. Each is told again just before the work it belongs to.
how-to-read = How to read this plan
how-figures = Figures
how-figures-systems = Every figure stands in millimetres and in inches. Work in one system throughout and do not mix them: each is rounded by itself. Sizes are length × width × thickness, length first.
how-figures-rounded = A figure with <span class="rounded">~</span> before it is rounded; one without is exact. Inches are rounded to the nearest { $inch } in, millimetres to the nearest { $mm } mm. Bits, screws and saw cuts are given to the nearest { $fine-inch } in and { $fine-mm } mm. Where parts must fit, mark one from the other and do not add rounded figures.
how-drawings = Drawings
how-drawings-lead = A letter in a circle is a part; the cut list tells its name, size and number. Thick lines are edges you see, thin dashed lines edges that are hidden. In a step new parts stand out and are drawn away from where they go; follow the thin lines to their place. Left, right, front and back are those of the finished piece, seen from the front. Drawings are not for measuring: take sizes from the figures.
scale = Was this page printed true to size?
scale-lead = Print at 100 %, without “fit to page”, and measure the square.
scale-screen = Nothing here is true to size
scale-screen-lead = This edition is for a screen. It tells all sizes in figures; no drawing in it has a scale, and none is for measuring.

## Signal words and boxes

signal = { $word ->
    [danger] DANGER
    [warning] WARNING
    [caution] CAUTION
   *[notice] NOTICE
}
occasion-cutting = when you cut the parts
occasion-use = when the piece is in use
occasion-always = all the time
again = Before you start, again: { $names } (see { $place }).

## Contents

contents = Contents

## What to buy

buy = What to buy
buy-wood = Sheets, boards and bars
buy-material = Material
buy-buy = Buy
buy-each = Each
buy-price = Price
buy-on-hand = On hand already: { $title }, { $stock } of { $size }.
buy-more-boards = { $title }: { $count ->
    [one] { $count } board more is
   *[other] { $count } boards more are
} bought than are laid out, for knots, splits and twist.
buy-used = Counted from the cutting layouts: { $used }. Measure the thickness of what you buy before you cut any channel: sheets are often thinner than their name.
buy-used-of = { $percent } % of { $title } is used
buy-lumber = Lumber of random widths
buy-lumber-head = Lumber
buy-or-m2 = or m²
buy-or-board-feet = or board feet
buy-a-unit = { $price } a { $unit ->
    [cubic_metre] m³
    [square_metre] m²
   *[board_foot] board foot
}
buy-lumber-lead = Measured as sawn, what is lost included: { $waste }. Take the cut list along and lay the parts out on the boards with chalk, the longest first, clear of knots, splits and pith. A board foot is 144 cubic inches.
buy-waste-of = { $percent } % more than the blanks of { $title }
buy-hardware = Hardware
buy-item = Item
buy-needed = Needed
buy-left-over = Left over
buy-packs-of = { $packs ->
    [one] { $packs } pack
   *[other] { $packs } packs
} of { $pack }
buy-packs = { $packs ->
    [one] { $packs } pack
   *[other] { $packs } packs
}
buy-rolls = { $packs ->
    [one] { $packs } roll
   *[other] { $packs } rolls
}
buy-supplies = Glue and finish
buy-supply = Supply
buy-coats = Coats
buy-for = For, each coat counted
buy-supplies-lead = Packs are counted by what their makers say they cover, and a tenth more.
buy-together = Together: <strong>{ $total }</strong>.
buy-together-without = Together: <strong>{ $total }</strong>, not counting { $lines ->
    [one] { $lines } line
   *[other] { $lines } lines
} without a price.
buy-prices = Prices are the author’s and change.
buy-prices-without-supplies = Prices are the author’s and change. Glue, abrasives and finish are not counted.

## Tools

tools = Tools
tools-to = To
tools-tool = Tool
tools-for = For
tools-purpose = { $purpose ->
    [measure] measure and mark
    [saw] saw
    [shape] plane and file
    [drill] drill
    [rout] rout
    [join] put together
    [clamp] glue and clamp
    [finish] sand and finish
    [protect] stay safe
   *[other] and
}
tools-cutting = cutting
tools-finishing = finishing

## Cut list

cut-list = Cut list
cut-list-lead = Finished sizes. Parts between two lines are ripped on one setting of the fence; cut the longest first.
cut-cut = Cut
cut-part = Part
cut-length = Length
cut-width = Width
cut-thick = Thick
cut-bands = edge band on { $sides }
cut-from = from { $count ->
    [one] sheet
   *[other] sheets
} { $numbers }
cut-blank-layers = { $count ->
    [one] { $count } blank
   *[other] { $count } blanks
}: glue up { $layers } layers each, then trim
cut-blank-band = saw to this size, then stick the band on
cut-blank-lumber = saw to this size, then plane and trim
cut-blank-trim = saw oversize, then trim
cut-to-fit = Cut to fit
cut-to-fit-lead = Every size is rounded by itself. In these rows of parts the printed figures make a little more or less than the figure of the whole: work in the other system, or cut the part named last of all and to the opening it goes into.
cut-in-a-row = In a row
cut-as-long-as = As long as
cut-figures-make = Their figures make
cut-figure-whole = Figure of the whole
cut-fit = Fit
cut-less-let-in = less what is let in
cut-beside-them = { $label } beside them
cut-mark = Mark every part with its letter, its face and its top as soon as it is cut, on a side that will be hidden.

## Cutting layouts

layouts = Cutting layouts
layouts-lead = Trim first; every cut runs from edge to edge. Make all the cuts you can on one setting before you move it: its number stands on them.
layouts-notice = A saw tears the face where its teeth leave the wood. Table saw, mitre saw and hand saw: the better face up. Hand-held circular saw: the better face down.
layouts-on-hand = { $count ->
    [one] { $count } offcut on hand
   *[other] { $count } offcuts on hand
}
layouts-nothing-bought = { $stock }; nothing is bought.
layouts-at-least-cost = { $stock }, { $cost }; at least { $least } is needed whatever the layout.
layouts-alone = From { $size } alone: { $count }, { $cost }.
layouts-at-least = { $stock }; at least { $least ->
    [one] { $least } is
   *[other] { $least } are
} needed.
layouts-one = { $form ->
    [sheet] Sheet
    [board] Board
   *[bar] Bar
} { $number } of { $count }
layouts-alike = { $form ->
    [sheet] Sheet
    [board] Board
   *[bar] Bar
} { $number } to { $last } of { $count }, cut alike
layouts-from-hand = Offcut on hand, { $size }
layouts-kerf = { $size }; saw cut { $kerf }
layouts-trim-edges = trim { $trim } off every edge
layouts-trim-ends = trim { $trim } off both ends
layouts-figure = Cutting layout { $number } of { $title }: { $parts }
layouts-caption = The double arrow shows the grain. Grey parts are cut out; dotted lines show what is trimmed off first.
layouts-gives = Gives { $parts }.
layouts-each-gives = Each gives { $parts }.
layouts-grain-runs = The grain runs on over { $parts }: they lie side by side in that order. Mark it before you part them.
layouts-rip = Rip, fence at { $at }: { $cuts ->
    [one] { $cuts } cut
   *[other] { $cuts } cuts
}
layouts-crosscut = Crosscut, stop at { $at }: { $cuts ->
    [one] { $cuts } cut
   *[other] { $cuts } cuts
}
layouts-left-over = Left over: { $offcuts }.

## Part drawings

parts = Part drawings
parts-lead = For every part that is more than its three sizes. Numbers in boxes stand in the table below each drawing; places are measured from the foot, which is the left end, and from the other side the table names. Sizes count, not the drawing.
parts-drawn = { $pieces } as drawn
parts-drawn-and-mirrored = { $pieces } as drawn, { $mirrored } as its mirror image
parts-figure = Drawing of { $title } { $label } with its sizes; what is cut into it stands in the table
parts-section-figure = Section { $letter } of { $title } { $label }
parts-template = A full-size template of its { $side ->
    [foot] foot
    [head] head
    [near] near edge
    [far] far edge
    [back] back
   *[face] face
} is at the end of the plan.
parts-number = No.
parts-cut = Cut
parts-size = Ø, size
parts-depth = Depth
parts-from = From
parts-through = through
parts-pocket-holes = { $count ->
    [one] pocket hole
   *[other] { $count } pocket holes
} in the { $side }, out at the { $out }, pilot { $pilot }
parts-edge-shape = { $kind ->
    [round-over] round-over
   *[chamfer] chamfer
} between { $one } and { $other }
parts-notches = { $count ->
    [one] notch
   *[other] { $count } notches
}
parts-end-cut = { $kind ->
    [mitre] mitre
   *[bevel] bevel
} at the { $side }, { $angle } from square, long at the { $long }
parts-taper = taper of the { $side }, most at the { $most }, { $angle }
parts-spline-slot = slot for a spline in the slant of the { $side }, middle { $inner } from its inner edge
parts-spline-slot-frame = slot for a spline along the slant of the { $side }, in the middle of the thickness
parts-tenon = tenon in the middle of the { $side }, { $length } long
parts-cuts = { $kind ->
    [hole] { $count ->
        [one] hole
       *[other] { $count } holes
    }
    [countersunk-hole] { $count ->
        [one] countersunk hole
       *[other] { $count } countersunk holes
    }
    [dado] { $count ->
        [one] dado
       *[other] { $count } dadoes
    }
    [groove] { $count ->
        [one] groove
       *[other] { $count } grooves
    }
    [rabbet] { $count ->
        [one] rabbet
       *[other] { $count } rabbets
    }
    [mortise] { $count ->
        [one] mortise
       *[other] { $count } mortises
    }
    [lap] { $count ->
        [one] lap
       *[other] { $count } laps
    }
   *[recess] { $count ->
        [one] recess
       *[other] { $count } recesses
    }
} in the { $side }
parts-mouth = { $cut } to { $mouth }
parts-mouth-deep = { $cut }, mouth { $mouth }, { $depth } deep
parts-grid-row = { $cut }, { $across } by { $along }, pitch { $pitch }; the first one:
parts-grid = { $cut }, { $across } by { $along }, pitch { $pitch } by { $other-pitch }; the first one:
parts-grid-proof = Grid { $numbers }: from corner hole to corner hole { $diagonal } either way.
parts-grid-proof-triangle = Grid { $numbers }: from corner hole to corner hole { $diagonal } either way. To prove it square, count { $steps } holes on from a corner along one edge and { $other-steps } along the other ({ $leg } and { $other-leg }): from there to there it is { $long }.
parts-outline = Outline, from foot and near: { $corners }.
parts-arc-to = arc of radius { $radius } to { $place }
parts-setting-out = Setting out grid { $numbers } of { $title } { $label }
parts-setting-out-figure = Setting-out drawing of grid { $numbers } in { $title } { $label }
parts-setting-out-lead = Mark the first row and the first column from the two heavy edges, { $one } and { $other }, without moving the rule between holes. Then prove it before you drill.
parts-setting-out-triangle = The triangle is { $steps } by { $other-steps } pitches, its sides as three, four and five.
parts-setting-out-square = The grid is square where the long side of the triangle is { $long } and both diagonals of the whole grid are { $diagonal }.
parts-setting-out-square-alone = The grid is square where the long side of the triangle is { $long } and the grid’s other diagonal is the same.

## Hardware and drilling

hardware = Hardware
hardware-item = Item
hardware-pieces = Pieces
hardware-steps = Steps
hardware-pilot = pilot hole { $size }
hardware-clearance = clearance hole { $size }
hardware-lead = Counted from the joints of the build. Pilot holes are for average wood: try on an off-cut first.
drilling = Drilling
drilling-lead = Each line is one bit with one setting of the depth stop. Places stand in the part drawings.
drilling-bit = Bit, { $unit } ({ $other })
drilling-depth = Depth
drilling-for = For
drilling-where = Where
drilling-holes = Holes
drilling-stepped = stepped Ø { $size }
drilling-plain = Ø { $size }
drilling-by-jig = by the jig
drilling-purpose = { $purpose ->
    [screw] screws to pass
    [bite] screws to bite
    [dowel] dowels
    [bolt] bolts to pass
    [insert] threaded inserts
    [pin] shelf pins
    [magnet] magnets
    [pocket] pocket screws
    [mouth] wide mouths
   *[plain] as drawn
}
drilling-place = { $part }, { $side }: { $each }
drilling-place-pieces = { $part }, { $side }: { $each } × { $pieces } pieces

## The whole piece

whole = The whole piece
whole-finished = The finished piece
whole-finished-figure = The finished piece from the front and above
whole-views = From the front, from the right side and from above
whole-views-figure = Front view, side view and top view with overall sizes
whole-apart = All parts, drawn apart; letters as in the { $place }
whole-apart-figure = All parts drawn apart, each with its letter
whole-cut-list = cut list

## Steps

steps = Steps
steps-lead = { $count ->
    [one] { $count } step
   *[other] { $count } steps
}. Do them in order: read a step to its end and lay out what it needs before you begin, and tick its checks before you go on.
steps-lead-time = { $count ->
    [one] { $count } step
   *[other] { $count } steps
}, about { $time }. Do them in order: read a step to its end and lay out what it needs before you begin, and tick its checks before you go on.
step-title = Step { $number }: { $title }
step-make-alike = make { $count }, all alike. The picture shows one; the table and the time are for all of them.
step-make-mirrored = make { $count }, { $mirrored ->
    [one] { $mirrored } of them as its mirror image
   *[other] { $mirrored } of them as mirror images
}. The picture shows one; the table and the time are for all of them.
step-make-one = put together by itself, before it comes into the whole.
step-for-this = For this step
step-take = Take
step-whole-from = { $title } from step { $step }
step-time = <strong>Time:</strong> { $time }.
step-supplies = <strong>Supplies:</strong> { $supplies }.
step-tools = <strong>Tools:</strong> { $tools }.
step-check = Check before you go on:

## Final checks

final = Final checks
final-lead = Before the piece goes into use, measure and try:
final-size = Width × depth × height: { $size }. A few millimetres more or less in the whole are no fault, a lean is.
final-stands = It stands or hangs without rocking, and the diagonals of its open sides are equal.
final-joints = Every joint is closed, and no glue, splinter or sharp edge is where hands go.
final-screws = Every screw is tight and its head is not proud.
final-left-over = Left over from whole packs: { $items }. If more are left, one was forgotten.
final-removable = { $part } can be taken out and put back by hand.
final-load = { $part } carries { $mass }: load it little by little.
final-load-middle = { $part } carries { $mass } in the middle: load it little by little.
final-bends = It bends about { $first } at first; after years under the load it must be no more than { $limit }.
final-nothing-gives = Loaded little by little up to what it is meant for, nothing bends in a way you can see, cracks or gives.
final-meant = Meant to be so
final-meant-lead = The check of this plan asks about the following; its author has decided.

## Figures of the piece

figures = Figures of the piece
figures-lead = Reckoned with average figures of clear wood, without hardware. Your boards differ; the order of size does not.
figures-loads = What it carries
figures-piece = Piece
figures-load = Load
figures-span = Span, { $unit } ({ $other })
figures-at-first = Bends at first
figures-lasting = After years
figures-limit = At most
figures-in-middle = { $mass }, in the middle
figures-supported = lies on the whole of what is below it
figures-no-species = not reckoned: the species is not stated
figures-movement = How wood moves over the year
figures-across = Across the grain, { $unit }
figures-moves = Moves
figures-moisture = Between { $dry } % and { $damp } % moisture in the wood. Along the grain wood hardly moves.
figures-mass = What it weighs
figures-one = One
figures-all = All
figures-weighs = The whole weighs about <strong>{ $mass }</strong>.
figures-centre = Its centre of mass is { $left } from the left, { $front } from the front and { $high } high.
figures-standing = Empty and standing free it tips most easily to the { $towards }, by itself from { $degrees }° on; a pull of { $pull } at its upper front edge tips it forward.
figures-surface = All surfaces together are { $surface }, what finish is bought for.
figures-surface-glue = All surfaces together are { $surface }, what finish is bought for; faces to be glued are { $glue }.

## Options

options = Options
options-lead = This plan is made for one choice of each. What another choice changes is told below, all others staying as they are; the steps that differ are in the plan made for that choice.
options-instead = Instead: { $title }
options-same = Changes no part, nothing to buy and no tool.
options-left-out = left out ({ $before })
options-more-of = { $after } more, of { $material }
options-otherwise = { $after }, cut or drilled otherwise
options-replaced = { $after } instead of { $before }
options-replaced-of = { $after } of { $material } instead of { $before }
options-hardware-more = { $after } more
options-hardware-none = none of the { $before }
options-hardware = { $after } instead of { $before }
options-more-tools = Tools it takes as well: { $tools }.
options-fewer-tools = Tools it does without: { $tools }.
options-cost-more = Material and hardware: { $by } more.
options-cost-less = Material and hardware: { $by } less.
options-mass-more = Mass: about { $by } more.
options-mass-less = Mass: about { $by } less.
options-time-more = Time: { $by } more.
options-time-less = Time: { $by } less.

## Revisions

revisions = Revisions
revisions-mark = Mark
revisions-date = Date
revisions-note = What changed

## Terms and measures

terms = Terms and measures
term-blank = Blank
term-blank-is = A piece cut larger than the finished part, to be trimmed.
term-crosscut = Crosscut, rip
term-crosscut-is = A cut across the length of a sheet or board, and one along it.
term-dado = Dado, groove
term-dado-is = A channel across the grain, and one along it.
term-face = Face, back
term-face-is = The two broad sides of a part; the face is the one the plan measures from.
term-grain = Grain
term-grain-is = The direction of the wood’s fibres; of a sheet, that of its outer layers.
term-kerf = Kerf
term-kerf-is = The width of the saw cut, lost as dust.
term-mirrored = Mirrored
term-mirrored-is = Made as the mirror image of the drawing, like a left and a right hand.
term-pilot = Pilot hole
term-pilot-is = A hole for a screw to bite in without splitting the wood.
term-rabbet = Rabbet
term-rabbet-is = A step along an edge.
terms-units = 1 in is exactly 25.4 mm. 1 ft is 12 in. 1 lb is 0.4536 kg.

## The sheet for those who own an earlier plan

errata-title = Corrections: { $title }
errata-running = { $title }: { $before } to { $after }
errata-revision = revision { $mark } of { $date }
errata-no-revision = the plan without a revision
errata-lead = For those who own { $before }: { $after } takes its place. Keep this sheet with your plan; where both differ, this sheet is right.
errata-same = What is built, and how, is the same in both. There is nothing to do.
errata-why = What changed, and why
errata-new-hazards = <strong>New in the chapter “Read first”: { $hazards }.</strong> Read it in the later plan before you go on.
errata-cut-already = Parts that are cut already
errata-all-serve = All parts serve as they are.
errata-others-serve = Every part that is not named here serves as it is.
errata-fate = { $fate ->
    [remake] Make anew
    [trim] Cut to size
    [rework] Cut or drill further
    [new] New parts
    [no_longer] Not needed any more
   *[serves] Serve as they are
}
errata-advice = { $fate ->
    [remake] What was cut by the earlier plan does not serve: put it aside for something else.
    [trim] What was cut by the earlier plan is larger: cut it at the head and at the far edge, so that holes and grooves stay where they are measured from, and then check it against its new drawing.
    [rework] What was cut by the earlier plan serves; its new drawing shows what is still to be cut or drilled.
    [new] The earlier plan did not have these.
    [no_longer] The later plan does without these.
   *[serves] Nothing but the name, the letter or the number of these is other than it was.
}
errata-other = What is other
errata-was-called = was { $part }
errata-material = of { $after }, was of { $before }
errata-grain = { $after }, was { $before }
errata-pieces = { $after } pieces, were { $before }
errata-cut-otherwise = other holes, grooves or shape: see its drawing
errata-of = of { $material }
errata-was = was
errata-goods = To buy, and left over
errata-buy-more = Buy { $by } more: { $title } ({ $count } in all).
errata-left-over = { $by } left over: { $title } ({ $count } are used).
errata-cost = Material and hardware come to { $after }, were { $before }.
errata-mass = It weighs about { $after }, was { $before }.
errata-joints = Joints and places
errata-joined = { $one } and { $other }: { $after }
errata-not-joined = { $one } and { $other }: not joined any more
errata-joined-was = { $joined }, was { $before }.
errata-joined-new = { $joined }, were not joined.
joint = { $kind ->
    [screws] screws
    [pocket_screws] pocket screws
    [dado] dado
    [groove] groove
    [rabbet] rabbet
    [dowels] dowels
    [loose_tenons] loose tenons
    [mortise_and_tenon] mortise and tenon
    [half_lap] half lap
    [box_joint] box joint
    [mitre] mitre
    [tongue_and_groove] tongue and groove
    [lamination] lamination
    [bolts] bolts
    [nails] nails
    [hinges] hinges
    [runners] runners
    [strips] strips
    [shelf_pins] shelf pins
    [magnets] magnets
   *[glue] glue
}
joint-with = { $joint } with { $hardware }
joint-glued = { $joint }, glued
joint-dry = { $joint }, dry
errata-moved = { $part }: { $ways }.
errata-farther = { $by } farther to the { $towards }
errata-steps = Steps that read otherwise
errata-was-step = { $title } (was step { $number })
errata-step-out = This step is left out.
errata-step-new = This step is new: follow the later plan.
errata-step-called = It was called “{ $title }”.
errata-comes-in = Comes in here: { $parts }.
errata-no-longer-in = Comes in no longer: { $parts }.
errata-text-was = Was: { $text }
errata-text-now = Now: { $text }
errata-choices = New to choose
errata-fewer-choices = No longer to choose: { $choices }.
errata-fewer-hazards = No longer in the chapter “Read first”: { $hazards }.

## The page of a library

library = Library
library-version = Version { $version }
library-language = language { $language }
library-lead = Names in bold are what a plan imports. Drawings are made with the values of the last column; a plan gives its own.
library-wholes = Sub-assemblies
library-as-drawn = as drawn { $size }
library-overview-figure = { $title }, finished
library-exploded-figure = { $title }, its parts drawn apart
library-given = Is given
library-kind = Kind
library-preset = If not given
library-range = From … to
library-shown = As drawn
library-part = Part
library-pieces = Pieces
library-from = From
library-materials = Materials
library-name = Name
library-called = Is called in the plan
library-thick = Thick
library-figures-of = Figures of
library-hardware = Hardware
library-supplies = Glue and finish

## Full-size templates

full-size = Full-size templates
full-size-lead = What has a curve or many holes is quicker laid out with paper than with a rule. Paste these sheets on the wood and cut along the thick line.
full-size-on-screen = The sheets that follow are no pages for a screen: print them on paper of the size that the table tells.
full-size-caution = Print at 100 %, without “fit to page”, and measure the square on every sheet before you cut: 100 mm on the solid one, 4 in on the dashed one. A print that is two per cent small makes a part that does not fit.
full-size-print = Print the sheets at 100 % (“actual size”).
full-size-measure = Measure the square on each sheet in both directions. If one is off, print that sheet again.
full-size-join = Where there are several sheets: cut one off along its dashed line, lay it over the next so that rings and crosses meet, and tape it. The map at the foot tells where a sheet belongs; sheets that are crossed out there are empty and not printed.
full-size-paste = Paste the paper on the wood with the grain as its arrow says, prick the middles of holes through, and cut along the thick line. Thin lines are edges of what is cut into the part; dash-dotted lines are its middles.
full-size-part = Part
full-size-side = Side
full-size-size = Size
full-size-sheets = Sheets
full-size-one-sheet = one sheet of { $paper }
full-size-sheets-of = { $count ->
    [one] { $count } sheet of { $paper }
   *[other] { $count } sheets of { $paper }
}: { $rows } × { $columns }
full-size-left-out = less { $count } that { $count ->
    [one] is
   *[other] are
} empty
full-size-of = Template of { $title } { $label }, { $side ->
    [foot] foot
    [head] head
    [near] near edge
    [far] far edge
    [back] back
   *[face] face
}
full-size-figure = Full-size template of { $title } { $label }
full-size-figure-sheet = Full-size template of { $title } { $label }, row { $row }, column { $column }

## Plain words: what the plan says of hazards
## A place `mass` holds a figure with its unit in both systems, `small` and `planed` parts, every other one a length.

statement = This plan is general information. Read and follow the manual of each tool, adhesive and finish, and the rules and building codes where you live. Guards shown removed are for clarity only. Work on electricity, gas, structure or fire separation belongs to a licensed person. Strength and stability checks here use average wood data; test the finished piece before use, and do not use it for loads, heights or users the plan does not name.

caution-angled-cuts = saw set to an angle
caution-angled-cuts-hazard = Work that creeps along the fence, and a tilted blade under the hand.
caution-angled-cuts-consequence = The blade reaches the hand, or catches the point and throws it.
caution-angled-cuts-avoidance = Clamp the work to the fence or the mitre gauge; keep both hands well clear on the side away from the tilt. Check the path of the blade with the power off. Never trap the off-cut between blade and fence, and let the blade stop before you take it away.
caution-childrens-use = use by children
caution-childrens-use-hazard = Children climb, put things into their mouths, and get stuck.
caution-childrens-use-consequence = They can choke, be caught by head or fingers, or fall.
caution-childrens-use-avoidance = Make no gap for fingers but under { $narrow } or from { $wide } to { $widest }, and no opening from { $small } to { $large }, which catches a head. Round all edges, leave nothing small that comes off, and use a finish whose maker says it is safe for children’s goods. The rules where you live go first.
caution-chiselling = chisel
caution-chiselling-hazard = A chisel slips out of the cut.
caution-chiselling-consequence = It goes deep into whatever is in front of it, most often a hand.
caution-chiselling-avoidance = Clamp the work. Keep both hands behind the edge and cut away from the body. Keep the edge sharp: a blunt one needs force and slips.
caution-crosscutting-boards = saw for cutting to length
caution-crosscutting-boards-hazard = A hand in the path of the saw when boards are cut to length.
caution-crosscutting-boards-consequence = The blade cuts to the bone, and a loose off-cut is thrown.
caution-crosscutting-boards-avoidance = Hold the board against the fence, both hands well clear and never crossed. Clamp short pieces. When the cut is through, let the blade stop before you lift it.
caution-curves = jigsaw or band saw
caution-curves-hazard = Fingers near the blade when outlines, notches, tapers and corners are sawn.
caution-curves-consequence = The blade cuts deep, and a bent one breaks.
caution-curves-avoidance = Clamp the work for a jigsaw and keep the other hand off its underside. On a band saw set the guide just over the work, make relief cuts first, and do not back out of a curve while the blade runs.
caution-drilling = drill
caution-drilling-hazard = Work that spins with the drill, and chips that fly.
caution-drilling-consequence = Hands and wrists are struck or cut, eyes are hurt.
caution-drilling-avoidance = Clamp the work on a backing board that the bit may run into, and set a depth stop. Wear no gloves, loose sleeves or open hair near a turning bit.
caution-driving-screws = driving screws
caution-driving-screws-hazard = A driver bit that slips, and a screw point where a hand holds the parts.
caution-driving-screws-consequence = Point or bit goes into the hand.
caution-driving-screws-avoidance = Clamp the parts instead of holding them. Keep hands away from where the points go. Bore the holes the plan gives, press straight on the screw, and set the clutch low.
caution-dust = dust
caution-dust-hazard = Fine dust from sawing, routing and sanding.
caution-dust-consequence = Breathed in for years it harms lungs and can cause cancer; in the air or in a bag it can burn.
caution-dust-avoidance = Extract at the machine, wear a mask that seals, sand outdoors or with suction. Vacuum, do not sweep or blow. Empty the collector away from sparks. Never sand old paint or treated wood of unknown kind.
caution-finishing = finish
caution-finishing-hazard = Vapour of finish burns and harms lungs.
caution-finishing-consequence = A spark or a pilot flame lights it.
caution-finishing-avoidance = Air the room, and keep flames and sparks away. Follow the label, also for what you throw away.
caution-finishing-oil-hazard = Rags with oil heat up by themselves, and vapour of finish burns.
caution-finishing-oil-consequence = A heap of oily rags can be on fire within hours.
caution-finishing-oil-avoidance = Spread used rags flat in the open until they are hard, or keep them under water in a closed metal can. Air the room, and keep flames and sparks away. Follow the label.
caution-food-contact = contact with food
caution-food-contact-hazard = Not every wood, glue and finish is fit for food.
caution-food-contact-consequence = Taste, stains or harmful traces go into what is eaten.
caution-food-contact-avoidance = Take close-grained wood, and glue and finish whose makers state that they are fit for food once cured. Let them cure as long as the label says.
caution-gluing = glue and clamps
caution-gluing-hazard = Glue on skin and in eyes, and fingers under clamps.
caution-gluing-consequence = Some glues irritate, cause allergies or bond skin; clamps pinch.
caution-gluing-avoidance = Read the label, air the room, and wear gloves for epoxy, polyurethane and instant glue. Put everything together dry and clamped first.
caution-heavy-piece = weight of the piece
caution-heavy-piece-hazard = The finished piece weighs about { $mass }.
caution-heavy-piece-consequence = It strains backs and crushes feet and fingers.
caution-heavy-piece-avoidance = Turn, lift and carry it with two people, and build it close to where it will stand.
caution-heavy-sheet = heavy sheets
caution-heavy-sheet-hazard = A full sheet weighs about { $mass }.
caution-heavy-sheet-consequence = It strains backs, crushes fingers and topples from a wall.
caution-heavy-sheet-avoidance = Carry it with two people or a panel carrier, or have the first cuts made where you buy it. Store sheets flat. Take carrying gloves off before you saw.
caution-large-bits = large bits
caution-large-bits-hazard = Bits of up to { $largest } turn the work with them.
caution-large-bits-consequence = A bit that grabs breaks a wrist or throws the work.
caution-large-bits-avoidance = Use a drill stand or a drill with a side handle, low speed and clamped work alone. Back the work where the bit comes out, and lift the bit often to clear chips.
caution-magnets = strong magnets
caution-magnets-hazard = Small strong magnets that come loose are swallowed by children.
caution-magnets-consequence = Two of them pinch the gut between them, which can kill.
caution-magnets-avoidance = Glue each magnet in with epoxy, below the surface, and pull at it once the glue is hard. Keep spare ones away from children and from heart pacemakers.
caution-nailing = nails
caution-nailing-hazard = A nail turns aside in the grain and comes out where it should not.
caution-nailing-consequence = It goes through the hand that holds the work.
caution-nailing-avoidance = Clamp the work instead of holding it; no hand nearer than { $hand-clear } to a nailer’s nose. Use its single-shot trigger, keep it pointed at the work, and cut off air or battery before you clear a jam.
caution-narrow-strips = narrow strips at the blade
caution-narrow-strips-hazard = Ripping strips down to { $narrowest } wide.
caution-narrow-strips-consequence = The hand that guides a narrow strip is drawn into the blade.
caution-narrow-strips-avoidance = Use a push stick or push block where a hand would pass within { $hand-from-blade } of the blade. Where you can, let the narrow strip fall on the side away from the fence, or clamp a straight edge and use a hand-held saw. Stand out of line with the strip.
caution-planing = planer
caution-planing-hazard = Cutters of the planer, when you thin { $planed }.
caution-planing-consequence = Short stock is thrown or drawn in, and the hand with it.
caution-planing-avoidance = Plane no piece shorter than { $shortest } or than the maker allows: plane the whole board first and cut it up after. Use push blocks, take thin cuts, and look for nails and loose knots before.
caution-pocket-holes = pocket-hole bit
caution-pocket-holes-hazard = The stepped bit grabs in a slanted hole and comes near the end of the part.
caution-pocket-holes-consequence = The jig twists in the hand, and the bit cuts what lies behind the part.
caution-pocket-holes-avoidance = Clamp jig and part together. Set the stop collar on a scrap of the same thickness first. Keep hands off the end the screw will come out of, and drill with the bit at full speed before it touches.
caution-routing = router
caution-routing-hazard = The router bit grabs when it is fed the wrong way or too deep.
caution-routing-consequence = The machine jumps, the bit breaks or cuts the hand that holds the work.
caution-routing-avoidance = Clamp the work and its fence. Feed against the turning of the bit, in passes of at most { $deepest-pass }. Put the shank in the collet for three quarters of its length and tighten it well; run large bits slowly. Unplug before you change a bit.
caution-sawing-sheets = saw blade and kickback
caution-sawing-sheets-hazard = Kickback and contact with the blade when sheets are sawn.
caution-sawing-sheets-consequence = A sheet that pinches the blade is thrown at you; a blade takes fingers in an instant.
caution-sawing-sheets-avoidance = Keep riving knife and guard on. Support both sides so that the kerf cannot close; set the blade a little deeper than the sheet. Stand beside the line of the blade, use a push stick, and let the blade stop before you clear anything away.
caution-small-pieces = small pieces
caution-small-pieces-hazard = Small pieces near a turning blade or bit: { $small }.
caution-small-pieces-consequence = A small piece tips, is caught and pulls the hand in after it.
caution-small-pieces-avoidance = Machine edges, channels and holes while the piece is still part of a longer strip, at least { $safe-length } long, and cut it off last. Clamp what remains or hold it in a jig, never by hand.
caution-splines = slots across mitres
caution-splines-hazard = A mitred end or corner tips while its slot is cut.
caution-splines-consequence = The blade grabs it, throws it and takes the hand along.
caution-splines-avoidance = Cut the slots with the end or corner clamped in a jig that runs along the fence, never held by hand. Keep fingers out of the path of the blade, also where it comes out.
caution-tip-over = tipping over
caution-tip-over-hazard = A piece { $height } high and { $depth } deep can tip over.
caution-tip-over-consequence = Falling furniture kills small children who climb it or pull at it.
caution-tip-over-avoidance = Fix it to the structure of the wall, not to plasterboard alone, with an anchor made for that wall, before anything is put in it. Keep heavy things low and tempting things off the top.
caution-wall-fixing = fixing to the wall
caution-wall-fixing-hazard = A fixing that the wall does not hold, and cables and pipes in it.
caution-wall-fixing-consequence = The piece falls on someone; a drill in a cable kills.
caution-wall-fixing-avoidance = Find studs, cables and pipes first. Use fixings made for this wall that hold at least four times what hangs on them. In doubt ask someone licensed.
caution-wall-fixing-avoidance-mass = Find studs, cables and pipes first. Use fixings made for this wall that hold at least four times what hangs on them: for the empty piece alone { $mass }. In doubt ask someone licensed.

## Plain words: tools

tool-measuring = Tape measure, square, marking knife and pencil
tool-sheet-saw = Track saw, or table saw with a helper, for sheets
tool-crosscutting = Mitre saw or hand saw, with a stop for equal lengths
tool-ripping = Table saw or band saw, to rip to width
tool-angled-saw = Mitre saw, or table saw with a tilting blade
tool-tenon-saw = Tenon saw, or band saw with fence and stop
tool-curve-saw = Jigsaw or band saw
tool-planer = Thickness planer or hand plane
tool-chisel = Sharp bench chisel, to trim shoulders
tool-files = Rasp or file, for round corners
tool-drill = Drill with depth stop
tool-bit = Drill bit, { $diameter }
tool-flat-bit = Flat-bottomed bit or hole saw, { $diameter }
tool-countersink = Countersink bit, 90°
tool-pocket-jig = Pocket-hole jig
tool-stepped-bit = Pocket-hole stepped bit, { $diameter }, with stop collar
tool-router = Router with guide fence
tool-channel-bit = Straight router bit, { $width } wide or less
tool-mortise-bit = Mortise bit, { $width } wide
tool-round-over-bit = Round-over bit, radius { $radius }
tool-chamfer-bit = Chamfer bit, 45°
tool-flush-saw = Flush-cut saw, to trim plugs
tool-slot-jig = Jig that holds a corner at the table saw or router, to slot mitres
tool-hammer = Hammer and nail punch, or nailer
tool-spanner = Spanner or hex key that fits the bolts
tool-insert-driver = Driver for threaded inserts
tool-wall-finder = Finder for studs, cables and pipes
tool-driver = Screwdriver, or drill driver with clutch
tool-clamps-opening = Clamps that open { $opening } or more
tool-clamps = Clamps
tool-sanding = Sanding block or sander, grit 120 and 180
tool-extraction = Dust extraction

## Plain words: what safety signs mean

sign-M002 = Read the instruction manual
sign-M003 = Wear ear protection
sign-M004 = Wear eye protection
sign-M008 = Wear safety footwear
sign-M009 = Wear protective gloves
sign-M016 = Wear a mask
sign-P003 = No open flame
sign-P028 = Do not wear gloves
sign-W012 = Electricity
sign-W024 = Crushing of hands

## Plain words: pages

page-of = page { $number } of { $count }
page-info = GOOD TO KNOW
page-metric-square = Solid square: 100 mm, ticks every 10 mm
page-inch-square = Dashed square: 4 in, ticks every 1⁄2 in
page-scale-advice = Lay a rule along both edges from the lower left corner. If the print is not exact, print again at 100 % (“actual size”) and measure no drawing of this print.

## Plain words: the web edition
## A button says what it does; ticks are the boxes of finished steps, cut parts, goods bought and checks.

web-skip = Skip to the plan
web-done = Done
web-done-step = Done: { $what }
web-cut = Cut: { $what }
web-bought = Bought: { $what }
web-changed = Changed:
web-left-out = Something was left out here.
web-larger = Larger
web-larger-drawing = Larger: { $what }
web-ticks-kept = Ticks are kept in this browser, for this revision of the plan.
web-clear = Clear all ticks
web-clear-ask = Clear all ticks of this plan?

## Plain words: drawings
## The fields of a title block are those of ISO 7200.

## Plain words: what figures show

figure-size = { $figure }: { $width } wide, { $depth } deep, { $height } high
figure-parts = { $figure }: { $parts }
figure-part = { $title } { $label } with its sizes
figure-setting-out = { $title }: a grid of holes, set out from { $one } and { $other }
figure-layout = { $size }, cut into { $parts }
figure-so-far = the work so far
figure-step = Step { $number }, { $title }: { $what }
figure-comes = { $count ->
    [one] { $part }
   *[other] { $count } × { $part }
} { $way ->
    [left] { $count ->
        [one] comes in from the left
       *[other] come in from the left
    }
    [right] { $count ->
        [one] comes in from the right
       *[other] come in from the right
    }
    [front] { $count ->
        [one] comes in from the front
       *[other] come in from the front
    }
    [back] { $count ->
        [one] comes in from the back
       *[other] come in from the back
    }
    [top] { $count ->
        [one] comes in from above
       *[other] come in from above
    }
    [bottom] { $count ->
        [one] comes in from below
       *[other] come in from below
    }
   *[none] { $count ->
        [one] stands in its place
       *[other] stand in their places
    }
}
figure-joined = , joined to { $others } ({ $joint })

drawing-owner = Legal owner
drawing-document-type = Document type
drawing-part-drawing = Part drawing
drawing-title = Title
drawing-identification = Identification
drawing-created-by = Created by
drawing-approved-by = Approved by
drawing-revision = Rev.
drawing-date-of-issue = Date of issue
drawing-sheet = Sheet
drawing-scale = Scale { $scale }
drawing-scale-thick = Scale { $scale }, { $thickness } thick
drawing-no-scale = Not to scale
drawing-no-scale-thick = Not to scale, { $thickness } thick
drawing-sign = Safety sign { $code }: { $meaning }

## Plain words: full-size templates

template-shown = Full size, { $side } up.
template-sheet = Sheet { $short }: row { $row } of { $rows }, column { $column } of { $columns }
template-sheet-short = R{ $row } C{ $column }
template-print = Print at 100 %, without “fit to page”. Measure the square before you cut.
template-join = Cut a sheet off along its dashed line, lay it over the next one so that rings and crosses meet, and tape it. Sheets crossed out in the map are empty and not printed.
template-mirrored = { $mirrored ->
    [one] One piece is the mirror image: turn the template over for it.
   *[other] { $mirrored } pieces are mirror images: turn the template over for them.
}
template-grain = grain
