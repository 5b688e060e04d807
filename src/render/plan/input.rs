//! What the plan drawing is told: plain data, lengths in millimetres.
//!
//! `x` runs from the front of the body to the rear, `y` from the nearside edge to the offside, `z` up from the ground.

/// One vehicle and the places to show on it.
#[derive(Clone, Debug)]
pub struct Plan {
    /// Name of the vehicle, put before the drawing's label sentence.
    pub title: String,
    pub body: Body,
    /// Length of the body: a trailer's drawbar is drawn ahead of it.
    pub length: f64,
    pub width: f64,
    /// Above the ground.
    pub height: f64,
    pub front_axle: Option<f64>,
    /// From the front of the body.
    pub rear_axles: Vec<f64>,
    /// Left and right as the driver sees them; `None` draws no steering wheel.
    pub steering: Option<Steering>,
    /// True where traffic keeps left.
    pub nearside_is_left: bool,
    pub doors: Vec<Door>,
    pub rooms: Vec<Room>,
    pub marks: Vec<Mark>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Body {
    PanelVan,
    Coachbuilt,
    AClass,
    Trailer,
    Micro,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Steering {
    Left,
    Right,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    Nearside,
    Offside,
    Front,
    Rear,
    Roof,
    Under,
    Inside,
}

/// A door or a window: an opening in one wall.
#[derive(Clone, Debug)]
pub struct Door {
    pub kind: DoorKind,
    /// The wall. Only the four walls are drawn: `Roof`, `Under` and `Inside` are left out.
    pub side: Side,
    /// Along the wall: `x` for a side wall, `y` for the front and rear.
    pub from: f64,
    pub to: f64,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoorKind {
    Cab,
    Sliding,
    Habitation,
    Rear,
    Garage,
    Window,
}

/// A piece of furniture or a compartment, seen from above.
#[derive(Clone, Debug)]
pub struct Room {
    pub kind: RoomKind,
    /// Written inside when it fits there without meeting anything else.
    pub name: String,
    /// `[x1, y1, x2, y2]`.
    pub area: [f64; 4],
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoomKind {
    Bed,
    Seat,
    Galley,
    Washroom,
    Wardrobe,
    Table,
    CabSeat,
    Garage,
}

/// A place that can be tapped.
#[derive(Clone, Debug)]
pub struct Mark {
    /// Short: two to four characters are drawn large.
    pub code: String,
    pub name: String,
    pub kind: MarkKind,
    pub side: Side,
    pub x: f64,
    pub y: f64,
    pub z: f64,
    /// Where a tap leads, below the root of the guide.
    pub address: String,
    /// A label is put there: outside, it is worth knowing how high.
    pub labelled: bool,
    /// A warning waits here: adds a small triangle.
    pub sign: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkKind {
    Locker,
    Panel,
    Control,
    Vent,
    Inlet,
    Cap,
    Tap,
    Appliance,
    Alarm,
    Exit,
}

impl MarkKind {
    /// The word that manifests and style sheets use.
    pub fn word(self) -> &'static str {
        match self {
            MarkKind::Locker => "locker",
            MarkKind::Panel => "panel",
            MarkKind::Control => "control",
            MarkKind::Vent => "vent",
            MarkKind::Inlet => "inlet",
            MarkKind::Cap => "cap",
            MarkKind::Tap => "tap",
            MarkKind::Appliance => "appliance",
            MarkKind::Alarm => "alarm",
            MarkKind::Exit => "exit",
        }
    }
}

/// The drawing's words, in the reader's language.
#[derive(Clone, Debug)]
pub struct Words {
    /// What the drawing is, in one sentence: "Plan seen from above. Choose a place."
    pub label: String,
    /// The same for the views from the sides: "The nearside, seen from outside. Choose a place."
    pub nearside_label: String,
    pub offside_label: String,
    pub front: String,
    pub rear: String,
    pub nearside: String,
    pub offside: String,
    /// Said after the name of the place where the reader stands: "you are here".
    pub here: String,
    /// Said after the name of a place where a warning waits: "warning".
    pub sign: String,
}
