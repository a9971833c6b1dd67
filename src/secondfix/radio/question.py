"""The question: is radio likely to carry every device, and on whom does each hang?"""

from collections.abc import Iterator

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Look, Severity, cannot_tell, fails, passes
from secondfix.house import House, Schedule, is_nec, network_look
from secondfix.radio.answers import DeviceReach, Reach, Word, scale_of
from secondfix.radio.leaning import passed_by
from secondfix.radio.learning.learned import Learned
from secondfix.radio.links import Links
from secondfix.radio.losses import band_mhz
from secondfix.radio.material import Validity, validity
from secondfix.radio.network import Air, Mesh, devices_of, mesh_of
from secondfix.radio.paths import Paths, find_paths
from secondfix.radio.rules import ONE_REPEATER, REACH, THREAD_ROUTERS
from secondfix.radio.sites import position_needs
from secondfix.radio.stations import link_look
from secondfix.terms import LayerMaterial, Protocol, in_feet

MOST_THREAD_ROUTERS = 32  # from memory


def reach(
    rows: Schedule,
    assumptions: Assumptions,
    *,
    paths: Paths | None = None,
    learned: Learned | None = None,
) -> Reach:
    """Ask for every device that has a radio whether it is likely to carry it to its controller.

    Meaning: over every route within the protocol's limits, the chance of the weakest link on the best
    one, in words, with the spread; three answers. ``paths`` may be given from an earlier
    `find_paths` of the same house and assumptions: changing a model costs no new crossings. ``learned`` of
    the same house (see `learn`, and `reach_measured` for both at once) takes the place of what is assumed of
    its links, where at least one was measured. Source: see the rules and `path_losses_db`. Leaves out:
    traffic, interference, and that links of one device fail together.
    """
    house = rows.house
    paths = paths or find_paths(house, assumptions)
    learned = learned if learned and learned.count else None
    scale = learned.scale if learned else scale_of(assumptions)
    air = Air(rows, assumptions, paths, scale, {}, passed_by(paths), learned)
    answers: dict[str, DeviceReach] = {}
    meshes: dict[str, Mesh] = {}
    for network_id, members in _members(house).items():
        needs = _controller_needs(rows, network_id)
        if needs:
            answers |= {key: _lost(rows, key, needs) for key in members}
        else:
            mesh = meshes[network_id] = mesh_of(air, network_id, members)
            answers |= {d.id: d for d in devices_of(rows, mesh)}
    for key, device in house.devices.items():
        if device.network is None and rows.on_radio(key):
            answers[key] = _lost(rows, key, (network_look(key),))
    devices = tuple(answers[key] for key in house.devices if key in answers)
    findings = [_finding(rows, d, air.scale.spread_db[1]) for d in devices]
    for network_id, mesh in meshes.items():
        findings += [*_one_repeater(rows, mesh), *_thread_routers(rows, network_id, mesh.links)]
    links = {key: mesh.links for key, mesh in meshes.items()}
    mhz = {key: max(band_mhz(n.protocol, house.radio_region)) for key, n in house.networks.items()}
    notes = tuple(_notes(rows, paths, assumptions, learned))
    measured = learned.count if learned else 0
    return Reach(devices, tuple(findings), notes, air.scale, paths, links, mhz, measured)


def _members(house: House) -> dict[str, list[str]]:
    """Devices of each network, in the document's order."""
    out: dict[str, list[str]] = {key: [] for key in house.networks}
    for key, device in house.devices.items():
        if device.network is not None:
            out[device.network].append(key)
    return out


def _lost(rows: Schedule, device_id: str, needs: tuple[Look, ...]) -> DeviceReach:
    """A device of which nothing can be computed."""
    place, network = rows.place_of_device(device_id), rows.house.devices[device_id].network
    every = dict.fromkeys((*needs, *position_needs(rows.house, place)))
    return DeviceReach(device_id, place, network, Word.NOT_KNOWN, needs=tuple(every))


def _controller_needs(rows: Schedule, network_id: str) -> tuple[Look, ...]:
    place = rows.house.networks[network_id].controller_place
    if place is None:
        name = rows.house.networks[network_id].name
        return (Look(network_id, "controller_place", f"where the controller of {name} stands"),)
    return position_needs(rows.house, place)


def _finding(rows: Schedule, device: DeviceReach, spread_db: float) -> Finding:
    name = _named(rows, device.id)
    told, leans = f"{device.word.value}, spread {spread_db:g} dB", device.assumptions
    if device.word is Word.LIKELY:
        links = "1 link" if device.hops == 1 else f"{device.hops} links"
        return passes(
            REACH, device.place, value=f"{told}, {links}", limit="likely", also=[device.id], assumptions=leans
        )
    if device.word is Word.UNLIKELY:
        return fails(
            REACH,
            Severity.FAULT,
            device.place,
            f"Radio is unlikely to carry {name} to its controller.",
            value=told,
            limit="likely",
            remedy="a mains-powered device that repeats between the two, or the controller nearer; "
            "then measure the link with the plate or cover fitted",
            also=[device.id],
            assumptions=leans,
        )
    if device.word is Word.NOT_KNOWN:
        return cannot_tell(
            REACH,
            Severity.FAULT,
            device.place,
            f"Whether radio carries {name} to its controller hangs on facts that the survey lacks.",
            looks=device.needs,
            value=device.word.value,
            limit="likely",
            also=[device.id],
            assumptions=leans,
        )
    return cannot_tell(
        REACH,
        Severity.FAULT,
        device.place,
        f"Radio may or may not carry {name} to its controller.",
        looks=(link_look(device.place),),
        value=told,
        limit="likely",
        also=[device.id],
        assumptions=leans,
    )


def _named(rows: Schedule, device_id: str) -> str:
    name = rows.house.devices[device_id].name
    return f"{device_id} ({name})" if name else device_id


def _one_repeater(rows: Schedule, mesh: Mesh) -> Iterator[Finding]:
    """Advice at each repeater on which two or more devices hang, or one if it may be unplugged."""
    stations = mesh.links.stations
    hang: dict[int, list[str]] = {}
    for number, missed in mesh.missed.items():
        for one in missed:
            hang.setdefault(one, []).append(stations[number].id)
    for number, devices in sorted(hang.items()):
        repeater = stations[number]
        if len(devices) < 2 and not repeater.plugged:
            continue
        names = ", ".join(_named(rows, d) for d in sorted(devices))
        plug = " It is plugged in, and may be pulled out." if repeater.plugged else ""
        yield fails(
            ONE_REPEATER,
            Severity.ADVICE,
            repeater.place,
            f"On {_named(rows, repeater.id)} alone {'hang' if len(devices) > 1 else 'hangs'}: {names}.{plug}",
            value=f"{len(devices)} hang on it alone",
            limit="a second likely route for each",
            remedy="one more mains-powered device that repeats, near them",
            also=[repeater.id, *sorted(devices)],
            assumptions=mesh.leaning.of_network(Word.LIKELY),
        )


def _thread_routers(rows: Schedule, network_id: str, links: Links) -> Iterator[Finding]:
    network = rows.house.networks[network_id]
    repeaters = [s.id for s in links.stations[1:] if s.may_repeat(1)]
    if network.protocol is Protocol.MATTER_THREAD and len(repeaters) > MOST_THREAD_ROUTERS:
        yield fails(
            THREAD_ROUTERS,
            Severity.ADVICE,
            links.stations[0].place,
            f"{len(repeaters)} devices of {network.name} could repeat, and the network chooses which do: "
            "a route shown here may not be the one it takes.",
            value=f"{len(repeaters)} devices that repeat",
            limit=f"{MOST_THREAD_ROUTERS} at one time",
            remedy="measure the farthest devices after commissioning",
            also=[network_id],
        )


def _notes(rows: Schedule, paths: Paths, assumptions: Assumptions, learned: Learned | None) -> Iterator[str]:
    """What the figures lean on beyond their stated range, a sentence each."""
    house = rows.house
    used = {s.material for surface in paths.surfaces for r in surface.readings for s in r.layers}
    used -= {LayerMaterial.AIR}
    bands = {mhz for n in house.networks.values() for mhz in band_mhz(n.protocol, house.radio_region)}
    beyond = {
        material
        for material in used
        for mhz in bands
        if validity(material, frequency_mhz=mhz) is Validity.EXTRAPOLATED
    }
    if beyond:
        names = ", ".join(sorted(m.value.replace("_", " ") for m in beyond))
        yield f"The loss of {names} is extrapolated: ITU-R P.2040 does not state it at this frequency."
    limit = assumptions.value("radio_longest_link_m")
    feet = f" ({in_feet(limit, 'm')})" if is_nec(house) else ""
    yield f"Links longer than {limit} m{feet} are not planned on."
    if learned:
        yield from learned.notes
    else:
        yield "Nothing is measured: studs, pipes, reinforcement and furniture are in the spread alone."
