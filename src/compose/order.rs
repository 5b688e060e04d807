//! The tasks of a routine in order: what others need comes first, then the order of the manifest.

use crate::model::book::Book;
use crate::model::van::Van;

/// A fit's number and a section's number in its module.
pub type Step = (usize, usize);

/// The steps of `routine` for `van`, with the steps that they need. `Err` names a step that waits for itself.
pub fn order(book: &Book, van: &Van, routine: &str) -> Result<Vec<Step>, Step> {
    let mut order = Order { book, van, done: Vec::new(), open: Vec::new() };
    for (fit, fitted) in van.fits.iter().enumerate() {
        for (section, facts) in book.modules[fitted.module].sections.iter().enumerate() {
            let part_of =
                facts.wiring.as_ref().is_some_and(|wiring| wiring.routine.iter().any(|name| &*name.value == routine));
            if part_of && fitted.shown[section] {
                order.visit((fit, section))?;
            }
        }
    }
    Ok(order.done)
}

struct Order<'a> {
    book: &'a Book,
    van: &'a Van,
    done: Vec<Step>,
    open: Vec<Step>,
}

impl Order<'_> {
    fn visit(&mut self, step: Step) -> Result<(), Step> {
        if self.done.contains(&step) {
            return Ok(());
        }
        if self.open.contains(&step) {
            return Err(step);
        }
        self.open.push(step);
        for need in self.needs(step) {
            self.visit(need)?;
        }
        self.open.pop();
        self.done.push(step);
        Ok(())
    }

    /// The steps that must come before `step` in this van. What it does not have, it does not need.
    fn needs(&self, (fit, section): Step) -> Vec<Step> {
        let wiring = self.book.modules[self.van.fits[fit].module].sections[section].wiring.as_ref();
        let names = wiring.into_iter().flat_map(|wiring| wiring.needs.iter());
        names
            .filter_map(|name| {
                let (part, section) = name.value.split_once('#')?;
                let fit = if part == "self" { fit } else { *self.van.providers.get(part)? };
                let number =
                    self.book.modules[self.van.fits[fit].module].sections.iter().position(|own| own.id == section)?;
                self.van.fits[fit].shown[number].then_some((fit, number))
            })
            .collect()
    }
}
