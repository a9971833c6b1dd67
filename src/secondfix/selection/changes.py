"""Changes to the wiring, the box or the lamps that could bring a model to fit.

A change is made to what is known: where nobody has seen whether a neutral is there, the help is to look.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from secondfix.house import ABSENT, EARTH, Box, Duty, Fact, Load, is_nec, settled
from secondfix.selection.choice import Refusal, Spot, WantedGang
from secondfix.selection.ground import CAPPED, SCENES_ONLY, Ground
from secondfix.terms import PROTOCOLS, Known, printed_mm, said

# Depths of boxes: UK 25, 35, 47 mm, German 61, 68 mm, NEC 3-1/2 in, which is 89 mm (all secondary).
BOX_DEPTHS_MM = (25, 35, 47, 61, 68, 89)
# Volumes in tenths of a cubic inch, NEC table 314.16(A) (secondary): device and masonry boxes, a gang each;
# and square boxes, which take two devices under a raised cover.
GANG_BOX_TENTHS_IN3 = (125, 140, 180, 210)
SQUARE_BOX_TENTHS_IN3 = (303, 420)
_MM3_OF_TENTH = 1638.7064


def _same_ground(ground: Ground) -> Ground:
    return ground


def _same_spot(spot: Spot) -> Spot:
    return spot


@dataclass(frozen=True, slots=True)
class Change:
    """What to do, in words, and the house and the spot after it."""

    words: str
    ground_of: Callable[[Ground], Ground] = _same_ground
    spot_of: Callable[[Spot], Spot] = _same_spot


def changes(ground: Ground, spot: Spot, refused: tuple[Refusal, ...]) -> list[tuple[Change, ...]]:
    """Kinds of change worth trying here, each with its variants, the smallest first."""
    because = {r.because.rule for r in refused}
    kinds: list[Iterator[Change]] = []
    if spot.in_box:
        kinds += [_labels(ground, spot), _neutral(ground, spot), _one_circuit(ground, spot)]
        kinds += [_joint(ground, spot), _deeper(ground, spot), _extension_moved(spot)]
        kinds += [_larger(ground, spot)] if because & {"box_fill", "box_asked"} else []
        kinds += [_straight(ground, spot)] if "permanent_supply" in because else []
    kinds += [_lamps(ground, spot, refused), _dimmable(ground, spot), _any_radio(spot)]
    return [variants for kind in kinds if (variants := tuple(kind))]


def _fact(value: Any) -> Fact[Any]:
    return Fact[Any](value=value, known=Known.MEASURED)


def _gang_no(gang: WantedGang) -> str:
    return gang.id.partition(".")[2]


def _load_words(ground: Ground, gang: WantedGang) -> str:
    return f"{ground.house.loads[gang.load_id or ''].name} ({gang.load_id})"


def _boxed(box_id: str, change: Callable[[Box], Box]) -> Callable[[Ground], Ground]:
    return lambda ground: ground.with_box(box_id, change(ground.house.boxes[box_id]))


def _loaded(load_ids: list[str], change: Callable[[Load], Load]) -> Callable[[Ground], Ground]:
    def ground_of(ground: Ground) -> Ground:
        loads = ground.house.loads
        return ground.changed(loads={**loads, **{k: change(loads[k]) for k in load_ids}})

    return ground_of


def _labels(ground: Ground, spot: Spot) -> Iterator[Change]:
    """The labels of the circuits at the gangs name the room."""
    house, box = ground.house, ground.house.boxes[spot.place]
    lines = dict.fromkeys(line for g in spot.gangs if (line := settled(box.gangs[_gang_no(g)].line)))
    wrong = [k for k in lines if box.room not in (house.circuits[k].label_rooms or (box.room,))]
    if wrong:

        def ground_of(ground: Ground) -> Ground:
            circuits = dict(ground.house.circuits)
            for key in wrong:
                rooms = (*(circuits[key].label_rooms or ()), box.room)
                circuits[key] = circuits[key].model_copy(update={"label_rooms": rooms})
            return ground.changed(circuits=circuits)

        room = house.rooms[box.room].name
        words = f"Correct the label of {', '.join(wrong)} at the board: it must name {room}."
        yield Change(words, ground_of)


def _neutral(ground: Ground, spot: Spot) -> Iterator[Change]:
    """A neutral of the gang's own circuit where none, an earth or that of another circuit is found."""
    box = ground.house.boxes[spot.place]
    pulled: dict[str, str] = {}
    for gang in spot.gangs:
        mount, line = box.gangs[_gang_no(gang)].mount, settled(box.gangs[_gang_no(gang)].line)
        neutral = settled(box.mounts[mount].neutral)
        if line and neutral not in {None, line}:
            pulled.setdefault(mount, line)
    if not pulled:
        return

    def change(box: Box) -> Box:
        new = {m: box.mounts[m].model_copy(update={"neutral": _fact(line)}) for m, line in pulled.items()}
        return box.model_copy(update={"mounts": {**box.mounts, **new}})

    wrong = {settled(box.mounts[m].neutral) for m in pulled} - {ABSENT}
    restore = said("Restore the protective conductor. ", nec=is_nec(ground.house))
    first = restore if EARTH in wrong else ""
    where = " and ".join(f"of {line} to mount {m}" for m, line in pulled.items())
    yield Change(f"{first}Pull a neutral {where} of box {spot.place}.", _boxed(spot.place, change))


def _one_circuit(ground: Ground, spot: Spot) -> Iterator[Change]:
    """Each load returns through the circuit that feeds it."""
    box, borrowed = ground.house.boxes[spot.place], {}
    for gang in spot.outputs:
        line = settled(box.gangs[_gang_no(gang)].line)
        neutral = settled(ground.house.loads[gang.load_id or ""].neutral)
        if line and neutral and line != neutral:
            borrowed[gang.load_id or ""] = line
    if borrowed:

        def ground_of(ground: Ground) -> Ground:
            loads = dict(ground.house.loads)
            for key, line in borrowed.items():
                loads[key] = loads[key].model_copy(update={"neutral": _fact(line)})
            return ground.changed(loads=loads)

        names = " and ".join(f"{ground.house.loads[k].name} ({k}) through {c}" for k, c in borrowed.items())
        isolate = said("Isolate both circuits", nec=is_nec(ground.house))
        yield Change(f"{isolate} and return {names}, which feeds it.", ground_of)


def _deeper(ground: Ground, spot: Spot) -> Iterator[Change]:
    depth, nec = settled(ground.house.boxes[spot.place].depth_mm), is_nec(ground.house)
    for deeper in BOX_DEPTHS_MM:
        if depth is not None and deeper > depth:
            new = _fact(deeper)
            yield Change(
                f"Fit a box {printed_mm(deeper, nec=nec)} deep in place of {printed_mm(depth, nec=nec)}.",
                _boxed(spot.place, lambda box, new=new: box.model_copy(update={"depth_mm": new})),  # type: ignore[misc] # binds the depth of this turn
            )


def _larger(ground: Ground, spot: Spot) -> Iterator[Change]:
    """A box of more volume, where a house that follows the NEC has one too small."""
    box = ground.house.boxes[spot.place]
    volume, mounts = settled(box.volume_mm3), len(box.mounts)
    sizes = sorted(
        {n * mounts for n in GANG_BOX_TENTHS_IN3} | set(SQUARE_BOX_TENTHS_IN3 if mounts <= 2 else ())
    )
    for tenths in sizes:
        new = int(tenths * _MM3_OF_TENTH)
        if volume is not None and new > volume:
            words = f"Fit a box of {tenths / 10:.1f} in³ in place of {volume / _MM3_OF_TENTH / 10:.1f} in³."
            yield Change(words, _boxed(spot.place, lambda box, new=new: _of_volume(box, new)))  # type: ignore[misc] # binds the volume of this turn


def _of_volume(box: Box, volume_mm3: int) -> Box:
    return box.model_copy(update={"volume_mm3": _fact(volume_mm3)})


def _joint(ground: Ground, spot: Spot) -> Iterator[Change]:
    """A neutral that goes through the device gets a joint of its own."""
    box = ground.house.boxes[spot.place]
    through = [n for n, mount in box.mounts.items() if settled(mount.neutral_through) is False]
    if not through:
        return

    def change(box: Box) -> Box:
        joined = {n: box.mounts[n].model_copy(update={"neutral_through": _fact(True)}) for n in through}
        return box.model_copy(update={"mounts": {**box.mounts, **joined}})

    lines = dict.fromkeys(str(settled(box.mounts[n].neutral)) for n in through)
    sharing = {c for line in lines for c in (line, *_sharing(ground, line))}
    circuits = ", ".join(c for c in ground.house.circuits if c in sharing)
    where = "mounts" if len(through) > 1 else "mount"
    isolate = said("Isolate", nec=is_nec(ground.house))
    yield Change(
        f"{isolate} {circuits}; join the neutral at {where} {', '.join(through)} of box {spot.place} by "
        "itself and lead a tail to the device.",
        _boxed(spot.place, change),
    )


def _sharing(ground: Ground, circuit_id: str) -> Iterator[str]:
    """Circuits that share a neutral with this one, as either says."""
    for other, circuit in ground.house.circuits.items():
        shared = settled(circuit.shares_neutral_with) or ()
        if circuit_id == other:
            yield from shared
        elif circuit_id in shared:
            yield other


def _extension_moved(spot: Spot) -> Iterator[Change]:
    """Extensions get a place of their own; their cores are capped here. Who extends them follows."""
    moved = {g.id: g.extends for g in spot.gangs if g.duty is Duty.EXTENDS}
    if not moved or len(moved) == len(spot.gangs):
        return
    left = tuple(g for g in spot.gangs if g.id not in moved)
    names = " and ".join(f"{gang} (of {extends})" for gang, extends in moved.items())

    def ground_of(ground: Ground) -> Ground:
        behind = [g for g in ground.with_extensions(moved) if g not in moved]
        return ground.with_gangs({**dict.fromkeys(moved, CAPPED), **dict.fromkeys(behind, SCENES_ONLY)})

    yield Change(
        f"Move the extension {names} to a place of its own, such as a battery button; cap its cores here.",
        ground_of,
        lambda spot: replace(spot, gangs=left),
    )


def _straight(ground: Ground, spot: Spot) -> Iterator[Change]:
    """Loads that keep their supply leave the contact; their gangs, and those that extend them, are capped."""
    fed = [g for g in spot.outputs if _keeps_supply(ground, g)]
    if fed:
        idle = ground.with_extensions(g.id for g in fed)
        capped = tuple(
            WantedGang(g.id, Duty.CAPPED, None, None, dimmed=False) if g.id in idle else g for g in spot.gangs
        )
        names = " and ".join(_load_words(ground, g) for g in fed)
        yield Change(
            f"Feed {names} straight from its circuit; cap {', '.join(idle)}.",
            lambda ground: ground.with_gangs(dict.fromkeys(idle, CAPPED)),
            lambda spot: replace(spot, gangs=capped),
        )


def _keeps_supply(ground: Ground, gang: WantedGang) -> bool:
    load = ground.house.loads[gang.load_id or ""]
    return settled(load.permanent_supply) is not False and load.purpose is not None


def _lamps(ground: Ground, spot: Spot, refused: tuple[Refusal, ...]) -> Iterator[Change]:
    """Lamps that reach the least load of a model which is refused for that first, the smallest first."""
    least = {ground.models[r.model].least_load_mw or 0 for r in refused if r.because.rule == "least_load"}
    for wanted_mw in sorted(least):
        small = {
            g.load_id or "": count
            for g in spot.outputs
            if (count := settled(ground.house.loads[g.load_id or ""].count))
            and (power := settled(ground.house.loads[g.load_id or ""].power_mw))
            and power * count < wanted_mw
        }
        if small:
            names = " and ".join(f"{ground.house.loads[k].name} ({k})" for k in small)
            yield Change(
                f"Other lamps for {names}, that take at least {wanted_mw / 1000:g} W together at all times.",
                _brighter(small, wanted_mw),
            )


def _brighter(small: dict[str, int], wanted_mw: int) -> Callable[[Ground], Ground]:
    def ground_of(ground: Ground) -> Ground:
        loads = dict(ground.house.loads)
        for key, count in small.items():
            loads[key] = loads[key].model_copy(update={"power_mw": _fact(-(-wanted_mw // count))})
        return ground.changed(loads=loads)

    return ground_of


def _dimmable(ground: Ground, spot: Spot) -> Iterator[Change]:
    """Lamps that can be dimmed, where dimming is wanted and those that hang there cannot."""
    stiff = [
        g for g in spot.outputs if g.dimmed and settled(ground.house.loads[g.load_id or ""].dimmable) is False
    ]
    if stiff:
        yield Change(
            f"Other lamps for {' and '.join(_load_words(ground, g) for g in stiff)}, that can be dimmed.",
            _loaded(
                [g.load_id or "" for g in stiff], lambda x: x.model_copy(update={"dimmable": _fact(True)})
            ),
        )


def _any_radio(spot: Spot) -> Iterator[Change]:
    if spot.protocols:
        named = " or ".join(PROTOCOLS[p].label for p in spot.protocols)
        yield Change(
            f"Let it speak another protocol than {named}, on a network of its own.",
            spot_of=lambda spot: replace(spot, protocols=()),
        )
