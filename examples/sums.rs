//! Works out sums line by line, for referees: each line of input is a JSON object with the name of a calculation and
//! its inputs as numbers in the units that it takes, each line of output its result or, as text, what is wrong.
//!
//!     {"calculation": "vapour-pressure", "inputs": [20, 100, 0, 0]}

use lockerleaf::figures;
use serde_json::{Value, json};
use std::io::{BufRead, Write, stdin, stdout};

fn main() -> std::io::Result<()> {
    let mut out = stdout().lock();
    for line in stdin().lock().lines() {
        let answer = serde_json::from_str(&line?).map_err(|error| error.to_string()).and_then(|sum| work_out(&sum));
        writeln!(out, "{}", answer.map_or_else(|error| json!(error), |number| json!(number)))?;
    }
    Ok(())
}

fn work_out(sum: &Value) -> Result<f64, String> {
    let name = sum["calculation"].as_str().unwrap_or_default();
    let calculation = figures::find(name).ok_or_else(|| format!("there is no calculation `{name}`"))?;
    let inputs: Vec<f64> = sum["inputs"].as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    if inputs.len() != calculation.inputs.len() {
        return Err(format!("`{name}` takes {} numbers", calculation.inputs.len()));
    }
    calculation.work_out(&inputs).map_err(|error| error.to_string())
}
