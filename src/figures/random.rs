//! Numbers that look random and are the same each time, for tests.

/// A generator (xorshift*; Marsaglia 2003, Vigna 2016, from memory).
pub(super) struct Random(u64);

impl Random {
    pub(super) fn new(seed: u64) -> Self {
        Random(seed.max(1))
    }

    /// A whole number below `end`.
    pub(super) fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        (self.0.wrapping_mul(0x2545_f491_4f6c_dd1d) >> 33) as usize % end.max(1)
    }

    /// A number between two ends.
    pub(super) fn within(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.below(1_000_000_007) as f64 / 1_000_000_007.0
    }
}
