# The words of the theme in English.

# Titles of pages
home-title = Owner guide
places-title = Where are you standing?
tasks-title = What do you want to do?
faults-title = What is not working?
dates-title = What is due, and when
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
