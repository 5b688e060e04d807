//! What rests on each axle, by moments.
//!
//! Formula: a mass at x puts mass × (x - front) / (rear - front) on the rear support, and the rest on the front one;
//! a mass behind the rear axle lifts the front. For a trailer the front support is the coupling, so that what rests on
//! it is the noseweight. Limits: level ground; springs and tyres change nothing of it; tandem axles count as one in
//! the middle of both. Source: statics (the sum of forces and of moments is nought).

/// A mass in kg, and where it is, in mm from the front of the body.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mass {
    /// How heavy, in kg.
    pub kg: f64,
    /// How far back, in mm.
    pub at: f64,
}

/// The two supports of a vehicle, in mm from the front of the body: the axles, or the coupling and the axle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supports {
    front: f64,
    rear: f64,
}

/// What rests on each support, in kg.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Loads {
    /// On the front axle, or on the coupling.
    pub front: f64,
    /// On the rear axle, or on the axle of a trailer.
    pub rear: f64,
}

impl Supports {
    /// Supports of which the rear one is really behind the front one.
    pub fn new(front: f64, rear: f64) -> Option<Self> {
        (rear - front > 1.0 && front.is_finite() && rear.is_finite()).then_some(Supports { front, rear })
    }

    /// What one mass puts on each.
    pub fn loads(self, mass: Mass) -> Loads {
        let rear = mass.kg * (mass.at - self.front) / (self.rear - self.front);
        Loads { front: mass.kg - rear, rear }
    }

    /// What several masses put on each.
    pub fn all(self, masses: impl IntoIterator<Item = Mass>) -> Loads {
        masses.into_iter().map(|mass| self.loads(mass)).fold(Loads::default(), Loads::and)
    }
}

impl Loads {
    /// These and others together.
    pub fn and(self, other: Loads) -> Loads {
        Loads { front: self.front + other.front, rear: self.rear + other.rear }
    }

    /// So many times these.
    pub fn times(self, many: f64) -> Loads {
        Loads { front: self.front * many, rear: self.rear * many }
    }

    /// Both together.
    pub fn sum(self) -> f64 {
        self.front + self.rear
    }
}

#[cfg(test)]
mod tests {
    use super::super::random::Random;
    use super::*;

    #[test]
    fn a_mass_rests_where_it_is() {
        let supports = Supports::new(960.0, 4995.0).unwrap();
        let on = |at| supports.loads(Mass { kg: 100.0, at });
        assert_eq!(on(960.0), Loads { front: 100.0, rear: 0.0 });
        assert_eq!(on(4995.0), Loads { front: 0.0, rear: 100.0 });
        let middle = on((960.0 + 4995.0) / 2.0);
        assert!((middle.front - 50.0).abs() < 1e-9 && (middle.rear - 50.0).abs() < 1e-9);
        assert!(on(6000.0).front < 0.0 && on(6000.0).rear > 100.0);
        assert_eq!(Supports::new(1000.0, 1000.0), None);
        assert_eq!(Supports::new(f64::NAN, 1000.0), None);
    }

    /// Any vehicle, loaded anyhow: what rests on both supports is all there is, and turns about the front of the body as
    /// much as the masses do.
    #[test]
    fn mass_and_moment_are_kept() {
        let mut random = Random::new(0x1eaf);
        let mut worst: f64 = 0.0;
        for _ in 0..10_000 {
            let front = random.within(-2000.0, 1500.0);
            let supports = Supports::new(front, front + random.within(1500.0, 6000.0)).unwrap();
            let count = random.below(12);
            let masses: Vec<_> = (0..count)
                .map(|_| Mass { kg: random.within(0.0, 3000.0), at: random.within(-1500.0, 8500.0) })
                .collect();
            let loads = supports.all(masses.iter().copied());
            let mass: f64 = masses.iter().map(|mass| mass.kg).sum();
            let moment: f64 = masses.iter().map(|mass| mass.kg * mass.at).sum();
            let kept = loads.front * supports.front + loads.rear * supports.rear;
            let size: f64 = masses.iter().map(|mass| (mass.kg * mass.at).abs()).sum();
            worst = worst.max((loads.sum() - mass).abs() / mass.max(1.0)).max((kept - moment).abs() / size.max(1.0));
        }
        assert!(worst < 1e-9, "mass or moment is lost: {worst:e}");
        println!("10,000 vehicles, mass and moment kept to {worst:.1e}");
    }
}
