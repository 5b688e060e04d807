"""referee.py BOOK PAGES: reads every dates.ics below PAGES with the icalendar package of PyPI, and works out from the
TOML files of BOOK by its own way (tomllib, dateutil) what should be in it: which days, which names, which repeats."""
import datetime as dt
import pathlib
import re
import sys
import tomllib

from dateutil.relativedelta import relativedelta
from dateutil.rrule import rrulestr
from icalendar import Calendar

book, pages = map(pathlib.Path, sys.argv[1:3])
problems, counted = [], {"calendars": 0, "events": 0, "repeats": 0}


def table(path):
    return tomllib.loads(path.read_text(encoding="utf-8"))


def lives(module):
    """The lives of a module; its own before those of what it takes in."""
    facts = table(book / "content" / module / "module.toml")
    taken = facts.get("include", [])
    found = {}
    for shared in [taken] if isinstance(taken, str) else taken:
        found |= lives(shared)
    return found | facts.get("life", {})


def fits(model, van):
    """Fit names to modules: the model's, less what the van removes, with what it changes and adds."""
    found = {fit["as"]: fit["module"] for fit in model.get("fit", []) if fit["as"] not in van.get("remove", [])}
    for name, change in van.get("change", {}).items():
        found[name] = change.get("module", found.get(name))
    return found | {fit["as"]: fit["module"] for fit in van.get("add", [])}


def step(every):
    """`60 months` as a step of dateutil, which keeps to the end of a shorter month."""
    number, unit = every.split()
    return relativedelta(**{unit.rstrip("s") + "s": int(number)})


def stamped(mark):
    """The first day that a stamp can mean."""
    if isinstance(mark, dt.date):
        return mark
    if week := re.fullmatch(r"(\d{4})-W(\d\d)", mark):
        return dt.date.fromisocalendar(int(week[1]), int(week[2]), 1)
    return dt.date.fromisoformat(mark if len(mark) == 10 else mark + "-01")


def expected(model, van):
    """UID to (life, day of the record, day it falls due); what nobody recorded is not in it."""
    out = {}
    for fit, module in fits(model, van).items():
        for life, facts in lives(module).items():
            records = [r for r in van.get("renewed", []) if (r["fit"], r["part"]) == (fit, life)]
            if not records:
                continue
            newest = max(reversed(records), key=lambda r: r.get("on") or stamped(r.get("made", "0001-01")))
            ends = [newest["on"] + step(facts["every"])] if "on" in newest else []
            if "made" in newest and facts["action"] == "renew":
                ends.append(stamped(newest["made"]) + step(facts["every"]))
            if "until" in newest:
                ends.append(stamped(newest["until"]))
            if ends:
                out[f"{life}.{fit}.{van['key']}@lockerleaf"] = (facts, newest, min(ends))
    return out


def raw(path):
    """RFC 5545, 3.1, on the bytes themselves: other readers take broken files too."""
    data = path.read_bytes()
    if not data.endswith(b"\r\n") or b"\n" in data.replace(b"\r\n", b"") or b"\r" in data.replace(b"\r\n", b""):
        problems.append(f"{path}: lines do not end in CRLF")
    for number, line in enumerate(data.split(b"\r\n"), 1):
        if len(line) > 75:
            problems.append(f"{path}:{number}: {len(line)} octets")
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            problems.append(f"{path}:{number}: a fold cuts a character")
    return data


def whole(component, where):
    """The reader's own errors, and the properties that it knows to be required."""
    for part in component.walk():
        problems.extend(f"{where}: {part.name}: {error}" for error in part.errors)
        missing = [name for name in part.required if name not in part]
        if missing:
            problems.append(f"{where}: {part.name} lacks {missing}")


def repeats(event, facts, record, where):
    """Checks that the owner keeps come again on the days that dateutil counts from the record; nothing else does."""
    own = facts["action"] in ("test", "check", "clean") and "until" not in record and "on" in record
    every = step(facts["every"])
    short = dt.date(2000, 1, 1) + every <= dt.date(2001, 1, 1)
    if (own and short) != ("RRULE" in event):
        problems.append(f"{where}: it should {'' if own and short else 'not '}come again")
    if "RRULE" not in event:
        return
    start = dt.datetime.combine(event.start, dt.time())
    rule = rrulestr(event["RRULE"].to_ical().decode(), dtstart=start)
    found = [rule[number].date() for number in range(30)]
    wanted = [record["on"] + step(facts["every"]) * number for number in range(1, 31)]
    counted["repeats"] += 1
    if found != wanted:
        problems.append(f"{where}: comes again on {found[:3]}, not on {wanted[:3]}")


def calendar(path, wanted):
    read = Calendar.from_ical(raw(path))
    whole(read, path)
    events = {str(event["UID"]): event for event in read.walk("VEVENT")}
    counted["calendars"] += 1
    if len(events) != len(read.walk("VEVENT")) or events.keys() != wanted.keys():
        problems.append(f"{path}: other events than expected: {sorted(events.keys() ^ wanted.keys())}")
    for uid in events.keys() & wanted.keys():
        event, (facts, record, due) = events[uid], wanted[uid]
        where = f"{path}: {uid}"
        counted["events"] += 1
        if event.start != due or not event["DTSTART"].params.get("VALUE") == "DATE":
            problems.append(f"{where}: {event.start}, not {due}")
        if "on" in record and event["DTSTAMP"].dt.date() != record["on"]:
            problems.append(f"{where}: is stamped {event['DTSTAMP'].dt}, not {record['on']}")
        alarms = event.walk("VALARM")
        if len(alarms) != 1 or not str(alarms[0]["DESCRIPTION"]):
            problems.append(f"{where}: {len(alarms)} alarms")
        repeats(event, facts, record, where)


def prove():
    """A calendar that is known to be wrong must be found wrong, or the reader proves nothing."""
    broken = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nDTSTART;VALUE=DATE:20261340\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    before = len(problems)
    whole(Calendar.from_ical(broken), "a calendar with mistakes")
    found = problems[before:]
    del problems[before:]
    if not any("lacks" in problem for problem in found) or len(found) < 2:
        problems.append(f"the reader finds only {found} in a calendar with mistakes")


prove()
for path in sorted((book / "models").glob("*/*.toml")):
    if path.name == "model.toml" or path.parent.name == "models":
        continue
    van = table(path)
    wanted = expected(table(path.parent / "model.toml"), van)
    found = sorted((pages / van["key"]).rglob("dates.ics"))
    if bool(wanted) != bool(found):
        problems.append(f"{path}: {len(wanted)} days are known, and there are {len(found)} calendars")
    for ics in found:
        calendar(ics, wanted)

for problem in problems[:20]:
    print(problem)
print(f"calendars: {counted['calendars']} read, {counted['events']} days and {counted['repeats']} repeats counted again, {len(problems)} problems")
sys.exit(1 if problems or not counted["events"] else 0)
