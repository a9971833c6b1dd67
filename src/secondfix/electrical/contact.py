"""Contact: the current of a load against the gang's printed rating for its kind."""

from collections.abc import Iterator, Sequence

from secondfix.assumptions import POWER_FACTORS
from secondfix.catalogue import Rating
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import Current, kind_look
from secondfix.electrical.figures import amperes, amperes_between
from secondfix.electrical.motor_edition import edition_limit
from secondfix.electrical.printed import CARRIES, RATING_WORDS, VOLTAGE_LOOK, carried, holds_at, rating_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled
from secondfix.terms import KIND_LABELS, RATING_OF_KIND, Kind, RatingKind

_SHARE = "led_share_of_other_rating_pct"
RULE = Rule(
    "contact",
    "Does the load's current stay within the rating printed for its kind?",
    "EN 60669-1:2018 scope: each kind of load is rated apart (read); I = ΣP / (U · PF), circuit theory",
    may_lean_on=(*POWER_FACTORS, _SHARE, CARRIES),
)
_SHARE_SOURCE = "common practice, no source: a tenth of the rating for filament lamps"
_WITH_GEAR = {RatingKind.SELF_BALLASTED, RatingKind.EXTERNALLY_BALLASTED}
_LESS = "Take a device rated for it, let a contactor switch the load, or split the load."


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact that has a load."""
    voltage = case.house.mains_voltage_v
    for contact in case.contacts:
        if voltage is None:
            says = "Without the mains voltage no current can be worked out."
            yield cannot_tell(RULE, Severity.DANGER, contact.place, says, looks=[VOLTAGE_LOOK])
        else:
            yield _At(case, contact, voltage).answer()


class _At:
    """The question at one contact."""

    def __init__(self, case: Case, contact: Contact, voltage: int) -> None:
        self.case, self.at, self.voltage = case, contact, voltage
        self.current: Current = case.current(contact.load_id, mains_voltage_v=voltage)
        self.value = amperes_between(self.current.low_ma, self.current.high_ma)
        self.lean = (*self.current.assumptions, *carried(contact.model.ratings, mains_voltage_v=voltage))

    def answer(self) -> Finding:
        kind = settled(self.at.load.kind)
        if kind is None:
            return self._kind_unknown()
        printed = self.at.model.rating_for(RATING_OF_KIND[kind])
        if printed is not None:
            return self._against(printed, kind)
        return self._with_gear(kind) if RATING_OF_KIND[kind] in _WITH_GEAR else self._not_printed(kind)

    def _against(self, printed: Rating, kind: Kind) -> Finding:
        limit = f"{amperes(printed.current_ma)} at {printed.at_voltage_v} V for {RATING_WORDS[printed.kind]}"
        if not self._holds(printed):
            says = f"The rating is printed at {printed.at_voltage_v} V; the house has {self.voltage} V."
            return self._cannot(says, limit, [self._rating_look(printed.kind)])
        if self.current.low_ma > printed.current_ma:
            return self._over(kind, limit, source=f"{RULE.source}; rating to {printed.standard}")
        if self.current.high_ma is not None and self.current.high_ma <= printed.current_ma:
            also = (self.at.device_id, self.at.load_id)
            names = self.lean
            return passes(RULE, self.at.place, value=self.value, limit=limit, also=also, assumptions=names)
        says = f"{self.at.load_words} may draw more than the contact is rated for."
        return self._cannot(says, limit, self.current.looks or self.current.narrower)

    def _with_gear(self, kind: Kind) -> Finding:
        """No rating printed for lamps with gear: a share of another rating is a rule of thumb, not a pass."""
        other = self._rated(RatingKind.TUNGSTEN) or self._rated(RatingKind.RESISTIVE)
        look = self._rating_look(RATING_OF_KIND[kind])
        says = f"The data sheet prints no rating for {RATING_WORDS[RATING_OF_KIND[kind]]}."
        if other is None:
            return self._cannot(says, "no rating printed", [look, *self.current.looks])
        share = self.case.assumptions[_SHARE].low
        part = f"{share} % of {amperes(other.current_ma)} for {RATING_WORDS[other.kind]}"
        if self.current.low_ma > other.current_ma:
            limit = f"{amperes(other.current_ma)} for {RATING_WORDS[other.kind]}"
            return self._over(kind, limit)
        high = self.current.high_ma
        if high is not None and 100 * high <= share * other.current_ma:
            return fails(
                RULE,
                Severity.ADVICE,
                self.at.place,
                f"{says} {self.at.load_words} stays within {part}, a rule of thumb that no standard states.",
                value=self.value,
                limit=part,
                remedy="Take a device that prints a rating for this kind, or ask the maker for one.",
                source=_SHARE_SOURCE,
                also=(self.at.device_id, self.at.load_id),
                assumptions=(*self.lean, _SHARE),
            )
        return self._cannot(says, part, [look, *self.current.looks], lean=(_SHARE,), source=_SHARE_SOURCE)

    def _motor(self, limit_ma: int, standard: str) -> Finding:
        """No rating printed for motors: the edition of the switch's standard says how much is tested."""
        limit = f"{amperes(limit_ma)} for motors in {standard}"
        if self.current.low_ma > limit_ma:
            return self._over(Kind.MOTOR, limit)
        if self.current.high_ma is not None and self.current.high_ma <= limit_ma:
            also, names = (self.at.device_id, self.at.load_id), self.lean
            return passes(RULE, self.at.place, value=self.value, limit=limit, also=also, assumptions=names)
        says = f"{self.at.load_words} may draw more than a switch to {standard} is tested for."
        return self._cannot(says, limit, self.current.looks or self.current.narrower)

    def _not_printed(self, kind: Kind) -> Finding:
        """No kind is gentler to a contact than a resistive load: above that rating it fails."""
        if kind is Kind.MOTOR and (tested := self._tested_for_motors()):
            return self._motor(*tested)
        resistive = self._rated(RatingKind.RESISTIVE)
        if resistive is not None and self.current.low_ma > resistive.current_ma:
            return self._over(kind, f"{amperes(resistive.current_ma)} for resistive loads")
        says = f"The data sheet prints no rating for {RATING_WORDS[RATING_OF_KIND[kind]]}."
        looks = [self._rating_look(RATING_OF_KIND[kind]), *self.current.looks]
        return self._cannot(says, "no rating printed", looks)

    def _kind_unknown(self) -> Finding:
        ratings = self.at.model.ratings
        largest = max((r.current_ma for r in ratings), default=0)
        whole = self._rated(RatingKind.RESISTIVE) and all(self._holds(r) for r in ratings)
        if whole and self.current.low_ma > largest:
            return self._over(None, f"{amperes(largest)}, the largest rating of any kind")
        says = f"What kind of load {self.at.load_words} is, is not known."
        looks = dict.fromkeys([kind_look(self.at.load_id, self.at.load_words), *self.current.looks])
        return self._cannot(says, "the rating for its kind", list(looks))

    def _tested_for_motors(self) -> tuple[int, str] | None:
        voltage, assumptions = self.voltage, self.case.assumptions
        return edition_limit(self.at.model, mains_voltage_v=voltage, assumptions=assumptions)

    def _rated(self, kind: RatingKind) -> Rating | None:
        printed = self.at.model.rating_for(kind)
        return printed if printed is not None and self._holds(printed) else None

    def _holds(self, rating: Rating) -> bool:
        return holds_at(rating, mains_voltage_v=self.voltage, assumptions=self.case.assumptions)

    def _rating_look(self, kind: RatingKind) -> Look:
        return rating_look(self.at.model, kind, mains_voltage_v=self.voltage)

    def _over(self, kind: Kind | None, limit: str, source: str = "") -> Finding:
        what = f", {KIND_LABELS[kind]}," if kind else ""
        return fails(
            RULE,
            Severity.DANGER,
            self.at.place,
            f"{self.at.load_words}{what} draws more than the contact is rated for.",
            value=self.value,
            limit=limit,
            remedy=_LESS,
            source=source,
            also=(self.at.device_id, self.at.load_id),
            assumptions=self.lean,
        )

    def _cannot(
        self, says: str, limit: str, looks: Sequence[Look], *, lean: tuple[str, ...] = (), source: str = ""
    ) -> Finding:
        return cannot_tell(
            RULE,
            Severity.DANGER,
            self.at.place,
            says,
            looks=looks,
            value=self.value,
            limit=limit,
            source=source,
            also=(self.at.device_id, self.at.load_id),
            assumptions=(*self.lean, *lean),
        )
