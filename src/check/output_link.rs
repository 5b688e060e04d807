//! Links of finished pages, followed by an independent checker. The only file that knows it.

use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::error::Error;
use futures::StreamExt;
use lychee_lib::{
    BaseInfo, Client, ClientBuilder, Collector, FragmentCheckerOptions, Input, InputSource, Request, Uri,
};
use std::collections::{BTreeMap, HashSet};
use std::path::Path;

/// The rule of this check.
pub static RULE: Rule = Rule {
    id: "output-link",
    severity: Severity::Error,
    asks: "Each link of a finished page leads to a file that is there, and to an anchor in it.",
    why: "An owner on a dark pitch has nobody to ask where the missing page went.",
    source: "RFC 3986, 4.2 and 5.2: relative references, followed by the checker of the crate lychee-lib",
    wrong: "href=\"../fridge/index.html#run-on-gass\" in a template of the theme",
    right: "href=\"../fridge/index.html#run-on-gas\"",
};

/// How many links are followed at a time.
const AT_ONCE: usize = 64;

/// Follows each link of the pages below `root`, those to other hosts only when `web` is set. Says how many there were.
pub fn check(acc: &mut Acc, root: &Path, web: bool) -> Result<usize, Error> {
    let failed = |cause: String| Error::new("check the links in", root, cause);
    let runtime =
        tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(|e| failed(e.to_string()))?;
    let found = runtime.block_on(follow(root, web)).map_err(failed)?;
    for (address, (page, message)) in &found.broken {
        let found = Diagnostic::new(&RULE, None, format!("`{page}` links to `{address}`: {message}"));
        acc.add(found.help("look at the template of this page, and at the text it shows"));
    }
    Ok(found.links)
}

/// What following the links found: how many there are, and for each broken one a page it stands on and why.
struct Found {
    links: usize,
    broken: BTreeMap<String, (String, String)>,
}

async fn follow(root: &Path, web: bool) -> Result<Found, String> {
    let requests = collect(root).await?;
    let client = client(web).map_err(|e| e.to_string())?;
    let links = requests.len();
    let mut unique: BTreeMap<String, Request> = BTreeMap::new();
    for request in requests {
        unique.entry(request.uri.as_str().to_string()).or_insert(request);
    }
    let responses: Vec<_> = futures::stream::iter(unique.into_values())
        .map(|request| answer(&client, request, root))
        .buffer_unordered(AT_ONCE)
        .collect()
        .await;
    Ok(Found { links, broken: responses.into_iter().flatten().collect() })
}

async fn collect(root: &Path) -> Result<Vec<Request>, String> {
    let collector = Collector::new(Some(root.to_path_buf()), BaseInfo::none()).map_err(|e| e.to_string())?;
    // Ignored folders are read too: `out` is ignored by version control, and its links count all the same.
    let collector = collector.skip_ignored(false).skip_hidden(false);
    let inputs = HashSet::from([Input::from_input_source(InputSource::FsPath(root.to_path_buf()))]);
    let collected: Vec<_> = collector.collect_links(inputs).collect().await;
    let requests: Result<Vec<_>, _> = collected.into_iter().collect();
    requests.map_err(|e| e.to_string())
}

fn client(web: bool) -> lychee_lib::Result<Client> {
    let schemes: HashSet<String> = if web { HashSet::new() } else { HashSet::from(["file".to_string()]) };
    let fragments = FragmentCheckerOptions { check_anchor_fragments: true, ..FragmentCheckerOptions::default() };
    ClientBuilder::builder()
        .schemes(schemes)
        .fragment_checker_options(fragments)
        .index_files(Some(vec!["index.html".to_string()]))
        .build()
        .client()
}

/// The link's address, the page it stands on and why it is broken; `None` when it is not.
async fn answer(client: &Client, request: Request, root: &Path) -> Option<(String, (String, String))> {
    let (uri, page) = (request.uri.clone(), request.source.to_string());
    let message = match client.check(request).await {
        Ok(response) if response.status().is_error() => response.status().details(),
        Ok(_) => return None,
        Err(error) => error.to_string(),
    };
    let inside = |path: &str| {
        path.trim_start_matches("file://")
            .trim_start_matches(&*root.to_string_lossy())
            .trim_start_matches('/')
            .to_string()
    };
    Some((inside(name(&uri)), (inside(&page), message)))
}

fn name(uri: &Uri) -> &str {
    uri.as_str()
}
