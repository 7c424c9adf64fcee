//! Chance that is the same on every machine and every day.

/// Numbers that look drawn at random: xorshift64* (S. Vigna, ACM Transactions on Mathematical
/// Software, 2016) from a fixed seed.
#[derive(Clone, Debug)]
pub(super) struct Chance {
    state: u64,
}

impl Chance {
    pub(super) const fn new() -> Self {
        Self {
            state: 0x9e37_79b9_7f4a_7c15,
        }
    }

    /// Any number of 32 bits.
    pub(super) const fn bits(&mut self) -> u64 {
        self.state ^= self.state >> 12;
        self.state ^= self.state << 25;
        self.state ^= self.state >> 27;
        self.state.wrapping_mul(0x2545_f491_4f6c_dd1d) >> 32
    }

    /// A number below `limit`; 0 where there is none.
    pub(super) fn below(&mut self, limit: usize) -> usize {
        let drawn = (self.bits() * limit as u64) >> 32;
        usize::try_from(drawn).unwrap_or(0)
    }

    /// True once in `times` on average.
    pub(super) const fn once_in(&mut self, times: u64) -> bool {
        (self.bits() * times) >> 32 == 0
    }
}
