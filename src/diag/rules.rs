//! Rules that hold while files are read and vans are put together. Rules over the whole are in `check`.

use super::{Rule, Severity};

macro_rules! rules {
    ($($name:ident = $id:literal, asks $asks:literal, why $why:literal, source $source:literal, wrong $wrong:literal, right $right:literal;)+) => {
        $(
            #[doc = $asks]
            pub static $name: Rule = Rule { id: $id, severity: Severity::Error, asks: $asks, why: $why, source: $source, wrong: $wrong, right: $right };
        )+
        /// All of them.
        pub static EARLY: &[&Rule] = &[$(&$name,)+];
    };
}

rules! {
    AMBIGUOUS_CAPABILITY = "ambiguous-capability",
        asks "When two fits of a van provide one capability, the manifest says which one answers for it.",
        why "A link such as `part:hot-water#drain` must lead to one part. An owner who is sent to the wrong boiler drains the wrong one.",
        source "the design of Lockerleaf: capabilities",
        wrong "two fits that provide `hot-water`, and no `[choose]`",
        right "[choose]\nhot-water = \"boiler\"";
    DRAWING_UNSAFE = "drawing-unsafe",
        asks "A drawing holds shapes and words alone: nothing that runs, and nothing that it takes in from elsewhere.",
        why "A script in a drawing would run in the dealer's name when the drawing is opened, and a link in it would tell others who reads.",
        source "SVG 2, 2.7 Secure static mode; Content Security Policy Level 3",
        wrong "<svg ...><script>alert(1)</script></svg>",
        right "<svg ...><path d=\"M3 3h18\"/></svg>";
    DUPLICATE_CODE = "duplicate-code",
        asks "Each place of a van has a code of its own.",
        why "The code is the address that the label carries; two places with one code would open one page.",
        source "the design of Lockerleaf: labels",
        wrong "two `[[place]]` tables with `code = \"G1\"`",
        right "`code = \"G1\"` and `code = \"G2\"`";
    DUPLICATE_FIT = "duplicate-fit",
        asks "Each fit of a van has a name of its own.",
        why "The name is the address of the fit's page, and what changes and renewals point at.",
        source "the design of Lockerleaf: fits",
        wrong "two `[[fit]]` tables with `as = \"heater\"`",
        right "`as = \"heater\"` and `as = \"cab-heater\"`";
    DUPLICATE_SECTION = "duplicate-section",
        asks "Each section of a text has a name of its own.",
        why "Links and wiring find a section by its name.",
        source "the design of Lockerleaf: texts",
        wrong "## Light it {#light .task}\n## Light it again {#light .task}",
        right "## Light it {#light .task}\n## Light it again {#light-again .task}";
    FILE_KIND = "file-kind",
        asks "Only pictures, PDF and plain text come along with a part.",
        why "A page or script of anybody's would open under the dealer's address, and could do there whatever it likes.",
        source "the design of Lockerleaf: security",
        wrong "content/gas/locker/leaflet.html",
        right "content/gas/locker/leaflet.pdf";
    FILE_UNREAD = "file-unread",
        asks "Each fact file and text below `content/` and `models/` stands where it is read.",
        why "A slip in the name of a file or folder would lose a part, or a whole vehicle, without a word.",
        source "the design of Lockerleaf: what people write",
        wrong "models/dune.toml",
        right "models/wenlow-v2/dune.toml";
    FIGURE_FORM = "figure-form",
        asks "A figure names a calculation that there is, and gives each of its inputs in a unit that fits.",
        why "A sum with a missing or mistaken input would print a wrong number in an owner's guide.",
        source "the calculations in `src/figures`",
        wrong "calculation = \"current\"\nwith = { power = \"mains-power\" }",
        right "calculation = \"current\"\nwith = { power = \"mains-power\", voltage = \"230 V\" }";
    FIGURE_IMPOSSIBLE = "figure-impossible",
        asks "The inputs of a figure are physically possible.",
        why "No number can be worked out from, say, a voltage of nought.",
        source "the limits that each calculation in `src/figures` states",
        wrong "voltage = \"0 V\"",
        right "voltage = \"230 V\"";
    HEADING_LEVELS = "heading-levels",
        asks "A text begins with one `#` title, has `##` sections, and `###` only inside sections.",
        why "People who listen to a page move by its headings; a level that is skipped sounds like a part that is missing.",
        source "WCAG 2.2, 1.3.1 Info and Relationships",
        wrong "# Gas locker\n### Turn it on",
        right "# Gas locker\n## Turn it on {#turn-on .task}";
    LINK_FORM = "link-form",
        asks "A link is `part:`, `place:`, `hazard:`, a file beside the text, or an `https:` address.",
        why "Only these can be followed in every guide, offline and under any address.",
        source "the design of Lockerleaf: texts",
        wrong "[the pump](prat:water-pump)",
        right "[the pump](part:water-pump)";
    LINK_NOWHERE = "link-nowhere",
        asks "A link leads to something that this van has and shows.",
        why "An owner who is sent to a part that the vehicle lacks is lost, and stops trusting the guide.",
        source "the design of Lockerleaf: a guide is silent about what a vehicle does not have",
        wrong "[the hook-up](part:mains-supply#connect) in a van without a hook-up",
        right "the same link in a section with `when = { fitted = \"mains-supply\" }`";
    LOGO_UNUSABLE = "logo-unusable",
        asks "The dealer's logo is an SVG drawing or a PNG picture beside `book.toml`, and holds nothing but a drawing.",
        why "A drawing can carry scripts, and ask other machines for things. A guide does neither.",
        source "SVG 2, 2.4 secure static mode",
        wrong "[dealer]\nlogo = \"letterhead.pdf\"",
        right "[dealer]\nlogo = \"logo.svg\"";
    MISSING_FILE = "missing-file",
        asks "A module's folder holds `module.toml` and `text.md`, and files that a text points at are there.",
        why "Facts without words, or words without facts, are no use to an owner.",
        source "the design of Lockerleaf: modules",
        wrong "content/gas/locker/ with `module.toml` alone",
        right "content/gas/locker/ with `module.toml` and `text.md`";
    MISSING_KEY = "missing-key",
        asks "A table has the keys that its kind needs.",
        why "Nothing sensible can stand in for them.",
        source "the JSON Schemas that `lockerleaf schemas` prints",
        wrong "[[place]]\nkind = \"locker\"",
        right "[[place]]\ncode = \"G1\"\nkind = \"locker\"\n…";
    MISSING_PLACE = "missing-place",
        asks "A manifest says where each required role of a fit is.",
        why "The owner has to find it, and a label has to be put there.",
        source "the design of Lockerleaf: places",
        wrong "as = \"fridge\" without `places`, where its module requires `controls`",
        right "as = \"fridge\"\nplaces = { controls = \"K2\" }";
    MISSING_VALUE = "missing-value",
        asks "A manifest gives each required value of a fit.",
        why "The text and the sums of the guide need it.",
        source "the design of Lockerleaf: values",
        wrong "a gas locker without `cylinder-mass`",
        right "values = { cylinder-mass = \"6 kg\" }";
    NOTE_FORM = "note-form",
        asks "A safety note names its hazard right after the signal word, says what can happen, and lists how to avoid it.",
        why "A warning that does not say what happens, or what to do, is not heeded.",
        source "ANSI Z535.6 and IEC/IEEE 82079-1: hazard, consequence, avoidance",
        wrong "> **WARNING** Fumes kill.",
        right "> **WARNING** [Carbon monoxide](hazard:carbon-monoxide). Its fumes kill without a smell.\n>\n> - Keep the vents clear.";
    NOT_UTF8 = "not-utf-8",
        asks "Files are text in UTF-8.",
        why "Other encodings turn degrees, dashes and accents into rubbish in the guide.",
        source "TOML 1.0 and CommonMark 0.31.2",
        wrong "a file saved in a code page of an old system",
        right "the same file saved as UTF-8";
    OLD_LABEL = "old-label",
        asks "What a manifest says of a printed label leads to a place of the van, or says that it is gone.",
        why "The label stays where it was stuck. Whoever scans it must be led to the right place, or told that there is none.",
        source "the design of Lockerleaf: labels",
        wrong "[[moved]]\ncode = \"A1\"\nto = \"B9\" in a van without a place B9",
        right "[[moved]]\ncode = \"A1\"\nto = \"B2\"";
    OUTSIDE_BOOK = "outside-book",
        asks "A book points only at files inside it, and a text only at files in its own folder.",
        why "What lies elsewhere is missing on the next machine, and may be private.",
        source "the design of Lockerleaf: the book",
        wrong "![The lever](../../elsewhere/lever.svg)",
        right "![The lever](lever.svg)";
    PHOTO_CALLOUT = "photo-callout",
        asks "A callout lies on its photo: two numbers from 0 to 100, from the left edge and from the top, and words.",
        why "A number that points beside the picture, or at nothing, leads people astray.",
        source "the design of Lockerleaf: photos",
        wrong "at = [120, 40]",
        right "at = [62, 40]";
    PHOTO_UNUSABLE = "photo-unusable",
        asks "A photo is a whole JPEG, PNG or WebP file in colours of a screen, of at most 64 million pixels and 40 MB.",
        why "It is made smaller, turned upright and freed of what the camera wrote into it, so it has to be readable.",
        source "the design of Lockerleaf: photos",
        wrong "file = \"locker.heic\"",
        right "file = \"locker.jpg\"";
    PICTURE_TEXT = "picture-text",
        asks "Each picture has a text alternative.",
        why "Some owners cannot see it, and it may not load on a dark pitch.",
        source "WCAG 2.2, 1.1.1 Non-text Content",
        wrong "![](lever.svg)",
        right "![The lever points down: open](lever.svg)";
    QUANTITY_FORM = "quantity-form",
        asks "A quantity is a number, a space and a unit that is known.",
        why "A number without its unit is read wrongly sooner or later.",
        source "SI Brochure, 9th edition, 5.4: the number comes before the unit, with a space between",
        wrong "cylinder-mass = \"6kg\"",
        right "cylinder-mass = \"6 kg\"";
    RAW_HTML = "raw-html",
        asks "Texts hold no HTML.",
        why "A guide goes to the phone and to paper alike, and must be safe to open.",
        source "the design of Lockerleaf: texts",
        wrong "Press <b>hard</b>.",
        right "Press **hard**.";
    RESERVED_NAME = "reserved-name",
        asks "The name of a fit can be used in an address.",
        why "Some file systems do not tell capitals from small letters, so a fit may not be called like the code of a place.",
        source "the design of Lockerleaf: addresses",
        wrong "as = \"g1\" beside a place `G1`",
        right "as = \"gas-locker\"";
    SECTION_NAME = "section-name",
        asks "Each `##` section has a name in lower case, and only `##` sections have names.",
        why "Links, wiring and addresses find a section by its name, whatever its heading says.",
        source "the design of Lockerleaf: texts",
        wrong "## Turn it on",
        right "## Turn it on {#turn-on .task}";
    SIGNAL_WORD = "signal-word",
        asks "A quotation that looks like a safety note opens with DANGER, WARNING, CAUTION or NOTICE.",
        why "A warning with a slip in its signal word would count as an ordinary quotation.",
        source "ANSI Z535.6, ISO 3864-2",
        wrong "> **WARING** [Scald](hazard:scald). …",
        right "> **WARNING** [Scald](hazard:scald). …";
    SLOT_FORM = "slot-form",
        asks "A brace opens a slot: the name of a value or figure and a closing brace.",
        why "A slip in a slot would print braces in place of a number.",
        source "the design of Lockerleaf: texts",
        wrong "about {mains current}",
        right "about {mains-current}";
    THEME_FAILS = "theme-fails",
        asks "The theme's templates and words can be read, and lay out every kind of page.",
        why "A page that cannot be laid out would be missing from the guide.",
        source "the design of Lockerleaf: themes",
        wrong "{{ pag.title }} in a template",
        right "{{ page.title }}";
    TITLE_DIFFERS = "title-differs",
        asks "A module has the same title in its facts and in its text.",
        why "Lists, labels and pages would call one part by two names.",
        source "IEC/IEEE 82079-1: consistency",
        wrong "title = \"Gas box\" and `# Gas locker`",
        right "title = \"Gas locker\" and `# Gas locker`";
    TOML_SYNTAX = "toml-syntax",
        asks "Fact files are valid TOML.",
        why "The rest of the file cannot be read safely after a slip.",
        source "TOML 1.0",
        wrong "title = Gas locker",
        right "title = \"Gas locker\"";
    UNKNOWN_CALCULATION = "unknown-calculation",
        asks "A figure is worked out by a calculation that there is.",
        why "The program only prints sums whose formula and source it holds.",
        source "the calculations in `src/figures`",
        wrong "calculation = \"curent\"",
        right "calculation = \"current\"";
    UNKNOWN_CAPABILITY = "unknown-capability",
        asks "A capability that is named is declared in `content/capabilities.toml`.",
        why "A slip in its name would leave a link, a need or a condition without effect.",
        source "the design of Lockerleaf: capabilities",
        wrong "provides = [\"frigde\"]",
        right "provides = [\"fridge\"]";
    UNKNOWN_CHOICE = "unknown-choice",
        asks "A choice is one of the words that its value offers.",
        why "Sections and sums depend on it.",
        source "the design of Lockerleaf: values",
        wrong "ignition = \"spark\"",
        right "ignition = \"automatic\"";
    UNKNOWN_FIT = "unknown-fit",
        asks "A fit that is removed, changed, renewed, measured or chosen is one that the van has.",
        why "A slip in its name would leave the van as it was, and the guide wrong.",
        source "the design of Lockerleaf: fits",
        wrong "remove = [\"frigde\"]",
        right "remove = [\"fridge\"]";
    UNKNOWN_HAZARD = "unknown-hazard",
        asks "A hazard that is named is an entry of `content/hazards.toml`.",
        why "A note about an unknown hazard counts for no coverage.",
        source "the design of Lockerleaf: hazards",
        wrong "[Fumes](hazard:carbon-monoxid)",
        right "[Fumes](hazard:carbon-monoxide)";
    UNKNOWN_KEY = "unknown-key",
        asks "A table has only keys that its kind knows.",
        why "A slip in a key would be passed over, and the fact with it.",
        source "the JSON Schemas that `lockerleaf schemas` prints",
        wrong "titel = \"Gas locker\"",
        right "title = \"Gas locker\"";
    UNKNOWN_MODULE = "unknown-module",
        asks "A fit names a module that is in the book and can be fitted; `include` names a shared one.",
        why "There is nothing to say about a part without its module.",
        source "the design of Lockerleaf: modules",
        wrong "module = \"cooling/absorbtion-fridge\"",
        right "module = \"cooling/absorption-fridge\"";
    UNKNOWN_PART = "unknown-part",
        asks "A renewal names a life, and a reading names a reading, of the fit's module.",
        why "What is due and what was measured would be lost.",
        source "the design of Lockerleaf: life, reading",
        wrong "part = \"hoze\"",
        right "part = \"hose\"";
    UNKNOWN_PLACE = "unknown-place",
        asks "A place or a role that is named is one that the van or the module has.",
        why "A task without a place cannot be found, and its label opens nothing.",
        source "the design of Lockerleaf: places",
        wrong "places = { controls = \"K9\" }",
        right "places = { controls = \"K2\" }";
    UNKNOWN_ROLE = "unknown-role",
        asks "A section is a task, fault, check, care or control, or none of these.",
        why "The role decides where the section is shown.",
        source "the design of Lockerleaf: texts",
        wrong "## Turn it on {#turn-on .taks}",
        right "## Turn it on {#turn-on .task}";
    UNKNOWN_ROUTINE = "unknown-routine",
        asks "A routine that is named is a file of `content/routines/`.",
        why "A slip would leave a task out of the list that the owner ticks off.",
        source "the design of Lockerleaf: routines",
        wrong "routine = \"ariving\"",
        right "routine = \"arriving\"";
    UNKNOWN_SECTION = "unknown-section",
        asks "A section that is named is one that the text or the capability has.",
        why "Wiring or a need for a section that is not there has no effect.",
        source "the design of Lockerleaf: sections",
        wrong "[section.run-on-gass]",
        right "[section.run-on-gas]";
    UNKNOWN_SLOT = "unknown-slot",
        asks "A slot names a value or figure of its module, or one that every guide has.",
        why "There is nothing to print in its place.",
        source "the design of Lockerleaf: texts",
        wrong "about {mains-curent}",
        right "about {mains-current}";
    UNKNOWN_SYSTEM = "unknown-system",
        asks "A module stands in the folder of a system, or in `content/shared/`.",
        why "Owners find a part by its system.",
        source "the design of Lockerleaf: words",
        wrong "content/gass/locker/",
        right "content/gas/locker/";
    UNKNOWN_THEME = "unknown-theme",
        asks "The theme is a folder of `themes/`, or the one that comes with the program.",
        why "Pages need a theme to be laid out by.",
        source "the design of Lockerleaf: the book",
        wrong "theme = \"daymrak\"",
        right "theme = \"daymark\"";
    UNKNOWN_VALUE = "unknown-value",
        asks "A value that is named is one that the module has.",
        why "A slip in its name would leave the default in force.",
        source "the design of Lockerleaf: values",
        wrong "values = { cylinder-mas = \"6 kg\" }",
        right "values = { cylinder-mass = \"6 kg\" }";
    VALUE_FACTS = "value-facts",
        asks "A value is a quantity with a unit, a choice of words, or free text, and its defaults and conditions agree with that.",
        why "A manifest can only be held against facts that are sound themselves.",
        source "the design of Lockerleaf: values",
        wrong "[values.mass]\ntitle = \"Mass\"",
        right "[values.mass]\ntitle = \"Mass\"\nunit = \"kg\"";
    VALUE_RANGE = "value-range",
        asks "A value lies in the range that is plausible for such a part.",
        why "A slip of a digit would go into the sums.",
        source "the `range` of the value in `module.toml`",
        wrong "cylinder-mass = \"600 kg\"",
        right "cylinder-mass = \"6 kg\"";
    VALUE_UNIT = "value-unit",
        asks "A value has a unit of the kind that its module asks for.",
        why "Litres cannot stand for kilograms, nor volts for watts.",
        source "the `unit` of the value in `module.toml`",
        wrong "cylinder-mass = \"6 l\"",
        right "cylinder-mass = \"6 kg\"";
    WRONG_FORM = "wrong-form",
        asks "A value in a fact file has the type and form that its key takes.",
        why "Nothing sensible can be made of it otherwise.",
        source "the JSON Schemas that `lockerleaf schemas` prints",
        wrong "key = \"123\"",
        right "key = \"M7QK3WZD\"";
}
