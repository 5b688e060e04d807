//! `models/<model>/model.toml` and `models/<model>/<van>.toml`.

use super::forms::{Code, Given, Id, Key, ModuleName, Words};
use super::stamped::Stamped;
use crate::load::read::{Map, OneOrMany};
use crate::model::source::At;
use crate::{record, words};
use jiff::civil::Date;

words! {
    /// The kind of body.
    Body {
        /// A van converted inside its own metal.
        PanelVan = "panel-van",
        /// A house built on a van's chassis, with the van's cab.
        Coachbuilt = "coachbuilt",
        /// A house built over the whole chassis.
        AClass = "a-class",
        /// A caravan.
        Trailer = "trailer",
        /// A small van.
        Micro = "micro",
    }
    /// The side of the steering wheel.
    Drive {
        /// On the right.
        RightHand = "right-hand",
        /// On the left.
        LeftHand = "left-hand",
    }
    /// What the engine runs on.
    Fuel {
        /// Diesel.
        Diesel = "diesel",
        /// Petrol.
        Petrol = "petrol",
        /// Electricity.
        Electric = "electric",
        /// It has no engine.
        None = "none",
    }
    /// What a place is.
    PlaceKind {
        /// A locker with a door.
        Locker = "locker",
        /// A panel of switches or gauges.
        Panel = "panel",
        /// One switch, knob, lever or button.
        Control = "control",
        /// An opening for air or fumes.
        Vent = "vent",
        /// Where a lead or hose is plugged in.
        Inlet = "inlet",
        /// A filler with a cap.
        Cap = "cap",
        /// A tap or drain.
        Tap = "tap",
        /// Something that works by itself.
        Appliance = "appliance",
        /// An alarm or extinguisher.
        Alarm = "alarm",
        /// A way out.
        Exit = "exit",
    }
    /// The side of the vehicle that something is on.
    Side {
        /// The side of the kerb.
        Nearside = "nearside",
        /// The other side.
        Offside = "offside",
        /// The front.
        Front = "front",
        /// The back.
        Rear = "rear",
        /// On the roof.
        Roof = "roof",
        /// Under the floor.
        Under = "under",
        /// In the living space or the cab.
        Inside = "inside",
    }
    /// A door or window of the drawing.
    DoorKind {
        /// A door of the cab.
        Cab = "cab",
        /// A sliding door.
        Sliding = "sliding",
        /// The door of the living space.
        Habitation = "habitation",
        /// A door at the back.
        Rear = "rear",
        /// A door of the garage.
        Garage = "garage",
        /// A window.
        Window = "window",
    }
    /// A piece of furniture of the drawing.
    RoomKind {
        /// A bed.
        Bed = "bed",
        /// A seat or bench.
        Seat = "seat",
        /// A seat of the cab.
        CabSeat = "cab-seat",
        /// A kitchen.
        Galley = "galley",
        /// A washroom.
        Washroom = "washroom",
        /// A wardrobe.
        Wardrobe = "wardrobe",
        /// A table.
        Table = "table",
        /// A garage for luggage.
        Garage = "garage",
    }
}

record! {
    /// A vehicle type.
    ModelFile {
        /// What it is called.
        title: At<String>,
        /// The kind of body.
        body: At<Body>,
        /// The side of the steering wheel; left out for a trailer.
        drive: Option<Drive>,
        /// What the engine runs on.
        fuel: Fuel,
        /// How many people can sleep in it.
        berths: Option<u32>,
        /// Seats with belts, the driver's among them.
        seats: Option<u32>,
        /// Its size.
        dimensions: Dimensions,
        /// What it weighs and may weigh.
        masses: Option<Masses>,
        /// Doors and windows.
        door: Vec<Door>,
        /// What stands inside.
        room: Vec<Room>,
        /// Its places.
        place: Vec<PlaceFacts>,
        /// Its fits.
        fit: Vec<FitFacts>,
        /// Which fit answers for a capability that several provide.
        choose: Map<At<Id>>,
        /// Printed labels whose place has another code now.
        moved: Vec<Moved>,
        /// Printed labels whose place is no more.
        gone: Vec<Gone>,
        /// Printed labels whose place is the same, though it is called or described otherwise now.
        same_place: Vec<SamePlace>,
    }
    /// A printed label that leads to another place.
    Moved {
        /// The code on the label.
        code: At<Code>,
        /// The code of the place that it leads to.
        to: At<Code>,
        /// What to tell whoever scans it.
        why: Option<String>,
    }
    /// A printed label whose place is no more.
    Gone {
        /// The code on the label.
        code: At<Code>,
        /// What to tell whoever scans it.
        why: String,
    }
    /// A printed label whose place is the same, though its name, kind or side is another.
    SamePlace {
        /// The code on the label.
        code: At<Code>,
        /// The name that is printed on it.
        printed_as: At<String>,
    }
    /// The size of a vehicle.
    Dimensions {
        /// Length of the body.
        length: At<String>,
        /// Width of the body.
        width: At<String>,
        /// Height above the ground.
        height: At<String>,
        /// Between the axles.
        wheelbase: Option<At<String>>,
        /// From the front of the body to the front axle.
        front_axle: Option<At<String>>,
        /// From the front of the body to the rear axle.
        rear_axle: Option<At<String>>,
        /// From the front of the body to the second rear axle.
        second_rear_axle: Option<At<String>>,
        /// From the front of the body forward to the coupling of a trailer.
        coupling: Option<At<String>>,
    }
    /// What a vehicle weighs and may weigh.
    Masses {
        /// Technically permissible maximum laden mass.
        maximum: Option<At<String>>,
        /// Mass in running order.
        running_order: Option<At<String>>,
        /// What of it rests on the front axle, or on the coupling of a trailer.
        running_order_front: Option<At<String>>,
        /// Limit of the front axle.
        front_axle: Option<At<String>>,
        /// Limit of the rear axle.
        rear_axle: Option<At<String>>,
        /// Limit of the noseweight.
        nose_limit: Option<At<String>>,
    }
    /// A door or window of the drawing.
    Door {
        /// What it is.
        kind: DoorKind,
        /// Where.
        side: At<Side>,
        /// From here, in mm from the front of the body, or from the nearside edge for the rear.
        from: f64,
        /// To here.
        to: f64,
    }
    /// A piece of furniture of the drawing.
    Room {
        /// What it is.
        kind: RoomKind,
        /// What it is called.
        name: Option<Words>,
        /// How many seats with belts it has; a seat of the cab has one.
        belts: Option<u32>,
        /// Two corners in mm: x from the front of the body, y from the nearside edge.
        box_: At<Vec<f64>>,
    }
    /// A place of the vehicle.
    PlaceFacts {
        /// Its short code.
        code: At<Code>,
        /// What it is.
        kind: PlaceKind,
        /// What it is called.
        name: Words,
        /// Where it is.
        side: Side,
        /// In mm: x from the front of the body, y from the nearside edge, z above the ground.
        position: At<Vec<f64>>,
        /// How to find it.
        note: Option<Words>,
    }
    /// One module fitted.
    FitFacts {
        /// The module.
        module: At<ModuleName>,
        /// The fit's own name.
        as_: At<Id>,
        /// Where each role is.
        places: Map<OneOrMany<At<Code>>>,
        /// Its values.
        values: Map<At<Given>>,
    }
    /// What is different about one fit.
    Change {
        /// Another module.
        module: Option<At<ModuleName>>,
        /// Places that are different.
        places: Map<OneOrMany<At<Code>>>,
        /// Values that are different.
        values: Map<At<Given>>,
    }
    /// One vehicle: its model, and what is different about this one.
    VanFile {
        /// Its public key.
        key: At<Key>,
        /// The year it was built.
        year: Option<At<u32>>,
        /// The dealer's stock number, which is never published.
        stock: Option<String>,
        /// What its owner calls it.
        name: Option<String>,
        /// Fits that it lacks.
        remove: Vec<At<Id>>,
        /// Fits that are different.
        change: Map<Change>,
        /// Fits of its own.
        add: Vec<FitFacts>,
        /// Places of its own.
        place: Vec<PlaceFacts>,
        /// Which fit answers for a capability that several provide.
        choose: Map<At<Id>>,
        /// What was renewed.
        renewed: Vec<Renewed>,
        /// What was measured.
        reading: Vec<Reading>,
        /// A technician's words about this one.
        tip: Vec<Tip>,
        /// Photos of this one.
        photo: Vec<Photo>,
        /// Safety notes that it does without, for a time.
        waiver: Vec<Waiver>,
        /// Keys that it had before: labels that carry them lead here.
        former_keys: Vec<At<Key>>,
        /// Printed labels whose place has another code now.
        moved: Vec<Moved>,
        /// Printed labels whose place is no more.
        gone: Vec<Gone>,
        /// Printed labels whose place is the same, though it is called or described otherwise now.
        same_place: Vec<SamePlace>,
    }
    /// What was renewed or done, or what is stamped on the part.
    Renewed {
        /// The fit.
        fit: At<Id>,
        /// The life of its module that began anew.
        part: At<Id>,
        /// The day it was done; left out when only what is stamped on the part is known.
        on: Option<At<Date>>,
        /// The date code on the part: the month, week or day it was made.
        made: Option<At<Stamped>>,
        /// The last day that is marked on the part, as "replace by" or "test by".
        until: Option<At<Stamped>>,
        /// What else to know.
        note: Option<String>,
    }
    /// What was measured.
    Reading {
        /// The fit.
        fit: At<Id>,
        /// The reading of its module.
        name: At<Id>,
        /// What it was.
        value: At<String>,
        /// When.
        on: At<Date>,
    }
    /// A hazard of a fit that is not warned of as it should be, for a time and a reason.
    Waiver {
        /// The fit.
        fit: At<Id>,
        /// The hazard.
        hazard: At<Id>,
        /// Why.
        reason: String,
        /// The last day.
        until: At<Date>,
    }
    /// A technician's words about this van, at a fit or a place.
    Tip {
        /// The fit they are about.
        fit: Option<At<Id>>,
        /// The place they are about.
        place: Option<At<Code>>,
        /// The words.
        says: At<String>,
    }
    /// A photo of this van, at a fit or a place.
    Photo {
        /// The file in the van's own folder, which has the manifest's name: `models/<model>/<van>/`.
        file: At<String>,
        /// The fit that it shows.
        fit: Option<At<Id>>,
        /// The place that it shows.
        place: Option<At<Code>>,
        /// What can be seen on it, for those who cannot see it.
        alt: At<Words>,
        /// Numbers drawn on it, each with its words.
        callout: Vec<Callout>,
    }
    /// A number drawn on a photo, and what it says.
    Callout {
        /// Where, in hundredths of the upright photo: from its left edge, from its top.
        at: At<Vec<f64>>,
        /// What is there.
        says: At<Words>,
    }
}

impl Room {
    /// How many may travel on it: as written, or one on a seat of the cab; no seat has more than a coach.
    pub fn belts(&self) -> u32 {
        self.belts.unwrap_or(u32::from(self.kind == RoomKind::CabSeat)).min(99)
    }
}
