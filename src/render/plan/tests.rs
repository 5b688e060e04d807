//! The drawing's promises, over places thrown at it by a seeded generator.

use super::frame::{Frame, WIDTH};
use super::pen::{Area, Num, Point};
use super::tags::{Group, Layout, TAG_HEIGHT, TAG_WIDTH, Tagged, arrange, spread};
use super::*;

/// A linear congruential generator (Knuth, The Art of Computer Programming 2, 3.3.4, table 1, line 26).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, below: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % below
    }

    fn pick<T: Copy>(&mut self, from: &[T]) -> T {
        from[self.roll(from.len() as u64) as usize]
    }
}

const SIDES: [Side; 7] =
    [Side::Nearside, Side::Offside, Side::Front, Side::Rear, Side::Roof, Side::Under, Side::Inside];
const BODIES: [Body; 5] = [Body::PanelVan, Body::Coachbuilt, Body::AClass, Body::Trailer, Body::Micro];

fn words() -> Words {
    let word = |text: &str| text.to_string();
    Words {
        label: word("Seen from above"),
        nearside_label: word("The nearside"),
        offside_label: word("The offside"),
        front: word("Front"),
        rear: word("Rear"),
        nearside: word("Nearside"),
        offside: word("Offside"),
        here: word("you are here"),
        sign: word("warning"),
    }
}

fn van(marks: Vec<Mark>) -> Plan {
    Plan {
        title: "Van".into(),
        body: Body::PanelVan,
        length: 6000.0,
        width: 2000.0,
        height: 2700.0,
        front_axle: Some(950.0),
        rear_axles: vec![4900.0],
        steering: Some(Steering::Right),
        nearside_is_left: true,
        doors: vec![Door { kind: DoorKind::Sliding, side: Side::Nearside, from: 2300.0, to: 3500.0 }],
        rooms: vec![Room { kind: RoomKind::Bed, name: "Bed".into(), area: [4300.0, 90.0, 5900.0, 1900.0] }],
        marks,
    }
}

fn mark(code: &str, side: Side, x: f64, y: f64) -> Mark {
    Mark {
        code: code.into(),
        name: format!("Place {code}"),
        kind: MarkKind::Locker,
        side,
        x,
        y,
        z: 900.0,
        address: format!("{code}/"),
        labelled: true,
        sign: false,
    }
}

/// A vehicle of any kind with up to `most` places, in clusters as often as not, some of them off the vehicle.
fn thrown(dice: &mut Dice, most: u64) -> Plan {
    let span = dice.pick(&[7800, 3000, 400, 1]);
    let marks = (0..dice.roll(most + 1)).map(|i| Mark {
        z: dice.roll(3000) as f64,
        labelled: dice.roll(5) > 0,
        sign: dice.roll(4) == 0,
        ..mark(
            &format!("K{i}"),
            dice.pick(&SIDES),
            dice.roll(span) as f64 - 900.0 + f64::from(dice.roll(2) as u32) * 2000.0,
            dice.roll(2400) as f64,
        )
    });
    let marks = marks.collect();
    Plan {
        body: dice.pick(&BODIES),
        length: 2000.0 + dice.roll(8000) as f64,
        width: 1600.0 + dice.roll(900) as f64,
        nearside_is_left: dice.roll(2) == 0,
        ..van(marks)
    }
}

/// The drawing on a page one folder deep, with the reader nowhere.
fn drawn(plan: &Plan) -> String {
    draw(plan, &words()).on("../", None)
}

fn tags<'l>(layout: &'l Layout<'l>) -> impl Iterator<Item = &'l Tagged<'l>> {
    layout.spots().flat_map(|placed| &placed.tags)
}

fn each_thrown(check: impl Fn(&Plan, &Layout)) {
    let mut dice = Dice(7);
    for _ in 0..400 {
        let plan = thrown(&mut dice, 60);
        check(&plan, &arrange(&plan));
    }
}

fn assert_tags_apart(layout: &Layout) {
    let tags: Vec<Area> = tags(layout).map(|tagged| tagged.tag).collect();
    for (i, a) in tags.iter().enumerate() {
        assert!(a.x >= 0.0 && a.x + a.w <= WIDTH && a.y >= 0.0 && a.y + a.h <= layout.height, "{a:?} is off");
        for b in &tags[i + 1..] {
            assert!(!a.overlaps(b), "{a:?} and {b:?} overlap");
            let ((ax, ay), (bx, by)) = (a.center(), b.center());
            assert!((ax - bx).hypot(ay - by) >= 24.0 * WIDTH / 358.0, "{a:?} and {b:?} are too near");
        }
    }
}

/// True when two lines have a point in common.
fn meet((a, b): (Point, Point), (c, d): (Point, Point)) -> bool {
    let turn = |p: Point, q: Point, r: Point| (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0);
    let apart = |p: Point, q: Point, r: Point, s: Point| turn(p, q, r) * turn(p, q, s) > 0.0;
    let boxes = Area::between(a, b);
    let other = Area::between(c, d);
    let near = boxes.x <= other.x + other.w
        && other.x <= boxes.x + boxes.w
        && boxes.y <= other.y + other.h
        && other.y <= boxes.y + boxes.h;
    near && !apart(a, b, c, d) && !apart(c, d, a, b)
}

fn assert_leaders_clear(group: &Group) {
    let leaders: Vec<_> = group.spots.iter().map(|placed| placed.leader).collect();
    for (i, a) in leaders.iter().enumerate() {
        for b in &leaders[i + 1..] {
            let pairs = a.windows(2).flat_map(|one| b.windows(2).map(move |two| (one, two)));
            for (one, two) in pairs {
                assert!(!meet((one[0], one[1]), (two[0], two[1])), "{a:?} crosses {b:?}");
            }
        }
    }
}

/// Fails unless every element that is opened is closed, in order.
fn assert_well_formed(svg: &str) {
    let mut open = Vec::new();
    for part in svg.split('<').skip(1) {
        let (tag, text) = part.split_once('>').expect("a tag ends");
        assert!(!text.contains('>') && tag.matches('"').count() % 2 == 0, "loose character in `{part}`");
        match tag.strip_prefix('/') {
            Some(name) => assert_eq!(open.pop(), Some(name)),
            None if tag.ends_with('/') => {}
            None => open.push(tag.split(' ').next().unwrap_or_default()),
        }
    }
    assert!(open.is_empty(), "{open:?} left open");
}

#[test]
fn tags_never_overlap_and_stay_on_the_drawing() {
    each_thrown(|_, layout| assert_tags_apart(layout));
}

#[test]
fn a_tag_is_large_enough_on_a_phone_390_pixels_wide() {
    let scale = (390.0 - 2.0 * 16.0) / WIDTH;
    assert!(TAG_WIDTH * scale >= 44.0 && TAG_HEIGHT * scale >= 24.0);
}

#[test]
fn leaders_of_one_edge_never_cross() {
    each_thrown(|_, layout| layout.groups.iter().for_each(assert_leaders_clear));
}

#[test]
fn leaders_keep_clear_of_the_tags_beside_them() {
    each_thrown(|_, layout| {
        for placed in layout.spots() {
            let beside = layout.spots().filter(|other| !std::ptr::eq(*other, placed));
            for tag in beside.flat_map(|other| &other.tags).map(|other| other.tag) {
                let legs = placed.leader.windows(2).map(|leg| (leg[0], leg[1]));
                let room = tag.grown(3.0);
                let ends = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (0.0, 0.0)];
                let ends = ends.map(|(across, down)| room.part(across, down));
                let touched = |leg| ends.windows(2).any(|side| meet(leg, (side[0], side[1])));
                assert!(!legs.clone().any(touched), "{:?} touches {tag:?}", placed.leader);
            }
        }
    });
}

#[test]
fn the_crossing_test_sees_a_crossing() {
    assert!(meet(((0.0, 0.0), (2.0, 2.0)), ((0.0, 2.0), (2.0, 0.0))));
    assert!(!meet(((0.0, 0.0), (2.0, 2.0)), ((0.0, 1.0), (2.0, 3.0))));
}

#[test]
fn each_place_gets_one_tag() {
    each_thrown(|plan, layout| {
        let mut shown: Vec<_> = tags(layout).map(|tagged| &tagged.mark.code).collect();
        let mut given: Vec<_> = plan.marks.iter().map(|mark| &mark.code).collect();
        shown.sort();
        given.sort();
        assert_eq!(shown, given);
    });
}

#[test]
fn forty_places_on_one_wall_make_the_drawing_taller_and_still_do_not_overlap() {
    let marks = |count: usize| {
        let at = |i: usize| mark(&format!("A{i}"), Side::Nearside, 3000.0 + i as f64, 0.0);
        van((0..count).map(at).collect())
    };
    let (few, many) = (marks(4), marks(40));
    assert_tags_apart(&arrange(&many));
    arrange(&many).groups.iter().for_each(assert_leaders_clear);
    assert!(arrange(&many).height > arrange(&few).height + 300.0);
}

#[test]
fn inside_places_change_sides_innermost_first_before_the_drawing_grows() {
    let at = |i: usize| {
        let (x, y) = (3000.0 + i as f64, 100.0 + (i * 7 % 24) as f64 * 75.0);
        mark(&format!("A{i}"), Side::Inside, x, y)
    };
    let plan = van((0..24).map(at).collect());
    let layout = arrange(&plan);
    let [_, left, right, _] = layout.groups.each_ref().map(|group| {
        let dots = group.spots.iter().map(|placed| placed.leader[3].0);
        dots.collect::<Vec<_>>()
    });
    assert_eq!(left.len() + right.len(), 24);
    assert!(!right.is_empty() && left.iter().all(|l| right.iter().all(|r| l < r)));
    assert_eq!(layout.height, arrange(&van(Vec::new())).height);
}

#[test]
fn a_lone_place_has_its_dot_where_it_is() {
    let plan = van(vec![mark("K1", Side::Inside, 3000.0, 600.0)]);
    let layout = arrange(&plan);
    let dot = layout.groups[1].spots[0].leader[3];
    assert_eq!(dot, layout.frame.at(3000.0, 600.0));
    assert_eq!(layout.frame.at(3000.0, 1000.0).0, WIDTH / 2.0);
}

#[test]
fn the_nearside_is_on_the_side_that_the_road_gives() {
    for nearside_is_left in [true, false] {
        let plan = Plan { nearside_is_left, ..van(vec![mark("G1", Side::Nearside, 3000.0, 0.0)]) };
        let layout = arrange(&plan);
        let placed = layout.spots().next().expect("one tag");
        assert_eq!(placed.tags[0].tag.x < WIDTH / 2.0, nearside_is_left);
        assert_eq!(placed.leader[3].0 < WIDTH / 2.0, nearside_is_left);
    }
}

#[test]
fn an_outside_place_stands_on_the_wall_as_drawn() {
    let plan = Plan { body: Body::Coachbuilt, ..van(vec![mark("A1", Side::Nearside, 1200.0, 0.0)]) };
    let frame = Frame::new(&plan);
    assert!(frame.inset(1200.0) > 50.0 && frame.inset(3000.0) == 0.0);
    let dot = arrange(&plan).spots().next().expect("one tag").leader[3];
    assert_eq!(dot.0, frame.at(1200.0, frame.inset(1200.0)).0);
}

#[test]
fn the_same_plan_gives_the_same_text() {
    let plan = thrown(&mut Dice(3), 40);
    assert_eq!(drawn(&plan), drawn(&plan.clone()));
}

#[test]
fn the_order_of_the_marks_changes_nothing() {
    let plan = thrown(&mut Dice(5), 40);
    let turned = Plan { marks: plan.marks.iter().rev().cloned().collect(), ..plan.clone() };
    assert_eq!(drawn(&plan), drawn(&turned));
    let stacked = ["K2", "K1"].map(|code| mark(code, Side::Inside, 3000.0, 400.0));
    let turned = [stacked[1].clone(), stacked[0].clone()];
    assert_eq!(drawn(&van(stacked.into())), drawn(&van(turned.into())));
}

#[test]
fn text_is_escaped_everywhere() {
    let nasty = "<&\">'\u{1}";
    let mut hostile = mark("A1", Side::Inside, 3000.0, 500.0);
    (hostile.code, hostile.name, hostile.address) = (nasty.into(), nasty.into(), nasty.into());
    (hostile.side, hostile.sign) = (Side::Nearside, true);
    let mut plan = van(vec![hostile]);
    plan.title = nasty.into();
    plan.rooms[0].name = nasty.into();
    let word = nasty.to_string();
    let words = Words {
        label: word.clone(),
        nearside_label: word.clone(),
        offside_label: word.clone(),
        front: word.clone(),
        rear: word.clone(),
        nearside: word.clone(),
        offside: word.clone(),
        here: word.clone(),
        sign: word,
    };
    let safe = "&lt;&amp;&quot;&gt;&#39;";
    // Each has the title and the label, three heads, the list, and of the place code, name, warning, "here", link and tag.
    for (drawing, texts) in [(draw(&plan, &words), 13), (side(&plan, &words, Side::Nearside).expect("a side"), 12)] {
        let svg = drawing.on("", Some(0));
        assert_well_formed(&svg);
        assert!(!svg.contains(nasty) && !svg.contains('\u{1}'));
        assert_eq!(svg.matches(safe).count(), texts, "{svg}");
    }
}

#[test]
fn an_empty_plan_draws_whatever_its_numbers() {
    for number in [0.0, -5.0, f64::NAN, f64::INFINITY, f64::MAX] {
        for body in BODIES {
            let plan = Plan {
                body,
                length: number,
                width: number,
                front_axle: Some(number),
                rear_axles: vec![number],
                doors: vec![Door { kind: DoorKind::Cab, side: Side::Offside, from: number, to: number }],
                rooms: vec![Room { kind: RoomKind::Galley, name: "Galley".into(), area: [number; 4] }],
                height: number,
                marks: [Side::Front, Side::Offside]
                    .map(|wall| Mark { z: 900.0, ..mark("A1", wall, number, number) })
                    .into(),
                ..van(Vec::new())
            };
            for plan in [Plan { marks: Vec::new(), rooms: Vec::new(), ..plan.clone() }, plan] {
                let sides = [Side::Nearside, Side::Offside].map(|wall| side(&plan, &words(), wall));
                for drawing in [Some(draw(&plan, &words()))].into_iter().chain(sides).flatten() {
                    let svg = drawing.on("", Some(0));
                    assert_well_formed(&svg);
                    assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
                }
            }
        }
    }
}

#[test]
fn numbers_have_one_decimal_at_most() {
    assert_eq!(format!("{} {} {} {}", Num(-0.04), Num(1.25), Num(2.0), Num(-3.16)), "0 1.3 2 -3.2");
    let svg = drawn(&thrown(&mut Dice(11), 40));
    let long = svg.match_indices('.').find(|(at, _)| {
        let digits = svg[at + 1..].chars().take_while(char::is_ascii_digit).count();
        digits > 1 && svg[..*at].ends_with(|c: char| c.is_ascii_digit())
    });
    assert_eq!(long, None);
}

#[test]
fn a_reader_hears_lists_of_links_and_nothing_else() {
    let mut here = mark("G1", Side::Nearside, 5000.0, 0.0);
    here.sign = true;
    let svg = draw(&van(vec![here, mark("A1", Side::Front, 0.0, 900.0)]), &words()).on("../", Some(0));
    assert_well_formed(&svg);
    assert!(svg.contains(r#"role="group" aria-label="Van. Seen from above""#));
    assert!(svg.contains(r#"aria-label="G1 Place G1, warning, you are here" aria-current="location""#));
    assert!(svg.contains(r#"role="list" aria-label="Nearside""#));
    assert!(!svg.contains(r#"role="list" aria-label="Offside""#));
    assert_eq!(svg.matches("<a ").count(), 2);
    assert_eq!(svg.matches("plan-sign\"").count(), 1);
    assert!(!svg.contains("style=") && !svg.contains("<script"));
}

#[test]
fn the_place_where_the_reader_stands_has_a_shape_of_its_own() {
    let drawing = draw(&van(vec![mark("G1", Side::Nearside, 5000.0, 0.0)]), &words());
    let [plain, here] = [None, Some(0)].map(|here| drawing.on("", here));
    assert!(plain.contains("<rect class=\"plan-tag\"") && !plain.contains("plan-ring"));
    assert!(here.contains("<path class=\"plan-tag\"") && here.contains("plan-ring"));
}

#[test]
fn a_room_is_named_only_where_the_name_fits() {
    let named = |name: &str| {
        let mut plan = van(Vec::new());
        plan.rooms[0].name = name.into();
        drawn(&plan).contains("plan-room-name")
    };
    assert!(named("Rear bed"));
    assert!(!named("Rear bed with a very long name indeed"));
}

#[test]
fn spreading_moves_as_little_as_it_must() {
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    assert_eq!(spread(&[10.0, 12.0], &[10.0; 2], free), [6.0, 16.0]);
    assert_eq!(spread(&[10.0, 30.0], &[10.0; 2], free), [10.0, 30.0]);
    assert_eq!(spread(&[10.0, 12.0], &[10.0; 2], (8.0, 100.0)), [8.0, 18.0]);
    assert_eq!(spread(&[99.0, 99.0], &[10.0; 2], (0.0, 100.0)), [90.0, 100.0]);
    assert_eq!(spread(&[0.0, 0.0], &[10.0, 20.0], (0.0, 100.0)), [0.0, 15.0]);
    assert!(spread(&[], &[], free).is_empty());
}

#[test]
fn a_page_changes_only_its_way_and_the_mark_where_the_reader_stands() {
    let plan = thrown(&mut Dice(13), 40);
    let drawing = draw(&plan, &words());
    let plain = drawing.on("", None);
    assert_eq!(drawing.on("../../", None).replace("href=\"../../", "href=\""), plain);
    for number in 0..plan.marks.len() {
        let here = drawing.on("", Some(number));
        assert_eq!(here.matches("aria-current").count(), 1);
        assert_eq!(here.matches("plan-ring").count(), 1);
        assert_eq!(here.matches("<a ").count(), plain.matches("<a ").count());
    }
}

#[test]
fn places_of_one_spot_share_a_dot_and_a_list_of_tags() {
    let near = ["K3", "K1", "K2"].map(|code| mark(code, Side::Nearside, 3000.0, 0.0));
    let far = mark("K4", Side::Nearside, 3400.0, 0.0);
    let layout_of = van(near.into_iter().chain([far]).collect());
    let layout = arrange(&layout_of);
    let spots: Vec<Vec<&str>> =
        layout.spots().map(|placed| placed.tags.iter().map(|tagged| tagged.mark.code.as_str()).collect()).collect();
    assert_eq!(spots, [vec!["K1", "K2", "K3"], vec!["K4"]]);
    assert_tags_apart(&layout);
    let hollow = Mark { side: Side::Roof, ..mark("R1", Side::Roof, 3000.0, 100.0) };
    let two = van(vec![hollow, mark("K1", Side::Inside, 3000.0, 100.0)]);
    assert_eq!(arrange(&two).spots().count(), 2);
}

#[test]
fn a_side_shows_its_labelled_places_as_high_as_they_are() {
    let low = Mark { z: 400.0, ..mark("G1", Side::Nearside, 5000.0, 0.0) };
    let high = Mark { z: 2200.0, ..mark("V1", Side::Nearside, 5000.0, 0.0) };
    let bare = Mark { labelled: false, ..mark("X1", Side::Nearside, 4000.0, 0.0) };
    let plan = van(vec![low, high, bare, mark("B1", Side::Rear, 6000.0, 900.0)]);
    assert!(side(&plan, &words(), Side::Offside).is_none());
    let svg = side(&plan, &words(), Side::Nearside).expect("a side").on("../", Some(1));
    assert_well_formed(&svg);
    assert!(svg.contains("aria-label=\"Van. The nearside\""));
    assert!(svg.contains("href=\"../G1/\"") && svg.contains("href=\"../V1/\""));
    assert_eq!(svg.matches("<a ").count(), 2);
    assert_eq!(svg.matches("aria-current").count(), 1);
    // The reader's dot is the larger one.
    let height_of = |radius: &str| {
        let dots = svg.split("<circle class=\"plan-dot\"").skip(1).filter_map(|dot| dot.split("/>").next());
        let dot = dots.into_iter().find(|dot| dot.ends_with(radius)).expect("a dot");
        let y = dot.split("cy=\"").nth(1).and_then(|rest| rest.split('"').next());
        y.and_then(|y| y.parse::<f64>().ok()).expect("a number")
    };
    // 1800 mm apart, with 344 units for 6000 mm.
    let apart = height_of("r=\"2.8\"") - height_of("r=\"3.8\"");
    assert!((apart - 1800.0 * 344.0 / 6000.0).abs() < 0.2, "{apart}");
}

#[test]
fn a_side_holds_any_number_of_places() {
    let mut dice = Dice(17);
    for _ in 0..60 {
        let plan = thrown(&mut dice, 60);
        for wall in [Side::Nearside, Side::Offside] {
            let wanted = plan.marks.iter().filter(|mark| mark.labelled && mark.side == wall).count();
            let svg = side(&plan, &words(), wall).map(|drawn| drawn.on("", None)).unwrap_or_default();
            assert_well_formed(&svg);
            assert_eq!(svg.matches("<a ").count(), wanted);
        }
    }
}

#[test]
fn the_front_is_where_it_is_for_someone_who_stands_there() {
    for (nearside_is_left, wall, front) in
        [(true, Side::Nearside, "◀ Front"), (true, Side::Offside, "Front ▶"), (false, Side::Nearside, "Front ▶")]
    {
        let plan = Plan { nearside_is_left, ..van(vec![mark("G1", wall, 5000.0, 0.0)]) };
        let svg = side(&plan, &words(), wall).expect("a side").on("", None);
        assert!(svg.contains(front), "{wall:?} {nearside_is_left}: {svg}");
    }
}
