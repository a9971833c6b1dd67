"""Neutral through: taking a device off must not break a neutral that circuits share."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Mount, dead_first, neutral_look, settled

RULE = Rule(
    "neutral_through",
    "Does a shared neutral go on when the device is taken off?",
    "circuit theory: a broken shared neutral leaves the loads in series across two lines; NEC 300.13(B) "
    "(from memory)",
)
_LIMIT = "a joint of its own, and a tail to the device"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box with a mains device that a neutral reaches, or may, which circuits share."""
    sharing = _sharing(case)
    if sharing:
        for box_id, box in case.house.boxes.items():
            here = {n: m for n, m in box.mounts.items() if settled(m.neutral) in {None, *sharing}}
            if case.wired_into(box_id) and any(map(_asks, here.values())):
                yield _answer(case, box_id, here)


def _asks(mount: Mount) -> bool:
    """A neutral of nobody knows which circuit asks for nothing where it goes on by itself."""
    return settled(mount.neutral) is not None or not settled(mount.neutral_through)


def _sharing(case: Case) -> set[str]:
    """Circuits that share a neutral, as any of them says."""
    out: set[str] = set()
    for circuit_id, circuit in case.house.circuits.items():
        shared = settled(circuit.shares_neutral_with)
        if shared:
            out |= {circuit_id, *shared}
    return out


def _answer(case: Case, box_id: str, here: dict[str, Mount]) -> Finding:
    shared = {number for number, mount in here.items() if settled(mount.neutral) is not None}
    through = {number: settled(mount.neutral_through) for number, mount in here.items()}
    broken = [number for number in through if through[number] is False and number in shared]
    unseen = [number for number in through if not through[number]]
    circuits = (str(settled(here[number].neutral)) for number in here if number in shared)
    also = (*dict.fromkeys(circuits), *case.devices_in[box_id])
    if broken:
        return fails(
            RULE,
            Severity.DANGER,
            box_id,
            f"In box {box_id} a neutral that circuits share is joined only through the device: taken off, it "
            "puts up to the voltage between lines across loads elsewhere.",
            value=f"through the device at mount {', '.join(broken)}",
            limit=_LIMIT,
            remedy="Isolate every circuit that shares it; join the neutral by itself and lead a tail to the "
            "device.",
            also=also,
        )
    if unseen:
        looks = [look for number in unseen for look in _looks(box_id, number, shared, through[number])]
        says = f"Whether a shared neutral goes on in box {box_id} without the device is not known."
        return cannot_tell(RULE, Severity.DANGER, box_id, says, looks=looks, limit=_LIMIT, also=also)
    return passes(RULE, box_id, value="by a joint of its own", limit=_LIMIT, also=also)


def _looks(box_id: str, number: str, shared: set[str], through: bool | None) -> Iterator[Look]:
    """Whose neutral it is, and whether it goes on, each where it is not known."""
    if number not in shared:
        yield neutral_look(box_id, number)
    if through is None:
        words = f"see in box {box_id} whether the neutral at mount {number} goes on by a joint of its own"
        yield Look(box_id, f"mounts.{number}.neutral_through", dead_first(words))
