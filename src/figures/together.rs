//! What can run together on a hook-up, and what to switch off first.
//!
//! Formula: currents add up; a set fits when their sum is no more than the supply gives. A set is largest when no
//! other appliance fits beside it. Limits: currents at 230 V and at full power; motors and chargers that draw more
//! than their power says are for the caller to count; breakers hold a little more for a while, which is not counted
//! on. Source: arithmetic.

/// More appliances than this have more sets than anyone reads: they are not listed.
pub const MOST: usize = 16;

/// A supply that takes exactly its limit fits, whatever the rounding of its sum.
const ROOM: f64 = 1e-9;

/// Every largest set of appliances that fits a supply, each as the numbers of its appliances in order; the sets in the
/// order of what they draw, most first. None are listed of more than [`MOST`] appliances.
pub fn largest_sets(currents: &[f64], supply: f64) -> Vec<Vec<usize>> {
    if currents.len() > MOST {
        return vec![];
    }
    let mut found = Vec::new();
    let left = Left { room: supply + ROOM, smallest: f64::INFINITY };
    grow(currents, left, 0, &mut Vec::new(), &mut found);
    found.sort_by(|a, b| draw(currents, b).total_cmp(&draw(currents, a)).then_with(|| a.cmp(b)));
    found
}

/// The currents of a set, added up.
pub fn draw(currents: &[f64], set: &[usize]) -> f64 {
    set.iter().map(|number| currents[*number]).sum()
}

/// What to switch off, in its order, until the rest fits a supply: the largest current first, as it brings most.
pub fn switch_off(currents: &[f64], supply: f64) -> Vec<usize> {
    let mut order: Vec<usize> = (0..currents.len()).collect();
    order.sort_by(|a, b| currents[*b].total_cmp(&currents[*a]).then(a.cmp(b)));
    let mut left: f64 = currents.iter().sum();
    let too_much = |number: &usize| {
        let over = left > supply + ROOM;
        left -= currents[*number];
        over
    };
    order.into_iter().take_while(too_much).collect()
}

/// What is left while a set grows.
#[derive(Clone, Copy)]
struct Left {
    /// Of the supply, in A.
    room: f64,
    /// The smallest current that was left out.
    smallest: f64,
}

/// Takes each appliance in or leaves it, in order; keeps the sets to which nothing can be added.
fn grow(currents: &[f64], left: Left, at: usize, taken: &mut Vec<usize>, found: &mut Vec<Vec<usize>>) {
    // Even with all that come, what was left out would fit: no largest set comes of this.
    if left.room - currents[at..].iter().sum::<f64>() >= left.smallest {
        return;
    }
    let Some(current) = currents.get(at) else {
        found.extend((!taken.is_empty()).then(|| taken.clone()));
        return;
    };
    if *current <= left.room {
        taken.push(at);
        grow(currents, Left { room: left.room - current, ..left }, at + 1, taken, found);
        taken.pop();
    }
    grow(currents, Left { smallest: left.smallest.min(*current), ..left }, at + 1, taken, found);
}

#[cfg(test)]
mod tests {
    use super::super::random::Random;
    use super::*;

    /// By trying all sets of all appliances, and asking of each what the words ask.
    fn brute_force(currents: &[f64], supply: f64) -> Vec<Vec<usize>> {
        let set = |bits: u32| (0..currents.len()).filter(|n| bits >> n & 1 == 1).collect::<Vec<_>>();
        let fits = |set: &[usize]| draw(currents, set) <= supply + ROOM;
        let largest = |bits: &u32| {
            let more = (0..currents.len()).filter(|n| bits >> n & 1 == 0).map(|n| set(bits | 1 << n));
            *bits != 0 && fits(&set(*bits)) && more.into_iter().all(|more| !fits(&more))
        };
        (0..1_u32 << currents.len()).filter(largest).map(set).collect()
    }

    #[test]
    fn largest_sets_are_those_of_brute_force_for_200_vans() {
        let mut random = Random::new(200);
        let mut sets = 0;
        for van in 0..200 {
            let watts = [125.0, 175.0, 330.0, 500.0, 850.0, 1000.0, 1500.0, 1800.0, 2000.0, 2300.0];
            let count = 1 + random.below(9);
            let currents: Vec<f64> = (0..count).map(|_| watts[random.below(watts.len())] / 230.0).collect();
            for supply in [6.0, 10.0, 16.0] {
                let mut found = largest_sets(&currents, supply);
                sets += found.len();
                found.sort();
                let mut expected = brute_force(&currents, supply);
                expected.sort();
                assert_eq!(found, expected, "van {van}, {supply} A: {currents:?}");
            }
        }
        println!("200 vans on 6, 10 and 16 A: {sets} largest sets, the same as by brute force");
    }

    #[test]
    fn a_supply_is_used_to_its_limit() {
        assert_eq!(largest_sets(&[6.0, 4.0, 10.0], 10.0), [vec![0, 1], vec![2]]);
        assert_eq!(largest_sets(&[11.0], 10.0), Vec::<Vec<usize>>::new());
        assert_eq!(largest_sets(&[], 10.0), Vec::<Vec<usize>>::new());
        assert_eq!(largest_sets(&[0.1; MOST], 10.0), [(0..MOST).collect::<Vec<_>>()]);
        assert_eq!(largest_sets(&[0.1; MOST + 1], 10.0), Vec::<Vec<usize>>::new());
    }

    #[test]
    fn the_largest_goes_first_until_the_rest_fits() {
        assert_eq!(switch_off(&[0.7, 7.8, 1.4], 6.0), [1]);
        assert_eq!(switch_off(&[4.0, 4.0, 4.0], 6.0), [0, 1]);
        assert_eq!(switch_off(&[1.0, 2.0], 6.0), Vec::<usize>::new());
        let mut random = Random::new(7);
        for _ in 0..1000 {
            let currents: Vec<f64> = (0..random.below(10)).map(|_| random.within(0.1, 10.0)).collect();
            let off = switch_off(&currents, 6.0);
            let rest: f64 = currents.iter().sum::<f64>() - draw(&currents, &off);
            assert!(rest <= 6.0 + 1e-6, "{currents:?}");
        }
    }
}
