"""What goes in for a failed device: the units asked for, and where each of them then stands."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from secondfix.catalogue import Form, Model
from secondfix.house import Device, Duty, House, Schedule, schedule

IN_BOX = frozenset({Form.SWITCH, Form.IN_BOX_MODULE, Form.BATTERY_BUTTON, Form.EXTENSION_UNIT})


@dataclass(frozen=True, slots=True)
class Unit:
    """One new device as asked for.

    ``gangs`` are the gangs of the failed device's box that it works, in its own order; None lets the book
    choose. ``load`` makes it a module at that load's light point. ``network`` and ``mounts`` are chosen
    where not given. ``code_ref`` is the key ring's reference of its own onboarding code.
    """

    model: str
    gangs: tuple[str, ...] | None = None
    mounts: tuple[str, ...] | None = None
    load: str | None = None
    network: str | None = None
    code_ref: str | None = None


@dataclass(frozen=True, slots=True)
class Fit:
    """One new device as it will stand.

    ``takes_over`` leads each entry of the failed device that this one now does to its own entry number;
    ``new_place`` is the light point to be written down first, where the book has none.
    """

    device: str
    unit: Unit
    model: Model
    network: str | None
    box: str | None = None
    mounts: tuple[str, ...] = ()
    gangs: tuple[str, ...] = ()
    place: str | None = None
    outputs: Mapping[str, str] = field(default_factory=dict)
    takes_over: Mapping[str, int] = field(default_factory=dict)
    new_place: Mapping[str, str] | None = None


@dataclass(frozen=True, slots=True)
class Site:
    """The failed device where it stands. ``taken`` are ids that no new thing may have."""

    rows: Schedule
    failed: str
    models: Mapping[str, Model]
    taken: frozenset[str]

    @property
    def house(self) -> House:
        """The as-built house before the swap."""
        return self.rows.house

    @property
    def device(self) -> Device:
        """The failed device."""
        return self.house.devices[self.failed]

    @property
    def model(self) -> Model | None:
        """Its model, None where that is not known."""
        return self.rows.model_of(self.failed)

    def loads(self) -> dict[int, str]:
        """What each of its entries feeds, by number."""
        return {c.number: c.load_id for c in self.rows.channels_of[self.failed] if c.load_id}


def site_of(house: House, failed: str, models: Mapping[str, Model], taken: frozenset[str]) -> Site:
    """The site of one device of a house that ``read_house`` accepted."""
    return Site(schedule(house, house.models), failed, {**models, **house.models}, taken)


def fits_of(site: Site, units: tuple[Unit, ...], *, whole: bool) -> tuple[Fit, ...]:
    """Where each unit stands and which entries it takes over. ``faults_of`` must have found none.

    ``whole``: commands to the failed device's whole-device entry go to that of the first unit in the box.
    """
    ids = _free(site.taken, site.failed)
    places = _free(site.taken, "P1")
    moved = {unit.load for unit in units if unit.load}
    left = list(site.device.gangs)
    mounts = list(_open_mounts(site))
    fits: list[Fit] = []
    for unit in units:
        model = site.models[unit.model]
        network = unit.network or _network(site, model)
        if unit.load:
            fits.append(_at_light_point(site, unit, model, network, device=next(ids), places=places))
        elif site.device.place:
            fits.append(_at_place(site, unit, model, network, next(ids)))
        else:
            gangs = unit.gangs if unit.gangs is not None else _chosen(site, left, model.gangs, moved)
            left = [g for g in left if g not in gangs]
            own = unit.mounts if unit.mounts is not None else tuple(mounts[: model.mounts])
            mounts = [m for m in mounts if m not in own]
            fits.append(
                Fit(
                    next(ids),
                    unit,
                    model,
                    network,
                    site.device.box,
                    own,
                    gangs,
                    takes_over=_over(site, gangs, moved),
                )
            )
    return tuple(_with_whole(site, fits)) if whole else tuple(fits)


def _free(taken: frozenset[str], like: str) -> Iterator[str]:
    """Ids never used before, numbered on from the highest of the same letters."""
    head = like.rstrip("0123456789") or "D"
    tails = [t[len(head) :] for t in taken if t.startswith(head) and t[len(head) :].isdecimal()]
    width = max((len(t) for t in tails), default=2)
    number = max((int(t) for t in tails), default=0)
    while True:
        number += 1
        yield f"{head}{number:0{width}d}"


def _open_mounts(site: Site) -> Iterator[str]:
    """Mounts of the failed device first, then those of its box that no device takes, nearest first."""
    box = site.house.boxes.get(site.device.box or "")
    if box is None:
        return
    yield from site.device.mounts
    others = {m for d, o in site.house.devices.items() if o.box == site.device.box for m in o.mounts}
    free = [m for m in box.mounts if m not in others]
    near = min((int(m) for m in site.device.mounts), default=1)
    yield from sorted(free, key=lambda m: (abs(int(m) - near), int(m)))


def _network(site: Site, model: Model) -> str | None:
    """The failed device's network if the model speaks it, else the first that it does speak."""
    if model.protocol is None:
        return None
    networks = site.house.networks
    own = site.device.network
    if own and networks[own].protocol is model.protocol:
        return own
    return next((key for key, n in networks.items() if n.protocol is model.protocol), None)


def _chosen(site: Site, left: list[str], count: int, moved: set[str]) -> tuple[str, ...]:
    """As many gangs as the model has, those first that most would miss, in the failed device's order."""
    started = {s.gang for scene in site.house.scenes.values() for s in scene.starts if s.gang}

    def missed(slot: str) -> int:
        gang_id = f"{site.device.box}.{slot}"
        gang = site.rows.rows[gang_id].gang
        if gang.duty is Duty.FEEDS and gang.load not in moved:
            return 0
        if gang_id in started:
            return 1
        return {Duty.EXTENDS: 2, Duty.NOT_KNOWN: 2, Duty.SCENE_ONLY: 3, Duty.FEEDS: 3}.get(gang.duty, 4)

    best = sorted(left, key=lambda g: (missed(g), left.index(g)))[:count]
    return tuple(g for g in left if g in best)


def _over(site: Site, gangs: tuple[str, ...], moved: set[str]) -> dict[str, int]:
    feeds = site.loads()
    before = {slot: n for n, slot in enumerate(site.device.gangs, 1)}
    return {
        str(before[slot]): n
        for n, slot in enumerate(gangs, 1)
        if slot in before and feeds.get(before[slot]) not in moved
    }


def _at_light_point(
    site: Site, unit: Unit, model: Model, network: str | None, *, device: str, places: Iterator[str]
) -> Fit:
    load = site.house.loads[unit.load or ""]
    feeds = {load_id: n for n, load_id in site.loads().items()}
    over = {str(feeds[unit.load]): 1} if unit.load in feeds else {}
    place, new = load.place, None
    if place is None:
        place = next(places)
        new = {"kind": "light_point", "name": f"{load.name} point", "room": load.room}
    outputs = {"1": unit.load or ""}
    return Fit(device, unit, model, network, place=place, outputs=outputs, takes_over=over, new_place=new)


def _at_place(site: Site, unit: Unit, model: Model, network: str | None, device: str) -> Fit:
    outputs = {n: load for n, load in site.device.outputs.items() if int(n) <= model.gangs}
    count = len(site.rows.channels_of[site.failed]) or 1
    over = {str(n): n for n in range(1, min(count, max(model.gangs, 1)) + 1)}
    return Fit(device, unit, model, network, place=site.device.place, outputs=outputs, takes_over=over)


def _with_whole(site: Site, fits: list[Fit]) -> Iterator[Fit]:
    """The whole-device entry goes to the first unit that has one and stands where the failed one stood."""
    led = False
    had = site.model is None or site.model.whole_entry
    for fit in fits:
        if had and not led and fit.unit.load is None and fit.model.whole_entry:
            led = True
            over = {"0": 0, **fit.takes_over}
            yield Fit(
                fit.device, fit.unit, fit.model, fit.network, fit.box, fit.mounts, fit.gangs, fit.place,
                fit.outputs, over, fit.new_place,
            )  # fmt: skip
        else:
            yield fit
