//! Helping with names that are nearly right, and with lists and plurals in sentences.

/// The name among `known` that `given` was most likely meant to be.
pub fn nearest<'a>(given: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    known
        .into_iter()
        .map(|name| (strsim::damerau_levenshtein(&given.to_lowercase(), &name.to_lowercase()), name))
        .filter(|(distance, name)| *distance <= (name.chars().count().max(given.chars().count()) / 3).max(1))
        .min()
        .map(|(_, name)| name)
}

/// "did you mean `x`?" when one name is near, or else the names there are.
pub fn did_you_mean<'a>(given: &str, known: impl IntoIterator<Item = &'a str> + Clone) -> String {
    match nearest(given, known.clone()) {
        Some(name) => format!("did you mean `{name}`?"),
        None => one_of(known),
    }
}

/// "known here: `a`, `b` and `c`", or that there are none.
pub fn one_of<'a>(known: impl IntoIterator<Item = &'a str>) -> String {
    let mut names: Vec<_> = known.into_iter().collect();
    names.sort_unstable();
    names.dedup();
    match names.len() {
        0 => "there are none yet".to_string(),
        1 => format!("there is {}", list(&names)),
        2..=12 => format!("there are {}", list(&names)),
        more => format!(
            "there are {} and {} more",
            names[..10].iter().map(|n| format!("`{n}`")).collect::<Vec<_>>().join(", "),
            more - 10
        ),
    }
}

/// "`a`, `b` and `c`".
pub fn list<S: AsRef<str>>(names: &[S]) -> String {
    let quoted: Vec<_> = names.iter().map(|n| format!("`{}`", n.as_ref())).collect();
    match quoted.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => format!("{} and {last}", rest.join(", ")),
    }
}

/// "1 van", "2 vans".
pub fn count(number: usize, one: &str) -> String {
    match number {
        1 => format!("1 {one}"),
        _ => format!("{number} {one}s"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn near_names_are_offered_and_far_ones_are_not() {
        let known = ["fridge", "gas-locker", "toilet"];
        assert_eq!(did_you_mean("frigde", known), "did you mean `fridge`?");
        assert_eq!(did_you_mean("solar", known), "there are `fridge`, `gas-locker` and `toilet`");
        assert_eq!(one_of([]), "there are none yet");
    }
}
