//! Figures name calculations that there are, with inputs that fit.

use super::{Check, Checked};
use crate::diag::Acc;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in checked.book.modules.iter().filter(|module| module.system.is_some()) {
        crate::resolve::check_figures(acc, module);
    }
}
