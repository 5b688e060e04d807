// Words as search compares them: without capitals, accents and endings, and slips between them. It touches no page.
// A plain script in a scope of its own: browsers load no modules from a folder.
(() => {
  "use strict";

  /** Words in small letters without accents; `12V` is two words, `won't` is one. */
  const split = (text) =>
    text.toLowerCase().normalize("NFD").replace(/[\p{M}'’]/gu, "").replace(/(\p{N})(?=\p{L})/gu, "$1 ").split(/[^\p{L}\p{N}]+/u).filter(Boolean);

  /** Words without the first of `endings` that they have and without a double letter before it, so that `trip`, `trips` and `tripping` meet. */
  const stems = (endings) => {
    const stem = (word) => {
      const ending = endings.find((end) => word.endsWith(end) && word.length - end.length >= 3);
      const left = ending ? word.slice(0, -ending.length) : word;
      return left.length > 3 && left.at(-1) === left.at(-2) ? left.slice(0, -1) : left;
    };
    return (text) => split(text).map(stem);
  };

  /** Whether two words differ by one letter that is missing, added, another, or changed over with its neighbour. */
  function slips(a, b) {
    if (Math.min(a.length, b.length) < 4 || Math.abs(a.length - b.length) > 1) return false;
    let at = 0;
    while (at < a.length && a[at] === b[at]) at += 1;
    const [restA, restB] = [a.slice(at), b.slice(at)];
    const swapped = restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2);
    return swapped || restA.slice(1) === restB.slice(1) || restA.slice(1) === restB || restA === restB.slice(1);
  }

  globalThis.guideWording = { split, stems, slips };
})();
