"""What can be printed, and its making aside from the pages."""

import io
import zipfile
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime

from django.http import HttpRequest, QueryDict

from secondfix.actions.pack import Site, drawings, pack
from secondfix.house import Fault
from secondfix.papers import Setting, SheetSize, TitleBlock, pack_file
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame import jobs
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.site import OnSite, clock, revision_of

KINDS = {
    "pack": ("Handover pack", "everything about the house on sheets with numbers, for whoever lives in it"),
    "findings": ("Findings", "what is wrong and what cannot be told, with the survey list"),
    "worksheets": ("Worksheets", "a sheet for each device in the order of joining, with its cautions"),
    "all": ("All of them", "the three papers, every plan and every elevation"),
}
"""What can be chosen: title, and what it is."""
LONGEST_FIELD = 40


@dataclass(frozen=True, slots=True)
class Printed:
    """Files by name; or every text that no font at hand can print."""

    files: Mapping[str, bytes]
    faults: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Order:
    """The fields of the form: what, the title block, the paper's size, whether as built."""

    what: str
    issue: str
    drawn_by: str
    on: date
    size: SheetSize | None
    as_built: bool


def order_of(request: HttpRequest, about: Asked, sent: QueryDict) -> Order | list[Fault]:
    """What the form asks for, its empty fields as usual; or every field that cannot be."""
    faults = []
    what = sent.get("what", "findings")
    if what not in KINDS:
        faults.append(Fault("form", "what", f"'{what[:40]}'", f"one of {', '.join(KINDS)}"))
    issue = sent.get("issue", "").strip() or usual_issue(about)
    drawn_by = sent.get("drawn_by", "").strip() or person(request).username
    for name, text in (("issue", issue), ("drawn_by", drawn_by)):
        if len(text) > LONGEST_FIELD or not text.isprintable():
            faults.append(Fault("form", name, f"{len(text)} characters", f"1 to {LONGEST_FIELD} on one line"))
    on, day = sent.get("on", "").strip(), today()
    try:
        day = date.fromisoformat(on) if on else day
    except ValueError:
        faults.append(Fault("form", "on", f"'{on[:40]}'", "a day such as 2031-05-06"))
    size = sent.get("size", "")
    if size and size not in list(SheetSize):
        faults.append(Fault("form", "size", f"'{size[:40]}'", f"one of {', '.join(SheetSize)}"))
    if faults:
        return faults
    return Order(what, issue, drawn_by, day, SheetSize(size) if size else None, "as_built" in sent)


def usual_issue(about: Asked) -> str:
    """The letter of the issue where this edit went out under one, else draft."""
    issues = door.issues(about.house.id)
    return issues[0].letter if issues and issues[0].number == about.number else "draft"


def today() -> date:
    """Today, for the title block."""
    return datetime.now(UTC).astimezone().date()


def names_of(about: Asked, what: str) -> tuple[str, ...]:
    """The files that a choice makes."""
    papers = {"pack": pack_file(about.house), "findings": "findings.pdf", "worksheets": "worksheets.pdf"}
    return (papers[what],) if what in papers else (*papers.values(), *drawings(about.rows))


def titles(about: Asked) -> dict[str, str]:
    """Each drawing by its name, with what it shows."""
    house, found = about.house, {}
    for file in drawings(about.rows):
        name = file.removesuffix(".svg")
        kind, _, thing = name.partition("-")
        whole = house.storeys.get(thing) if kind == "plan" else house.rooms.get(thing)
        found[name] = f"{kind.capitalize()}, {whole.name if whole else thing}"
    return found


def begin(request: HttpRequest, site: OnSite, order: Order) -> jobs.Job:
    """Print aside. Everything is read before it begins. Raises jobs.TooManyError."""
    about, journal = site.about, site.journal
    only = names_of(about, order.what)
    setting = Setting(TitleBlock(order.issue, order.on, order.drawn_by), order.size)
    on_site = Site(journal, clock(), revision_of(about.number)) if order.as_built else None

    def work(progress: jobs.Progress) -> Printed:
        made = pack(
            about.house,
            assumptions=about.firm.assumptions,
            setting=setting,
            models=about.firm.models,
            site=on_site,
            # As built there may be other rooms and storeys: with everything asked, everything is made.
            only=None if order.what == "all" else only,
            progress=progress,
        )
        return Printed({}, tuple(map(str, made))) if isinstance(made, list) else Printed(made.files)

    return jobs.start(
        house_id=about.house.id,
        by=person(request).username,
        title=KINDS[order.what][0] + (", as built" if order.as_built else ""),
        steps=len(only) + 1,
        work=work,
        size_of=lambda printed: sum(map(len, printed.files.values())),
    )


def zipped(files: Mapping[str, bytes], on: datetime) -> bytes:
    """All files in one."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in files.items():
            archive.writestr(zipfile.ZipInfo(name, on.timetuple()[:6]), data, zipfile.ZIP_DEFLATED)
    return out.getvalue()
