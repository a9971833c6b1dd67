"""What function tests tell of a house's wiring, written into a draft."""

from secondfix.journal.draft import Draft, Plain, without
from secondfix.journal.facts import FunctionTested
from secondfix.journal.feeding import Wiring, as_tested
from secondfix.journal.folding import Folded
from secondfix.journal.subject import subject_of


def wire(draft: Draft, folded: Folded) -> None:
    """Let gangs feed what they were found to work, as far as the tests settle it."""
    tests = _tests(draft, folded)
    before = _wiring(draft)
    after = as_tested(before, {c: set(test.answered) for c, test in tests.items()})
    for channel in sorted(before.feeds.keys() | after.feeds.keys()):
        load = after.feeds.get(channel)
        if load != before.feeds.get(channel):
            _write(draft, channel, load)
            causes = [t for c, t in tests.items() if c == channel or before.feeds.get(channel) in t.answered]
            draft.touch(_path(draft, channel), *causes)


def _tests(draft: Draft, folded: Folded) -> dict[str, FunctionTested]:
    """Tests whose every answer is a load of the book; an entry of a device in a box says nothing of wires."""
    loads, tests = draft.all("loads"), {}
    for test in folded.each("working", FunctionTested):
        subject = subject_of(test.subject)
        outside = subject.kind == "entry" and "place" in draft.all("devices").get(subject.owner, {})
        speaks = subject.kind == "gang" or (outside and subject.part != "0")
        if speaks and not test.also_answered and all(load in loads for load in test.answered):
            tests[subject.id] = test
    return tests


def _wiring(draft: Draft) -> Wiring:
    feeds: dict[str, str] = {}
    loose: set[str] = set()
    for box_id, box in draft.all("boxes").items():
        for number, gang in box["gangs"].items():
            duty = gang.get("duty", "not_known")
            if duty == "feeds" and "load" in gang:
                feeds[f"{box_id}.{number}"] = gang["load"]
            elif duty == "not_known":
                loose.add(f"{box_id}.{number}")
    for device_id, device in draft.all("devices").items():
        if "place" in device:
            loose |= {f"{device_id}.{n}" for n in range(1, 100)}
            feeds |= {f"{device_id}.{n}": load for n, load in device.get("outputs", {}).items()}
    return Wiring(feeds, frozenset(loose - feeds.keys()))


def _path(draft: Draft, channel: str) -> str:
    owner, _, number = channel.partition(".")
    return f"boxes.{owner}.gangs.{number}" if owner in draft.all("boxes") else f"devices.{owner}"


def _write(draft: Draft, channel: str, load: str | None) -> None:
    owner, _, number = channel.partition(".")
    box = draft.all("boxes").get(owner)
    if box is not None:
        rest = without(box["gangs"][number], ["duty", "load", "extends"])
        said: Plain = {"duty": "not_known"} if load is None else {"duty": "feeds", "load": load}
        box["gangs"][number] = {**rest, **said}
        return
    outputs = draft.all("devices")[owner].setdefault("outputs", {})
    if load is None:
        outputs.pop(number, None)
    else:
        outputs[number] = load
