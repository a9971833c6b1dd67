"""What would help where nothing fits: each kind of change, and that each really helps."""

from copy import deepcopy
from typing import Any

import pytest

from secondfix.selection import Help, PlaceChoice
from tests.electrical.sound import put
from tests.selection.houses import Plain, at, catalogue, choices, demo, found_there, grave, put_into, unknown

MENDED = {**demo("house-mended.json"), "scenes": {}, "outside_uses": {}}
TROUBLED = {**demo(), "scenes": {}, "outside_uses": {}}
NEC = {**demo("nec-house.json"), "scenes": {}, "outside_uses": {}}


def changed(plain: Plain, **paths: Any) -> Plain:
    for path, value in paths.items():
        plain = put(plain, path.replace("__", "."), value)
    return plain


def seen(value: Any) -> Plain:
    return {"value": value, "known": "seen_open"}


def only(*names: str) -> dict[str, Any]:
    return {name: catalogue()[name] for name in names}


def one_help(choice: PlaceChoice, words: str) -> Help:
    assert not choice.fits
    (found,) = [h for h in choice.helps if words in h.words]
    return found


def no_neutral() -> Plain:
    return changed(MENDED, boxes__B10__mounts__1__neutral=seen("absent"))


CASES: list[tuple[str, Plain, str, tuple[str, ...], str, Plain]] = [
    (
        "a neutral pulled",
        no_neutral(),
        "B10",
        ("ostrabeck-gull-two@2",),
        "Pull a neutral of C1 to mount 1 of box B10.",
        MENDED,
    ),
    (
        "a deeper box",
        changed(MENDED, boxes__B10__depth_mm=seen(25)),
        "B10",
        ("ostrabeck-gull-two@2",),
        "Fit a box 47 mm deep in place of 25 mm.",
        changed(MENDED, boxes__B10__depth_mm=seen(47)),
    ),
    (
        "an extension moved",
        MENDED,
        "B11",
        ("plimmet-osier-two@1",),
        "Move the extension B11.1 (of B01.1) to a place of its own",
        changed(
            MENDED,
            boxes__B11__gangs__1__duty="capped",
            boxes__B11__gangs__1__extends=None,
            devices__D11__gangs=["2", "3"],
        ),
    ),
    (
        "lamps of the least load",
        TROUBLED,
        "B15",
        ("plimmet-sedge@1",),
        "that take at least 25 W together",
        changed(TROUBLED, loads__L35__power_mw=seen(6_250)),
    ),
    (
        "a label put right",
        TROUBLED,
        "B06",
        ("plimmet-osier-one@1",),
        "Correct the label of C3 at the board: it must name Cloaks.",
        changed(TROUBLED, circuits__C3__label_rooms=["R02", "R03", "R04"]),
    ),
    (
        "one circuit for line and neutral",
        TROUBLED,
        "B01",
        ("plimmet-osier-three@1",),
        "return light (L03) through C1",
        changed(TROUBLED, loads__L03__neutral=seen("C1")),
    ),
    (
        "a permanent supply",
        TROUBLED,
        "B13",
        ("plimmet-osier-three@1",),
        "Feed light (L30) straight from its circuit; cap B13.1.",
        changed(TROUBLED, boxes__B13__gangs__1__duty="capped", boxes__B13__gangs__1__load=None),
    ),
    (
        "a box of more volume",
        NEC,
        "B02",
        ("skelverin-pintle-two@2",),
        "Fit a box of 21.0 in³ in place of 18.0 in³.",
        changed(NEC, boxes__B02__volume_mm3=seen(344_128)),  # 21 times 16 387.064
    ),
    (
        "another radio",
        MENDED,
        "B10",
        ("quorndel-lathe-two@1",),
        "Let it speak another protocol than Z-Wave",
        MENDED,
    ),
]


@pytest.mark.parametrize(
    ("plain", "place", "models", "words", "after"), [c[1:] for c in CASES], ids=[c[0] for c in CASES]
)
def test_a_change_helps_and_is_told(
    plain: Plain, place: str, models: tuple[str, ...], words: str, after: Plain
) -> None:
    """``after`` is the change made by hand: with it the model that was named fits in the whole house."""
    choice = at(plain, place, models=only(*models))
    found = one_help(choice, words)
    assert found.fits
    assert set(found.fits) <= set(models)
    spot = at(after, place, models=only(*models)).spot
    whole, device_id = put_into(after, spot, catalogue()[found.fits[0]], after_loss(after, spot.device_id))
    there = found_there(whole, spot, device_id)
    assert (grave(there), unknown(there)) == (set(), set())


def after_loss(plain: Plain, device_id: str | None) -> str | None:
    return plain["devices"][device_id].get("after_power_loss") if device_id else None


def test_a_module_at_the_luminaire_helps_where_no_switch_does() -> None:
    choice = at(TROUBLED, "B14")
    found = one_help(
        choice, "Put a module at the luminaire, P34, for light (L34); B14.1 then starts scenes only"
    )
    assert found.place == "P34"
    assert "plimmet-rush@1" in found.fits


def test_gangs_that_extend_a_moved_load_start_scenes_too() -> None:
    """B01.3 extends B12.1: with the module at the landing light, neither has anything left to feed."""
    found = one_help(at(MENDED, "B12", models=only("plimmet-rush@1", "plimmet-wick@1")), "light (L03)")
    assert "B12.1, B01.3 then start scenes only" in found.words


def test_the_other_way_of_a_motor_is_seen_wherever_it_is_fed() -> None:
    """A module at a light point for one way, a gang for the other: two devices, never interlocked."""
    ways = {"kind": seen("motor"), "purpose": "covering", "dimmable": None, "reversing": seen(True)}
    plain = changed(MENDED, loads__L53={**MENDED["loads"]["L53"], **ways, "other_direction": "L54"})
    plain = changed(plain, loads__L54={**MENDED["loads"]["L54"], **ways, "other_direction": "L53"})
    for place in ("P53", "B22"):
        rules = {
            r.because.rule for r in at(plain, place).refused if r.because.place.startswith(("New.", "B22.1"))
        }
        assert "reversing" in rules, place


def test_lamps_that_can_be_dimmed_help_where_dimming_is_wanted() -> None:
    plain = changed(MENDED, loads__L53__to_be_dimmed=True)
    choice = at(plain, "B21", models=only("plimmet-osier-one@1", "murrowfen-scree@1"))
    found = one_help(choice, "that can be dimmed")
    assert found.fits == ("murrowfen-scree@1",)


def test_two_changes_together_where_neither_alone_helps() -> None:
    plain = changed(no_neutral(), boxes__B10__depth_mm=seen(25), loads__L26__place=None)
    choice = at(plain, "B10", models=only("ostrabeck-gull-two@2"))
    assert [h.words for h in choice.helps] == [
        "Pull a neutral of C1 to mount 1 of box B10. Fit a box 47 mm deep in place of 25 mm."
    ]


def test_what_nobody_has_seen_is_looked_for_and_not_built() -> None:
    plain = changed(MENDED, boxes__B10__mounts__1__neutral=None)
    choice = at(plain, "B10", models=only("ostrabeck-gull-two@2"))
    assert not [h for h in choice.helps if "neutral" in h.words]
    assert ("B10", "mounts.1.neutral") in {(x.place, x.field) for d in choice.doubts for x in d.looks}


def test_nothing_is_promised_where_no_change_helps() -> None:
    plain = deepcopy(MENDED)
    plain["loads"]["L26"].pop("place")
    choice = at(plain, "B10", models=only("quorndel-lathe-four@1"))
    assert (choice.fits, choice.doubts, choice.helps) == ((), (), ())


def test_helps_stand_only_where_nothing_fits_and_name_models_of_the_catalogue() -> None:
    for choice in choices(TROUBLED):
        assert not (choice.fits and choice.helps)
        assert all(h.fits and set(h.fits) <= set(catalogue()) for h in choice.helps)


def test_a_joint_for_a_neutral_that_goes_through_the_device() -> None:
    """The words name every circuit that shares the neutral: all of them are de-energized for it."""
    words = (
        "De-energize C3, C4; join the neutral at mount 1 of box B03 by itself and lead a tail to the device."
    )
    before = choices(NEC, places={"B03"}, models=only("skelverin-pintle-two@2"))
    assert [one_help(c, words).fits for c in before] == [("skelverin-pintle-two@2",)] * 2
    after = changed(NEC, boxes__B03__mounts__1__neutral_through=seen(True))
    assert all(c.fits for c in choices(after, places={"B03"}, models=only("skelverin-pintle-two@2")))


def test_a_light_point_that_a_switch_works_is_another_way_and_one_fed_straight_asks_for_none() -> None:
    assert at(MENDED, "P30").spot.instead_of == ("B13.1",)
    assert choices(MENDED, places={"P31"}) == ()
    (spot,) = (c.spot for c in choices(changed(MENDED, loads__L31__permanent_supply=None), places={"P31"}))
    assert spot.instead_of == ()
