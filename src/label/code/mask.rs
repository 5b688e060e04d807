//! Choosing a mask: the one whose pattern has the least penalty (ISO/IEC 18004, 7.8.3). Rows of modules are bits of a
//! word, so that a whole row is judged at once.

/// The most modules along a side that a word holds: those of version 11.
pub const MOST: usize = 61;

/// A square of modules, as rows and as columns; bit 0 is the first module of each, a set bit is dark.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Grid {
    side: u32,
    rows: Vec<u64>,
    columns: Vec<u64>,
}

impl Grid {
    /// The grid of modules that come row by row, at most [`MOST`] along a side.
    pub fn new(side: usize, dark: &[bool]) -> Grid {
        let mut grid = Grid { side: side as u32, rows: vec![0; side], columns: vec![0; side] };
        for (at, _) in dark.iter().enumerate().filter(|(_, dark)| **dark) {
            grid.rows[at / side] |= 1 << (at % side);
            grid.columns[at % side] |= 1 << (at / side);
        }
        grid
    }

    /// The modules that differ between two grids of one size.
    pub fn xor(&self, other: &Grid) -> Grid {
        let xor = |one: &[u64], other: &[u64]| one.iter().zip(other).map(|(one, other)| one ^ other).collect();
        Grid { side: self.side, rows: xor(&self.rows, &other.rows), columns: xor(&self.columns, &other.columns) }
    }

    /// The modules, row by row.
    pub fn modules(&self) -> Vec<bool> {
        self.rows.iter().flat_map(|row| (0..self.side).map(move |x| row >> x & 1 == 1)).collect()
    }

    /// How much is wrong with it: long runs, blocks, what looks like a finder pattern, and too much dark or light.
    pub fn penalty(&self) -> u32 {
        let lines = self.rows.iter().chain(&self.columns);
        let along: u32 = lines.map(|line| runs(*line, self.side) + 40 * finders(*line, self.side)).sum();
        along + 3 * self.blocks() + self.imbalance()
    }

    /// Squares of two by two modules of one colour.
    fn blocks(&self) -> u32 {
        let pairs = self.rows.windows(2);
        pairs
            .map(|pair| (same(pair[0], self.side) & same(pair[1], self.side) & !(pair[0] ^ pair[1])).count_ones())
            .sum()
    }

    /// How far the share of dark modules is from a half: 0 to 100.
    fn imbalance(&self) -> u32 {
        let dark: u32 = self.rows.iter().map(|row| row.count_ones()).sum();
        let all = self.side * self.side;
        (200 * dark / all).abs_diff(100)
    }
}

/// For each module but the last, whether the next one has its colour.
fn same(line: u64, side: u32) -> u64 {
    !(line ^ line >> 1) & ((1 << (side - 1)) - 1)
}

/// Runs of five modules of one colour count three, and one more for each module more.
fn runs(line: u64, side: u32) -> u32 {
    let same = same(line, side);
    let fives = same & same >> 1 & same >> 2 & same >> 3;
    fives.count_ones() + 2 * (fives & !(fives << 1)).count_ones()
}

/// Patterns dark, light, three dark, light, dark with four light ones before or after them; outside all is light.
fn finders(line: u64, side: u32) -> u32 {
    let inside = (1_u64 << (side - 6)) - 1;
    let dark = line & line >> 2 & line >> 3 & line >> 4 & line >> 6;
    let pattern = dark & !(line >> 1) & !(line >> 5) & inside;
    let before = line << 1 | line << 2 | line << 3 | line << 4;
    let after = line >> 7 | line >> 8 | line >> 9 | line >> 10;
    (pattern & !(before & after)).count_ones()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// `#` dark, `.` light.
    fn line(text: &str) -> (u64, u32) {
        (text.bytes().rev().fold(0, |bits, byte| bits << 1 | u64::from(byte == b'#')), text.len() as u32)
    }

    #[test]
    fn runs_of_five_count_three_and_each_more_one() {
        for (text, wanted) in [("####.##.#", 0), ("#####.#.#", 3), ("######.......", 4 + 5), (".....#####", 6)] {
            let (line, side) = line(text);
            assert_eq!(runs(line, side), wanted, "{text}");
        }
    }

    #[test]
    fn a_finder_counts_with_four_light_modules_on_one_side() {
        let cases = [
            ("#.###.#....#", 1),
            ("#.....#.###.#", 1),
            ("##..#.###.#..##", 0),
            ("#.###.#.#.###.#", 2),
            ("##.#.###.#..#", 0),
        ];
        for (text, wanted) in cases {
            let (line, side) = line(text);
            assert_eq!(finders(line, side), wanted, "{text}");
        }
    }

    #[test]
    fn blocks_overlap_and_balance_is_a_distance_from_a_half() {
        let dark = Grid::new(3, &[true; 9]);
        assert_eq!((dark.blocks(), dark.imbalance()), (4, 100));
        let half = Grid::new(4, &[true, false].repeat(8));
        assert_eq!((half.blocks(), half.imbalance()), (0, 0));
        assert_eq!(half.xor(&half).modules(), [false; 16]);
    }
}
