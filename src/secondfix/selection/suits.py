"""What a place asks of a model before anything electrical: body, mounts, gangs, radio, voltage, output.

A want is not a survey: where a model does not do what is asked for, it is refused. Where a surveyed fact
decides and is not known, the answer is *cannot tell*.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Form, Model, NeutralNeed, Output
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails
from secondfix.house import Duty, settled
from secondfix.selection.choice import Spot, WantedGang
from secondfix.selection.ground import Ground
from secondfix.terms import PROTOCOLS, Purpose

_CP = "common practice, no source"
_CARRIES = "rating_carries_down_to_pct"
FORM = Rule("select.form", "Can a device of this form stand here?", _CP)
MOUNTS = Rule("select.mounts", "Does it take as many mounts as are there?", _CP)
GANGS = Rule("select.gangs", "Has it a gang for each that is wanted?", _CP)
NETWORK = Rule("select.network", "Does it speak a protocol that is wanted here?", _CP)
VOLTAGE = Rule(
    "select.voltage",
    "Is any of its ratings printed for the mains voltage of the house?",
    f"the data sheet; {_CP}: one sheet serves 230 V and 240 V, none serves 120 V and 230 V",
    (_CARRIES,),
)
OUTPUT = Rule(
    "select.output", "Is its output made for what the gang feeds?", "IEC 60669-2-1 scope (read); " + _CP
)
DIMMING = Rule("select.dimming", "Does it dim what is to be dimmed?", _CP)
EXTENSION = Rule(
    "select.extension",
    "Is an extension unit made for the switch that it is wired to?",
    "IEC 60669-2-1 (read): a second operating place of another gang; which fits which: the maker's statement",
)
SUPPLY_AT_POINT = Rule(
    "select.supply_at_point", "Is a neutral at the light point, where the module needs one?", _CP
)
RULES: tuple[Rule, ...] = (
    FORM, MOUNTS, GANGS, NETWORK, VOLTAGE, EXTENSION, OUTPUT, DIMMING, SUPPLY_AT_POINT,
)  # fmt: skip

_ON_A_MOUNT = {Form.SWITCH, Form.EXTENSION_UNIT}
_IN_BOX = {*_ON_A_MOUNT, Form.IN_BOX_MODULE, Form.BATTERY_BUTTON}
_AT_LIGHT_POINT = {Form.LUMINAIRE_MODULE, Form.CEILING_MODULE}
_FANS = {Purpose.COMFORT_FAN, Purpose.EXTRACT_FAN}
MOST_OF_PRINTED_PCT = 110


@dataclass(frozen=True, slots=True)
class Asked:
    """One model at one spot."""

    ground: Ground
    spot: Spot
    model: Model

    @property
    def device_id(self) -> str:
        """The device that it would be."""
        return self.spot.device_id or self.ground.first.new_id


def suits(asked: Asked) -> Iterator[Finding]:
    """Every answer that is not a pass, in the order of ``RULES``."""
    for answers in _ANSWERS:
        yield from answers(asked)


def _no(rule: Rule, asked: Asked, says: str, value: str, limit: str) -> Finding:
    remedy = "Take another model."
    return fails(rule, Severity.FAULT, asked.spot.place, says, value=value, limit=limit, remedy=remedy)


def _form(asked: Asked) -> Iterator[Finding]:
    spot, form = asked.spot, asked.model.form
    if spot.in_box:
        stands = form in _IN_BOX
    elif asked.ground.house.places[spot.place].kind == "light_point":
        stands = form in _AT_LIGHT_POINT
    else:
        stands = form not in {*_ON_A_MOUNT, Form.IN_BOX_MODULE}
    if not stands:
        where = "a wall box" if spot.in_box else f"a {_words(asked.ground.house.places[spot.place].kind)}"
        yield _no(
            FORM, asked, f"Its form does not stand at {where}.", _words(form.value), f"what stands at {where}"
        )


def _mounts(asked: Asked) -> Iterator[Finding]:
    takes, there = asked.model.mounts, len(asked.spot.mounts)
    if asked.model.form in _ON_A_MOUNT and takes != there:
        says = f"It takes {_counted(takes, 'mount')}; there {'is' if there == 1 else 'are'} {there}."
        yield _no(MOUNTS, asked, says, str(takes), str(there))


def _gangs(asked: Asked) -> Iterator[Finding]:
    has, wanted = asked.model.gangs, len(asked.spot.gangs)
    if has < wanted:
        says = f"It has {_counted(has, 'gang')}; {wanted} are wanted."
        yield _no(GANGS, asked, says, str(has), f"at least {wanted}")


def _network(asked: Asked) -> Iterator[Finding]:
    wanted, speaks = asked.spot.protocols, asked.model.protocol
    if speaks is not None and wanted and speaks not in wanted:
        limit = " or ".join(PROTOCOLS[p].label for p in wanted)
        says = f"It speaks {PROTOCOLS[speaks].label}; wanted here is {limit}."
        yield _no(NETWORK, asked, says, PROTOCOLS[speaks].label, limit)


def _voltage(asked: Asked) -> Iterator[Finding]:
    mains, printed = asked.ground.house.mains_voltage_v, sorted({r.at_voltage_v for r in asked.model.ratings})
    if not printed:
        return
    value = ", ".join(f"{v} V" for v in printed)
    if mains is None:
        look = Look("house", "mains_voltage_v", "state the mains voltage of the house")
        says = "Whether its ratings are for the mains voltage of the house is not known."
        yield cannot_tell(VOLTAGE, Severity.DANGER, asked.spot.place, says, looks=[look], value=value)
        return
    least_pct = asked.ground.assumptions[_CARRIES].low
    if not any(least_pct * v <= 100 * mains <= MOST_OF_PRINTED_PCT * v for v in printed):
        says = f"Its ratings are printed at {value}; the house has {mains} V."
        yield _no(VOLTAGE, asked, says, value, f"{mains} V")


def printed_for(model: Model, *, mains_voltage_v: int, assumptions: Assumptions) -> bool:
    """Whether any rating is printed for such a mains voltage; True for a model that prints none."""
    least_pct = assumptions["rating_carries_down_to_pct"].low
    printed = {r.at_voltage_v for r in model.ratings}
    return not printed or any(
        least_pct * v <= 100 * mains_voltage_v <= MOST_OF_PRINTED_PCT * v for v in printed
    )


def _extension(asked: Asked) -> Iterator[Finding]:
    if asked.model.form is not Form.EXTENSION_UNIT:
        return
    for gang in asked.spot.gangs:
        if gang.duty not in {Duty.EXTENDS, Duty.NOT_KNOWN}:
            says = f"An extension unit has no output; gang {gang.id} {_DUTIES[gang.duty]}."
            yield _no(EXTENSION, asked, says, _DUTIES[gang.duty], "extends another gang")
        elif gang.extends:
            yield from _made_for(asked, gang.extends)


_DUTIES = {
    Duty.FEEDS: "feeds a load",
    Duty.SCENE_ONLY: "is for scenes only",
    Duty.CAPPED: "is capped",
}


def _made_for(asked: Asked, extended: str) -> Iterator[Finding]:
    box_id, _, gang_no = extended.partition(".")
    devices = asked.ground.house.devices
    at = next((d for d in asked.ground.first.devices_in.get(box_id, ()) if gang_no in devices[d].gangs), None)
    key = devices[at].model if at else None
    model = asked.ground.first.every_model[key] if key else None
    place, value = asked.spot.place, f"{asked.model.maker} on {model.maker if model else 'not decided'}"
    if model is None:
        look = Look(at or extended, "model", f"decide the model that works gang {extended}")
        says = f"Which switch works gang {extended}, that it would be wired to, is not decided."
        yield cannot_tell(EXTENSION, Severity.FAULT, place, says, looks=[look], value=value)
    elif model.maker != asked.model.maker:
        words = f"ask the maker of {model.title} whether {asked.model.title} may be wired to it"
        says = f"It would be wired to {at}, of another maker; neither sheet says that they go together."
        yield cannot_tell(
            EXTENSION,
            Severity.FAULT,
            place,
            says,
            looks=[Look(model.key, "extension_units", words)],
            value=value,
        )


def _output(asked: Asked) -> Iterator[Finding]:
    for gang in asked.spot.outputs:
        answer = _OF_OUTPUT.get(asked.model.output)
        if asked.model.output is Output.NONE:
            says = (
                f"It has no output; gang {gang.id} feeds a load."
                if asked.spot.in_box
                else "It has no output."
            )
            yield _no(OUTPUT, asked, says, "no output", "an output for each load")
        elif answer:
            yield from answer(asked, gang)


def _turns(asked: Asked, gang: WantedGang) -> Iterator[Finding]:
    """Which motors are fans is a matter of purpose; the kind is asked by the electrical rules."""
    load = asked.ground.house.loads[gang.load_id or ""]
    name = f"{load.name} ({gang.load_id})"
    if load.purpose is None:
        look = Look(gang.load_id or "", "purpose", f"ask what {name} is for")
        says = f"It controls the speed of fans; whether {name} is one is not known."
        yield cannot_tell(OUTPUT, Severity.FAULT, asked.spot.place, says, looks=[look])
    elif load.purpose not in _FANS:
        says = f"It controls the speed of fans, and {name} is none."
        yield _no(OUTPUT, asked, says, "no fan", "a fan that may run slower")


def _runs(asked: Asked, gang: WantedGang) -> Iterator[Finding]:
    load = asked.ground.house.loads[gang.load_id or ""]
    name = f"{load.name} ({gang.load_id})"
    if load.purpose is None:
        look = Look(gang.load_id or "", "purpose", f"ask what {name} is for")
        says = f"It runs a motor one way or the other; what {name} is for is not known."
        yield cannot_tell(OUTPUT, Severity.DANGER, asked.spot.place, says, looks=[look])
    elif load.purpose is not Purpose.COVERING:
        says = f"It runs the motor of a blind or shutter, and {name} is none."
        yield _no(OUTPUT, asked, says, "no blind or shutter", "a blind, shutter or awning")


_OF_OUTPUT: dict[Output, Callable[[Asked, WantedGang], Iterator[Finding]]] = {
    Output.FAN_CONTROL: _turns,
    Output.SHUTTER: _runs,
}


def _dimming(asked: Asked) -> Iterator[Finding]:
    if asked.model.output in {Output.DIMMER, Output.FAN_CONTROL}:
        return
    for gang in asked.spot.outputs:
        if gang.dimmed:
            name = f"{asked.ground.house.loads[gang.load_id or ''].name} ({gang.load_id})"
            says = f"{name} is to be dimmed, and it only switches."
            yield _no(DIMMING, asked, says, _words(asked.model.output.value), "a dimmer")


def _supply_at_point(asked: Asked) -> Iterator[Finding]:
    """A lamp's own neutral is the one at its light point; the electrical rules ask of boxes alone."""
    without = {NeutralNeed.NOT_NEEDED, NeutralNeed.EITHER}
    if asked.spot.in_box or not asked.spot.outputs or asked.model.neutral in without:
        return
    loads = [g.load_id or "" for g in asked.spot.outputs]
    if all(settled(asked.ground.house.loads[k].neutral) is None for k in loads):
        looks = [Look(k, "neutral", f"measure which circuit the neutral of {k} belongs to") for k in loads]
        says = "Whether a neutral is at the light point is not known."
        yield cannot_tell(SUPPLY_AT_POINT, Severity.FAULT, asked.spot.place, says, looks=looks)


_ANSWERS = (
    _form, _mounts, _gangs, _network, _voltage, _extension, _output, _dimming, _supply_at_point,
)  # fmt: skip


def _words(value: str) -> str:
    return value.replace("_", " ")


def _counted(n: int, one: str) -> str:
    return f"{n} {one}{'' if n == 1 else 's'}"
