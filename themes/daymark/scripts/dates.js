// Marks what is overdue, due soon or later by the reader's own date, in words, and counts them. Without it the page
// shows the days alone. A plain script in a scope of its own: browsers load no modules from a folder.
(() => {
  "use strict";

  const SOON = 60;

  /** Whole days from today to a day such as `2026-09-14`, both in the reader's own calendar. */
  function daysTo(iso, today) {
    const [year, month, day] = iso.split("-").map(Number);
    return Math.round((Date.UTC(year, month - 1, day) - Date.UTC(today.getFullYear(), today.getMonth(), today.getDate())) / 864e5);
  }

  function kind(days) {
    return days < 0 ? "overdue" : days <= SOON ? "soon" : "later";
  }

  function mark(list, today) {
    const counts = { overdue: 0, soon: 0, later: 0 };
    for (const time of list.querySelectorAll(".date-when time")) {
      const is = kind(daysTo(time.dateTime, today));
      const word = document.createElement("span");
      word.className = `date-mark date-${is}`;
      word.textContent = list.dataset[is];
      time.after(" ", word);
      counts[is] += 1;
    }
    return counts;
  }

  function summary(list, counts, today) {
    const words = list.dataset;
    const language = document.documentElement.lang;
    // Plain English would put the month first.
    const day = today.toLocaleDateString(language === "en" ? "en-GB" : language, { day: "numeric", month: "long", year: "numeric" });
    const line = document.createElement("p");
    line.className = "dates-today screen";
    line.textContent = `${words.today}, ${day}. ${words.overdue}: ${counts.overdue}. ${words.soon}: ${counts.soon}. ${words.later}: ${counts.later}. ${words.since}`;
    list.before(line);
  }

  const today = new Date();
  for (const list of document.querySelectorAll(".dates")) {
    const counts = mark(list, today);
    if (document.querySelector(".page-dates") && counts.overdue + counts.soon + counts.later > 0) {
      summary(list, counts, today);
    }
  }
})();
