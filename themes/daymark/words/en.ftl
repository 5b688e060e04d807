# The words of the theme in English.

# Titles of pages
home-title = Owner guide
places-title = Where are you standing?
tasks-title = What do you want to do?
faults-title = What is not working?
dates-title = What is due, and when
figures-title = What lasts how long, and what fits
warnings-title = Safety notes
emergency-title = Emergency
words-title = Find it, from A to Z
about-title = About this guide
root-title = Open your owner guide

# The four ways in, and the ways that every page has
bar-label = Always here
bar-plan = Plan
bar-find = Find
bar-faults = Not working
bar-emergency = EMERGENCY
skip = Skip to the text
way-places = Where are you standing?
way-places-more = Each locker, panel and cap, side by side with its code
way-tasks = What do you want to do?
way-tasks-more = Every task, one system at a time
way-faults = What is not working?
way-faults-more = Find what you see, hear or smell
way-routines = Before you go
way-routines-more = Lists to tick off, in the right order
ways-title = Four ways in
systems-title = What is on board
guide-of = Owner guide
home-plan = The vehicle seen from above
all-pages = Everything in this guide
to-places = All places
to-tasks = All tasks
to-faults = All faults
to-dates = What is due
to-figures = All the sums
to-warnings = All safety notes
to-words = From A to Z
to-about = About this guide
other-languages = In other languages
dealer-title = Ring the dealer
dealer-email = Write to the dealer
dealer-web = The dealer’s page

# Search
search-label = Search this guide
search-such-as = Fridge, loo, red lamp…
search-button = Find
search-results = What was found
search-one = 1 result
search-many = results
search-none = Nothing found. Try another word, or tap Find to look from A to Z.
search-fails = Search does not work here. Tap Find to look from A to Z.
# Words that tell nothing in a search, words that tell of trouble, and endings that make no difference
search-small = a an the my our i me we you it its this that is are be am was to of on in at by for from with and or do does did how what where wheres when why which who there can will wont not no dont doesnt cant isnt wont keeps goes go get gets got up turn please need want help problem working work works
search-trouble = wont not no dont doesnt cant isnt stopped stops broken broke faulty fault fails failed problem stuck dead wrong trouble keeps leaking leaks blocked smells stinks
search-endings = ies ied ing es ed s e y

# On this phone
saved-title = On this phone
saved-busy = This guide is being saved on this phone. Leave the page open for a moment.
saved-whole = The whole guide is saved on this phone, and opens without a signal. Saved on
saved-photos = Photos
saved-full = This phone has no room for the guide, so you need a signal to read it. Make some room, then open the guide again.
saved-broken = The guide could not be saved yet. Open it once more where the signal is good.
saved-refused = This browser does not let the guide be saved, so you need a signal to read it. A private window is a common reason.
saved-newer = A newer guide is saved on this phone. It opens with the next page.
# How this language writes a day: a tag that browsers know
saved-locale = en-GB
saved-take-over = Open the newer guide now
saved-forget = Fetch the guide anew

# Tools
tools-title = Tools
tools-size = Size of text
tools-size-usual = Usual
tools-size-large = Large
tools-size-largest = Largest
tools-share = Share this page
tools-copied = The address of this page is copied.
tools-print = Print this page
tools-tell = Not right? Tell the dealer
tell-subject = Owner guide
tell-wrong = What is not right, or what is missing:
tell-page = Page

# Systems
system-water = Water
system-gas = Gas
system-12v = 12 V power
system-mains = Mains power
system-toilet = Toilet
system-heating = Heating
system-cooking = Cooking
system-cooling = Fridge
system-safety = Alarms and safety
system-body = Body and doors
system-vehicle = Vehicle and load

# Safety notes: signal words and what they mean (ANSI Z535.6)
signal-danger = DANGER
signal-warning = WARNING
signal-caution = CAUTION
signal-notice = NOTICE
meaning-danger = This will kill or badly injure you if you do not avoid it.
meaning-warning = This could kill or badly injure you if you do not avoid it.
meaning-caution = This could give you a minor or moderate injury if you do not avoid it.
meaning-notice = This could damage things. It does not injure people.

# Places
kind-locker = Locker
kind-panel = Panel
kind-control = Control
kind-vent = Vent
kind-inlet = Inlet
kind-cap = Cap
kind-tap = Tap
kind-appliance = Appliance
kind-alarm = Alarm
kind-exit = Way out
side-nearside = Nearside
side-offside = Offside
side-front = Front
side-rear = Rear
side-roof = Roof
side-under = Underneath
side-inside = Inside
sides-explained = The nearside is the side next to the kerb. The offside is the side next to the middle of the road.

# The plan
plan-label = Plan seen from above. Choose a place.
plan-nearside-label = The nearside, seen from outside. Choose a place.
plan-offside-label = The offside, seen from outside. Choose a place.
plan-front = Front
plan-rear = Rear
plan-nearside = Nearside
plan-offside = Offside
plan-here = you are here
plan-warning = safety note

# A place
place-code = Place
place-parts = What is here
place-where = Where this is
place-related = Goes with this place
place-notes = Read this first
place-nothing = There is nothing to do here. The parts below tell you more.
place-code-open = Open this page on another phone
place-code-picture = QR code with the address of this page
place-code-type = Point its camera at the code, or type this address:
on-this-page = On this page

# Sections by what they are
group-about = Good to know
group-controls = Switches, lamps and levers
group-tasks = What you can do
group-checks = How to tell that it works
group-faults = What is not working?
group-care = Looking after it
tips-title = From your workshop

# A part
part-where = Where it is
part-facts = What is fitted
part-figures = The sums
part-readings = Measured at the workshop
part-sources = Where the numbers come from
reading-expected = It should be {$expected}
reading-in = in range
reading-near = near the range
reading-out = out of range
parts-of = What belongs to it
tasks-of = What you can do
faults-of = What may be wrong

# Dates
dates-intro = Ask your dealer for a date in good time. A part may need it sooner if it looks worn or damaged.
dates-known = On a known day
dates-unknown = No day is known yet
dates-unknown-more = Nobody has written down when these were last done. Look for a date on the part, and ask your dealer.
dates-built = This vehicle was built in { $year }. A part may be as old as that, or older.
dates-calendar = Put these days in your calendar
dates-calendar-more = A calendar file for your phone. It reminds you in good time.
dates-today = By this phone’s date
dates-since = What was done since the handover is not known here.
date-overdue = Overdue
date-soon = Due within 60 days
date-later = Later
dates-none = Nothing on this vehicle falls due on a fixed day.
date-due = Due
date-every = Every
date-last = Last done
date-made = Made
date-until = Marked on it: last day
date-how = How
date-where = Where
date-look = Look for
date-month = { $month } { $year }
date-week = week { $week } of { $year }
date-source = Says who
action-renew = Renew
action-test = Test
action-service = Service
action-check = Check
action-clean = Clean
look-renew = A date stamped or printed on the part. Ask your dealer how old it is.
look-test = A record of the last test, in the papers of the vehicle. Without one, have it tested, or test it yourself where the guide says how.
look-service = A record of the last service, in the papers of the vehicle. Without one, ask your dealer for a date.
look-check = Nothing on the part shows it. Do it once now, and write down the day.
look-clean = Nothing on the part shows it. Do it once now, and write down the day.

# Figures: the sums over the whole vehicle
figures-intro = These sums are for this vehicle as it was fitted. They help you plan. They do not replace a scale, a meter or the plates on the parts.
figures-inputs = What goes in
figures-working = How it is worked out
figures-limits = What it leaves out
figures-source = Source
figures-jump = Sums
figures-try = Try it for your trip
figures-try-more = Move the sliders. The answers are for full tanks and a full battery at the start.
sums-gas = Gas
sums-battery = 12 V battery
sums-sun = Solar panel
sums-mains = Hook-up
sums-water = Water
sums-vehicle = Weight

sum-gas-days = How many days does the gas last?
sum-gas-regulator = How much of what the regulator passes do all burners take?
sum-gas-draw = Does the cylinder give enough?
sum-gas-cold = Below what temperature does the regulator get too little gas?
sum-gas-fill = How much gas does the tank take?
sum-gas-brim = At what temperature has 80 % of gas grown to fill the whole tank?
sum-battery-energy = What does a day take out of the battery?
sum-battery-days = How many days does the battery last?
sum-battery-hours = How many hours does a load run?
sum-battery-volts = What does the voltage say?
sum-battery-charge = How long does charging take?
sum-battery-cable = What do the cables lose?
sum-inverter = What does the inverter draw?
sum-solar-day = What does the solar panel give in a day?
sum-mains-current = What does each appliance draw?
sum-mains-together = What can run together, and what goes off first?
sum-water-days = How many days does the water last?
sum-water-mass = What does the full water tank weigh?
sum-water-dose = How much bleach disinfects the tank?
sum-water-heat = How long does hot water take?
sum-water-growth = How much water drips from the relief valve while it heats?
sum-payload = What may you load?
sum-least-payload = How much must there be at least?
sum-axles = What rests on each axle?
sum-nose = What rests on the coupling?

col-burner = Burner
col-full-power = At full power
col-hours-a-day = Each day
col-a-day = In a day
col-alone = Alone, without a pause
col-use = Use
col-gives = The cylinder gives
col-all-burners = All burners take
col-is-it = Is it enough?
col-part = Part
col-power = Power
col-load = Load
col-usable-hours = Until you should charge
col-all-hours = Until it is empty
col-rested = Rested voltage
col-means = What it says
col-cable = Cable
col-loses = Loses at most
col-fuse = Fuse
col-month = Ah a day
col-amps = At 230 V
col-band = From 216.2 to 253 V
col-pitch = Pitch
col-together = Largest sets that fit
col-off-first = With all on, switch off first
col-people = People
col-lasts = It lasts
col-bottle = Chlorine on the bottle
col-dose = Bleach
col-on = On
col-time = Time
col-load-of = Load
col-front = Front axle
col-rear = Rear axle
col-nose = Coupling
col-axle = Axle
col-sum = Together

in-mass = Gas when full
in-gas = Kind of gas
in-power = Power
in-gas-days-power = Power of all burners, spread over day and night
in-duty = Time in a day
in-draw = All burners at once
in-rating = What the regulator passes
in-cylinder = Gas in a full cylinder
in-inlet = Least pressure for the regulator
in-propane = Propane
in-butane = Butane
in-isobutane = Isobutane
in-volume = Volume
in-share = Share that may be filled
in-temperature = Temperature
in-battery-energy-power = All 12 V loads, spread over day and night
in-voltage = Voltage
in-capacity = Battery capacity
in-usable = Share to use
in-daily = Use in a day, from the loads above or as noted here
in-rated = Hours for which the capacity holds
in-current = Current
in-exponent = Peukert exponent
in-missing = Charge to put back
in-efficiency = Share that stays
in-latitude = Latitude, degrees north
in-month = Month
in-solar-day-power = Panel power
in-performance = Share of a clear sky’s sunlight that becomes charge
in-target = Strength of chlorine
in-available = Chlorine on the bottle
in-from = Cold
in-to = Hot
in-people = People
in-use = Water each person uses
in-length = Length
in-maximum = Largest allowed mass
in-running-order = Mass in running order, with driver and fuel
in-options = Fitted later
in-passengers = Passengers besides the driver

gas-days-both = {$without} without the heating, {$with} with it
word-propane = propane
word-butane = butane
word-long = for hours
word-periodic = now and then
word-short = for minutes
word-enough = enough
word-too-much = not for all burners at once
word-nothing = nothing
word-too-many = too many to list: add up the currents
word-on-gas = Gas
word-on-mains = Hook-up
word-on-both = Gas and hook-up
word-june = June
north = {$degrees}° N

charge-high = full, or nearly
charge-middle = in the middle
charge-low = low: charge soon
charge-empty = empty: charge at once
band-from = {$volts} or more
band-below = less than {$volts}
limits-volts = Only after 8 hours without load or charge, at about 20 °C. Published tables differ by 0.1 V and more, so read the band and not a percentage.
limits-volts-flat = Only after 8 hours without load or charge. A lithium battery’s voltage is so flat that 0.1 V spans 30 % of charge. A meter that counts current tells you more.

caution-regulator = With all burners at full power the regulator passes too little. The flames then burn low. Turn one burner off.
caution-butane = Butane does not come out of the cylinder near freezing. Use propane in the cold, if your regulator and appliances take it.
caution-frost = Do not charge this battery below {$frost}. It takes lasting harm.
caution-bleach = Never mix bleach with other cleaners, acid or descaler: they make a poisonous gas. Rinse the tank until the smell is gone before you drink from it.
caution-scald = Water of 60 °C scalds in seconds. Mix it with cold water at the tap.
caution-front-tank = With full tanks and all seats taken, the front axle carries {$by} more than it may.
caution-rear-tank = With full tanks and all seats taken, the rear axle carries {$by} more than it may. Drive with less water.
caution-front-luggage = With luggage up to the largest allowed mass, the front axle carries {$by} more than it may.
caution-rear-luggage = With all luggage at the back, the rear axle carries {$by} more than it may. Stow heavy things between the axles, or travel with less water.
caution-nose-tank = With full tanks, the coupling carries {$by} more than it may. Move heavy things back, over the axle.
caution-axle-tank = With full tanks, the axle carries {$by} more than it may.
caution-nose-luggage = With all luggage at the back, the coupling carries {$by} more than it may.
caution-axle-luggage = With luggage up to the largest allowed mass, the axle carries {$by} more than it may.
caution-nose-light = With all luggage at the back, the coupling is lifted. A caravan that is light at the nose snakes. Stow heavy things over the axle.
caution-maximum = Full tanks and full seats alone are {$by} over the largest allowed mass.

load-running = In running order, with what was fitted later
load-passengers = Passengers of 75 kg
load-fresh = Full fresh water
load-gas = Full gas
load-full = All of that
load-luggage = Luggage at the back, up to the largest allowed mass
load-all = With that luggage
load-limits = Limit

working-together = Currents at 230 V and full power, added up
limits-together = Heaters draw up to a tenth more where the voltage is high, motors and chargers more than their power says. Ask the site what the pitch supplies.
source-together = arithmetic; 6, 10 and 16 A pitches are common practice
source-each-uses = arithmetic; 8 to 20 l for each person and day is common practice, from memory, not confirmed
working-axles = Each load puts load × (its place − front axle) ÷ wheelbase on the rear axle, and the rest on the front axle. What stands behind the rear axle lifts the front.
working-nose = Each load puts load × (its place − coupling) ÷ (axle − coupling) on the axle, and the rest on the coupling.
limits-axles = Worked out on level ground from the places in this guide. If the maker counted water or gas in the mass in running order, less is on board. Weigh the loaded vehicle, axle by axle.
source-axles = statics; 75 kg for each passenger and the masses: Regulation (EU) 1230/2012, now (EU) 2021/535

plot-pressure = Gas pressure by outside temperature
plot-pressure-about = Two rising curves. Propane has 3.7 bar above the air at 0 °C, butane has none. With {$gas}, the regulator of this vehicle needs more than {$limit}.
mark-limit = this vehicle: {$limit}
axis-outside = outside temperature, °C
axis-pressure = pressure above the air, bar
plot-hours = Battery hours by load
plot-hours-about = Two falling curves. At a load of 10 A, the battery runs for {$hours} until you should charge it. At half the load it runs more than twice as long.
axis-load = load, A
axis-hours = hours
line-usable = until you should charge
line-empty = until it is empty
plot-solar = Solar charge by month, in fair weather
plot-solar-about = Curves that rise to June and fall to December. In the north of England it gives about {$june} a day in June, and {$december} in December.
axis-month = month
axis-charge = charge in a day, Ah

dial-people = People
dial-days = Days away
dial-outside = Outside temperature
dial-pitch = Pitch supply
dial-luggage = Luggage at the back
dial-water = Water in the fresh tank
answer-pressure = Gas pressure
answer-gas = Full gas cylinders or tanks for the days
answer-water = Fresh tanks for the days
answer-battery = Battery charges used up in the days
answer-off = With all appliances on, switch off first
answer-axles = Weight on front and rear
answer-words-low = too low for the regulator
answer-words-good = enough for the regulator
answer-words-nothing = nothing
answer-words-over = over the limit
answer-words-within = within the limits
answer-words-to = to

# Where a number comes from
from-standard = a standard
from-published = published guidance
from-computed = worked out
from-practice = common practice in the trade
from-memory = not confirmed: ask your dealer before you rely on it

# A routine
routine-steps = Step by step
routine-tick = Tick each step when it is done.
steps-ticked = Ticked
steps-of = of
steps-reset = Untick all

# Lists
tasks-intro = Choose a task. Read its safety notes before you start.
faults-intro = Choose what you see, hear or smell. If anyone may be in danger, tap EMERGENCY first.
warnings-intro = These are all the safety notes of this guide, the gravest first. Each one also stands where you need it.
words-intro = Names of parts, places and tasks, and the words that owners use for them.
letters = Letters
# The word that a list from A to Z passes over
words-article = The
system-jump = Systems

# Emergency
emergency-call = Ring 112
emergency-tel = tel:112
emergency-call-more = Ring from a safe place. It is free from any phone, all over Europe and in the UK. Do what they tell you.
emergency-list = What has happened?

# About this guide
about-covers = What this guide covers
about-covers-more = It covers this one vehicle, as it was fitted when the guide was made. It says nothing of parts that are not on board. The handbook of the base vehicle and the makers’ leaflets still apply.
about-limits = What an owner may do
about-limits-more = You may do what this guide tells you to do, in the way that it tells you. Stop when something looks, sounds or smells wrong.
about-licensed = Leave this to others
about-licensed-gas = Gas pipes, regulators, flues and the inside of gas appliances: a registered gas engineer.
about-licensed-mains = Mains wiring, sockets and the consumer unit: a qualified electrician.
about-licensed-vehicle = Brakes, steering, chassis and seat belts: a vehicle workshop.
about-local = Rules differ from country to country and from site to site. Local rules, and what the emergency services tell you, come before this guide.
about-vehicle = This vehicle
about-model = Model
about-year = Year
about-key = Key of this guide
about-address = Address
about-fingerprint = Fingerprint
about-fingerprint-more = It changes whenever anything in the guide does. Read it out when you ring, so that both of you look at the same words.
about-whose = Whose guide this is
about-hours = Hours
about-signals = What the signal words mean

# A label whose place has another code, or is no more
old-label-title = Label { $code }
old-label-moved = This label stands for a place that has another code now. Go on here:
old-label-gone = What this label stood for is no longer in this vehicle.
old-key-moved = The guide of this vehicle has another key now. Go on here:
old-key-open = Open the guide
old-key-gone = This vehicle has no guide any more
old-key-ring = A question? Ring

# The page that takes a key
root-intro = Your guide has a key of eight letters and digits. It is on the label of each locker, and on your handover papers.
root-key = Key of your guide
root-key-hint = It looks like this: 7XK2-9QHD. Capitals do not matter.
root-open = Open the guide
root-wrong = That is not a whole key. It has eight letters and digits, and no 0, 1, I, L, O or U.
root-typed = Or type this address, with your key at its end:
root-your-key = YOUR-KEY
root-help = No key to hand?

# Paper: what all documents share
paper-see = page {$page}
paper-page = Page
paper-code-alt = QR code of the address {$address}
paper-plan = The vehicle seen from above, with its places
paper-unsure = Not confirmed: ask your dealer before you rely on this number.
paper-scan = Scan it, or type the address:
paper-no-signal = No signal? This booklet says the same.
paper-sign-alt = Warning sign: a triangle with an exclamation mark
paper-tick = Box to tick

# The booklet
paper-booklet = Owner guide: {$van}
booklet-kind = Owner guide
booklet-contents = Contents
booklet-emergency-where = EMERGENCY: see the back cover
booklet-about = Before you start
booklet-safety = Safety first
booklet-safety-more = These are all the safety notes of this booklet, the gravest first. Each one also stands where you need it.
booklet-places = Where are you standing?
booklet-places-more = Find the code on the label in front of you. The page numbers tell you where to read on.
booklet-routines = Lists to tick off
booklet-routines-more = Work from top to bottom. Use a pencil, so that you can use the list again.
booklet-faults = What is not working?
booklet-faults-more = Choose what you see, hear or smell. If anyone may be in danger, turn to the back cover first.
booklet-dates = What is due, and when
booklet-index = Find it, from A to Z
booklet-notes = Your own notes
booklet-where = Where it is
booklet-notes-first = read the safety notes on these pages first
booklet-here = What is here
booklet-do = Read about it
booklet-due-unknown = not known
booklet-you-are = When you ring, say where you are: country, road or site, pitch number.
booklet-this-vehicle = This vehicle

# The handover record
paper-record = Handover record: {$van}
record-kind = Handover record
record-lead = What was shown, explained and handed over with this vehicle. Tick each line when it is done. The owner puts their initials beside it.
record-walk = What was shown, place by place
record-elsewhere = What was shown besides
record-done = Done
record-initials = Initials
record-topic = Topic
record-place = Place
record-notes = Safety notes that were read and understood
record-notes-lead = The owner initials each note after reading it. The same notes stand in the booklet and on the pages of the guide.
record-readings = What was measured on this vehicle
record-reading = Reading
record-value = Value
record-on = On
record-part = Part
record-dates = What was renewed, and what falls due
record-what = What
record-last = Last done
record-due = Next due
record-things = Keys and papers handed over
record-count = How many
record-thing-01 = Keys of the vehicle
record-thing-02 = Keys of the living-area door and the lockers
record-thing-03 = Keys of caps and of the toilet door
record-thing-04 = Spare keys and remote controls
record-thing-05 = Registration papers
record-thing-06 = Handbook of the base vehicle
record-thing-07 = Makers’ leaflets of the fitted parts
record-thing-08 = Gas check record
record-thing-09 = Mains check record
record-thing-10 = Service record
record-thing-11 = Booklet of this guide
record-thing-12 = Wheel brace, jack and towing eye, where fitted
record-other = Other
record-fingerprint = Fingerprint of the guide that was handed over
record-fingerprint-more = The guide that the owner opens shows the same letters and digits, until something in it changes.
record-sign = Signatures
record-sign-more = Both sign when every line is ticked or crossed out.
record-dealer = For the dealer
record-owner = The owner
record-signature = Signature
record-name = Name in capitals
record-date = Date

# Labels
paper-labels = Labels: {$van}
paper-strips = Narrow labels: {$van}
paper-test = Test sheet for labels
test-kind = Test sheet
test-lead = Print this on plain paper at 100 %, not fitted to the page. Lay it on a sheet of labels against the light: each outline should lie on its label.
test-ruler = This line is 100 mm long. Measure it first.
test-wide = Labels for lockers, caps, inlets and vents
test-strip = Narrow labels for controls and panels
test-label = Label

# Numbers, counts and days
number-decimal = .
number-group = ,
range-to = to
days-count = { $count ->
    [one] { $count } day
   *[other] { $count } days
}
weeks-count = { $count ->
    [one] { $count } week
   *[other] { $count } weeks
}
months-count = { $count ->
    [one] { $count } month
   *[other] { $count } months
}
years-count = { $count ->
    [one] { $count } year
   *[other] { $count } years
}
date = {$day} {$month} {$year}
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

# When the book does not name the dealer
your-dealer = your dealer
your-dealers-number = your dealer’s number

# Names of languages, each in its own
language-en = English
language-de = Deutsch
language-fr = Français
language-nl = Nederlands
language-es = Español
language-it = Italiano
language-sv = Svenska
language-cy = Cymraeg
