"""Findings, the survey list to take along, and the assumptions behind the answers."""

from collections import Counter

from django.http import HttpRequest, HttpResponse
from django.template.loader import render_to_string
from django.urls import reverse
from django.utils.safestring import SafeString
from django.views.decorators.http import require_GET, require_http_methods

from secondfix.house import Change, Fault
from secondfix.store import door
from secondfix.web.changing import answered, take
from secondfix.web.checks.grouping import BY, grouped, passed
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.showing import show


@require_GET
def checks(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every finding with value, limit, source, remedy and the way to the row."""
    about = asked(house_id)
    by = request.GET.get("by", "severity")
    by = by if by in BY else "severity"
    findings = about.checked.findings
    context = {
        "about": about,
        "by": by,
        "ways": BY,
        "listed": about.once(f"findings by {by}", lambda house: _listed(house, by)),
        "passed": passed(findings),
        "counts": about.checked.counts,
    }
    return show(request, "checks", "checks/checks.html", context, house_id=house_id)


def _listed(about: Asked, by: str) -> SafeString:
    """The findings under their headings; a large house has hundreds, and many look at them between edits."""
    groups = grouped(about.house, about.checked.findings, by)
    return render_to_string("checks/groups.html", {"about": about, "groups": groups})


@require_GET
def survey(request: HttpRequest, house_id: str) -> HttpResponse:
    """What to look at on site, the looks that settle most first, to print."""
    about = asked(house_id)
    context = {"about": about, "lines": about.checked.survey}
    return show(request, "survey", "checks/survey.html", context, house_id=house_id)


@require_http_methods(["GET", "POST"])
def assumptions(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every assumption with how many findings lean on it; a house's own value set or taken back."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        answer = _set(request, house_id)
        here = reverse("assumptions", args=[house_id])
        sent = answered(request, house_id, answer, to=f"{here}#{request.POST.get('name', '')}")
        if sent is not None:
            return sent
        assert isinstance(answer, door.Refused)  # the others were answered
        faults = answer.faults
    about = asked(house_id)
    leaning = Counter(n for f in about.checked.findings if f.severity for n in f.assumptions)
    rows = [(a, leaning[name], name in about.house.assumptions) for name, a in about.settled.items()]
    rows.sort(key=lambda row: (not row[2], -row[1], row[0].name))
    context = {"about": about, "rows": rows, "faults": faults}
    status = 422 if faults else 200
    return show(request, "assumptions", "checks/assumptions.html", context, house_id=house_id, status=status)


def _set(request: HttpRequest, house_id: str) -> door.Saved | door.Conflicting | door.Refused:
    name, value = request.POST.get("name", ""), request.POST.get("value", "").strip()
    known = asked(house_id).settled.get(name)
    if known is None:
        return door.Refused((Fault("form", "name", f"'{name[:60]}'", "the name of an assumption"),))
    if not value:
        return take(request, house_id, [Change(f"assumptions.{name}", None)])
    if not value.removeprefix("-").isdecimal() or len(value) > 10:
        fault = Fault("form", name, f"'{value[:60]}'", f"a whole number of {known.unit}")
        return door.Refused((fault,))
    low, high = min(known.low, int(value)), max(known.high, int(value))
    choice = {"value": int(value), "low": low, "high": high, "source": request.POST.get("source", "")[:500]}
    return take(request, house_id, [Change(f"assumptions.{name}", choice)])
