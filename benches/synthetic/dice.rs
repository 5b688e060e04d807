//! Choices that depend on a seed alone.

/// SplitMix64 (Steele, Lea, Flood: Fast Splittable Pseudorandom Number Generators, 2014).
pub struct Dice(u64);

impl Dice {
    /// Dice of one thing's own: what happens to other things does not move them.
    pub fn of(seed: u64, what: &str, number: u64) -> Self {
        let mut dice = Dice(seed);
        for byte in what.bytes() {
            dice.0 = dice.next() ^ u64::from(byte);
        }
        dice.0 = dice.next() ^ number;
        dice
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number from nought to one less than `end`, which is not nought.
    pub fn below(&mut self, end: usize) -> usize {
        (self.next() % end as u64) as usize
    }

    /// One of them.
    pub fn pick<'a, T: ?Sized>(&mut self, from: &[&'a T]) -> &'a T {
        from[self.below(from.len())]
    }

    /// Yes in so many of a hundred.
    pub fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }
}
