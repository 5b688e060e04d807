// Finds in the data of `search-index.js` with the library of `minisearch.js` and the words of `wording.js`. It touches no page, so that it can be tried without a browser.
// A plain script in a scope of its own: browsers load no modules from a folder.
(() => {
  "use strict";

  // How much a word counts by where it stands, and a thing by what it is.
  const FIELDS = { title: 4, also: 2.5, name: 1.5, part: 1.2, of: 0.5, more: 0.9 };
  const KINDS = { part: 1.15, task: 1.1, routine: 1.1, emergency: 1.4, fault: 1, place: 1, control: 0.95, check: 0.9, page: 0.9, about: 0.85, care: 0.8, hazard: 0.7 };
  const TROUBLE = { fault: 1.4, part: 0.8 }; // Who says that it will not work looks for a fault.
  const MEANING = 0.8; // An owner's word stands for a word of the texts less surely than that word itself.
  const SLIP = 0.85; // So does a word with a slip in it.
  const FURTHER = 0.35; // What a second meaning adds to the first.
  const MISSED = 1.5; // How hard it counts against a thing that it lacks a word that was asked for.

  const set = (text) => new Set(text.split(" ").filter(Boolean));

  /** Takes up each hit, the best score for each thing. */
  function takeUp(best, hits, weight) {
    for (const { id, score } of hits) best.set(id, Math.max(best.get(id) ?? 0, score * weight));
  }

  /** Makes room for taps while the index grows. */
  const pause = () => new Promise((done) => setTimeout(done));

  globalThis.makeFinder = async (data, MiniSearch, wording) => {
    const [small, trouble] = [set(data.small), set(data.trouble)];
    const stems = wording.stems(data.endings.split(" "));
    const index = new MiniSearch({
      fields: Object.keys(FIELDS),
      tokenize: (text) => text.split(" ").filter(Boolean),
      processTerm: (term) => term,
      searchOptions: { boost: FIELDS, combineWith: "AND" },
    });
    const vocabulary = new Set();
    const texts = [];
    function add([kind, title, , anchor, part, places, , more], id) {
      const code = kind === "place" ? `${data.places[places[0]]} ` : "";
      const aliases = part === null ? "" : data.aliases[part];
      const own = kind === "part";
      const fields = { title: code + title, also: own ? aliases : "", name: anchor, part: own || part === null ? "" : data.parts[part], of: own ? "" : aliases, more };
      for (const name of Object.keys(fields)) fields[name] = stems(fields[name]).join(" ");
      Object.values(fields).forEach((text) => text.split(" ").forEach((word) => vocabulary.add(word)));
      texts.push(` ${Object.values(fields).join(" | ")} `);
      index.add({ id, ...fields });
    }

    for (const [id, thing] of data.found.entries()) {
      add(thing, id);
      if (id % 16 === 15) await pause();
    }
    const owners = data.owners.map(([word, means]) => ({ words: stems(word), means: means.map((mean) => stems(mean).join(" ")) }));
    const ownersWords = new Set(owners.flatMap((owner) => owner.words));

    /** Where a word is, or else a word that it is a slip of. */
    function hits(term) {
      const best = new Map();
      takeUp(best, index.search(term, { prefix: term.length > 1 }), 1);
      if (best.size || vocabulary.has(term) || term.length < 4) return best;
      for (const word of vocabulary) if (wording.slips(term, word)) takeUp(best, index.search(word), SLIP);
      if (!best.size && term.length > 5) takeUp(best, index.search(term, { fuzzy: 2 }), 1);
      return best;
    }

    /** Owners' phrases in what was asked, the longest first, each with the terms that make it. */
    function phrases(terms) {
      const strange = new Set(terms.filter((term) => !vocabulary.has(term) && !ownersWords.has(term)));
      const has = (word) => terms.find((term) => term === word || (strange.has(term) && wording.slips(term, word)));
      return owners
        .map((owner) => ({ means: owner.means, terms: owner.words.map(has) }))
        .filter((owner) => owner.terms.every((term, at) => term && (at === 0 || terms.indexOf(term) > terms.indexOf(owner.terms[at - 1]))))
        .sort((a, b) => b.terms.length - a.terms.length);
    }

    /** Terms that belong together, with what they may mean: `gas bottle` is one thing, and so is each telling word that is left. */
    function groups(terms, telling) {
      const out = [];
      const taken = (term) => out.some((group) => group.terms.includes(term));
      for (const phrase of phrases(terms)) if (!phrase.terms.some(taken)) out.push(phrase);
      const left = telling.filter((term) => !taken(term));
      return [...out, ...left.map((term) => ({ terms: [term], means: [] }))];
    }

    /** For each thing, how well it has the meanings of a group. */
    function meant(group) {
      const out = new Map();
      group.means.forEach((mean, rank) => {
        const words = mean.split(" ");
        const weight = (MEANING * group.terms.length) / words.length / (1 + rank / 4);
        for (const { id, score } of index.search(mean)) {
          if (!texts[id].includes(` ${mean} `)) continue;
          const [most, least] = [score * weight, out.get(id) ?? 0].sort((a, b) => b - a);
          out.set(id, most + FURTHER * least);
        }
      });
      return out;
    }

    /** For each thing, how well it fits a group, and how many of its terms it has. */
    function fits(group) {
      const out = new Map();
      for (const term of group.terms) {
        for (const [id, score] of hits(term)) {
          const known = out.get(id) ?? { score: 0, has: 0 };
          out.set(id, { score: known.score + score, has: known.has + 1 });
        }
      }
      for (const [id, score] of meant(group)) {
        const known = out.get(id) ?? { score: 0, has: 0 };
        const [most, least] = [known.score, score].sort((a, b) => b - a);
        out.set(id, { score: most + FURTHER * least, has: group.terms.length });
      }
      return out;
    }

    /** What was found, the best first: `{ kind, title, part, page, anchor, places, signal, score }`. */
    function find(asked, most = 8) {
      const words = wording.split(asked);
      const telling = words.filter((word) => !small.has(word));
      const inTrouble = words.some((word) => trouble.has(word));
      const [all, kept] = [words, telling.length ? telling : words].map((some) => [...new Set(some.flatMap(stems))]);
      const asks = groups(all, kept);
      const size = asks.reduce((sum, group) => sum + group.terms.length, 0);
      const totals = new Map();
      for (const group of asks) {
        for (const [id, { score, has }] of fits(group)) {
          const total = totals.get(id) ?? { score: 0, has: 0 };
          totals.set(id, { score: total.score + score, has: total.has + has });
        }
      }
      const ranked = [...totals].map(([id, { score, has }]) => {
        const kind = data.found[id][0];
        const weight = KINDS[kind] * ((inTrouble && TROUBLE[kind]) || 1);
        return { id, score: score * weight * (has / size) ** MISSED };
      });
      ranked.sort((a, b) => b.score - a.score || a.id - b.id);
      return varied(ranked.map(shown)).slice(0, most);
    }

    function shown({ id, score }) {
      const [kind, title, page, anchor, part, places, signal] = data.found[id];
      const codes = places.map((place) => data.places[place]);
      return { kind, title, page, anchor, part: part === null ? "" : data.parts[part], places: codes, signal: signal ?? "", score };
    }

    /** No more than two things of one name: parts that burn gas share what they say of it. */
    function varied(things) {
      const seen = new Map();
      return things.filter(({ title }) => {
        seen.set(title, (seen.get(title) ?? 0) + 1);
        return seen.get(title) <= 2;
      });
    }

    return { find };
  };
})();
