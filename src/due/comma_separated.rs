//! What falls due as comma-separated values (RFC 4180, media type `text/csv`). The only file that knows the writer.

use super::DueList;

/// The names of the columns.
const HEAD: [&str; 12] =
    ["due", "state", "van", "key", "fit", "life", "action", "title", "every", "last", "made", "until"];

/// One row a life, known ones first; a day that is not known is empty. Lines end as RFC 4180 asks.
pub fn csv(list: &DueList) -> String {
    let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(Vec::new());
    let day = |day: Option<jiff::civil::Date>| day.map(|day| day.to_string()).unwrap_or_default();
    let rows = list.known.iter().chain(&list.unknown).map(|row| {
        let own = [&row.van, &row.key, &row.fit, &row.life].map(|text| text.clone());
        let (due, state) = (day(row.due), row.state.word().to_string());
        let [van, key, fit, life] = own;
        let action = row.action.to_string();
        [
            due,
            state,
            van,
            key,
            fit,
            life,
            action,
            row.title.clone(),
            row.every.clone(),
            day(row.last),
            row.made.clone(),
            row.until.clone(),
        ]
    });
    // Memory takes all that is written to it.
    let _ = writer.write_record(HEAD);
    rows.for_each(|row| {
        let _ = writer.write_record(row);
    });
    String::from_utf8(writer.into_inner().unwrap_or_default()).unwrap_or_default()
}
