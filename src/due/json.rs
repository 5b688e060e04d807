//! What falls due as JSON (RFC 8259).

use super::{DueList, DueRow};
use serde_json::{Value, json};

/// The day against which all is held, and one object a life; what is not known is null.
pub fn json(list: &DueList) -> String {
    let rows: Vec<_> = list.known.iter().chain(&list.unknown).map(row).collect();
    let whole = json!({ "on": list.on.to_string(), "dates": rows });
    format!("{whole:#}\n")
}

fn row(row: &DueRow) -> Value {
    let words = |text: &str| (!text.is_empty()).then(|| text.to_string());
    json!({
        "due": row.due.map(|due| due.to_string()),
        "state": row.state.word(),
        "van": row.van,
        "key": row.key,
        "fit": row.fit,
        "life": row.life,
        "action": row.action,
        "title": row.title,
        "every": row.every,
        "last": row.last.map(|last| last.to_string()),
        "made": words(&row.made),
        "until": words(&row.until),
        "source": row.source,
    })
}
