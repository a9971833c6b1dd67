"""Inrush: the peak current at switching on against the peak that the contact is rated for."""

from collections.abc import Iterator

from secondfix.catalogue import Peak
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import count_look, kind_look
from secondfix.electrical.figures import amperes
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled
from secondfix.terms import Kind

RULE = Rule(
    "inrush",
    "Does the peak at switching on stay within the peak that the contact is rated for?",
    "LIA TS35, 2016 (secondary); test concept of NEMA 410 (secondary)",
)
# Electronic gear: its peak may exceed 100 times the steady current (LRC technical note 2011, secondary).
_GEAR = {Kind.LED_DRIVER, Kind.FLUORESCENT_ELECTRONIC, Kind.ELECTRONIC_TRANSFORMER}


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact where the load's peak is printed, or where gear meets a contact with a peak.

    Where neither states a peak nothing is asked here: the rating for the kind, which is tested with gear,
    is all there is to hold on to.
    """
    for contact in case.contacts:
        peak, printed = contact.model.peak, settled(contact.load.inrush_peak_ma)
        kind = settled(contact.load.kind)
        if printed is not None:
            yield _known(contact, printed, peak)
        elif peak is not None and kind is None:
            yield _cannot(
                contact, peak, [kind_look(contact.load_id, contact.load_words), _peak_look(contact)]
            )
        elif peak is not None and kind in _GEAR:
            yield _cannot(contact, peak, [_peak_look(contact)])


def _known(contact: Contact, one_ma: int, peak: Peak | None) -> Finding:
    count, width = settled(contact.load.count), settled(contact.load.inrush_width_us)
    low = one_ma * (count or 1)
    value = f"{'' if count else 'at least '}{amperes(low)}" + (f" for {width} µs" if width else "")
    also = (contact.device_id, contact.load_id)
    if peak is None:
        look = sheet_look(contact.model, "peak", "the largest peak that a contact may switch on")
        says = "The data sheet states no peak for the contact; the load's is printed."
        return cannot_tell(RULE, Severity.FAULT, contact.place, says, looks=[look], value=value, also=also)
    if low > peak.current_ma:
        return fails(
            RULE,
            Severity.FAULT,
            contact.place,
            f"{contact.load_words} may weld the contact at switching on: all its gear starts together.",
            value=value,
            limit=_limit(peak),
            remedy="Limit the inrush, put fewer on one gang, or take a contact rated for the peak.",
            also=also,
        )
    looks = []
    if count is None:
        looks.append(count_look(contact.load_id, contact.load_words))
    if width is None or width > peak.width_us:
        words = f"read how long the peak of {contact.load_words} lasts; {peak.width_us} µs is held"
        looks.append(Look(contact.load_id, "inrush_width_us", words))
    if looks:
        return _cannot(contact, peak, looks, value=value)
    return passes(RULE, contact.place, value=value, limit=_limit(peak), also=also)


def _cannot(contact: Contact, peak: Peak, looks: list[Look], value: str = "not known") -> Finding:
    return cannot_tell(
        RULE,
        Severity.FAULT,
        contact.place,
        f"Whether {contact.load_words} stays within the contact's peak is not known.",
        looks=looks,
        value=value,
        limit=_limit(peak),
        also=(contact.device_id, contact.load_id),
    )


def _limit(peak: Peak) -> str:
    return f"{amperes(peak.current_ma)} for {peak.width_us} µs"


def _peak_look(contact: Contact) -> Look:
    words = f"read the peak at switching on, and how long it lasts, off the gear of {contact.load_words}"
    return Look(contact.load_id, "inrush_peak_ma", words)
