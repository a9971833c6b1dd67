"""The as-built house: what entries change in the document, what they cannot, and adoption."""

from typing import Any

import pytest

from secondfix.catalogue import Model
from secondfix.house import Duty, Fact, as_canonical_json, begin
from secondfix.journal import (
    Adoption,
    AsBuilt,
    Entry,
    adopt,
    as_built,
    as_built_as_json,
    journal_of,
    merge,
)
from secondfix.journal.differences import differences
from secondfix.terms import Known, Protocol, WiringRules
from tests.example_house import document, house, models
from tests.journal.writing import FIT_D31, HOUSE, changed, entry_id, found, write

BOX = {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": {}}}
ADOPT: dict[str, Any] = {
    "entry_id": entry_id(500),
    "revision": "A",
    "to_revision": "B",
    "writer": "office",
    "at": "2031-06-01T08:00+02:00",
}


def built(*entries: Entry, models: dict[str, Model] | None = None) -> AsBuilt:
    return as_built(HOUSE, journal_of(entries), models=models or {})


def says(b: AsBuilt) -> list[str]:
    return [d.says for d in b.differences]


def words(b: AsBuilt) -> list[str]:
    return [t.words for t in b.told]


def correction(number: int, path: str, value: object, subject: str, **fields: Any) -> Entry:
    return write(number, "survey_corrected", subject, path=path, found=value, **fields)


def test_an_empty_journal_gives_the_revision_itself() -> None:
    b = built()
    assert b.house is HOUSE
    assert (b.differences, b.remarks, b.told, b.fresh) == ((), (), (), ())


def test_a_fact_found_differs_in_words_with_unit_and_how_it_is_known() -> None:
    b = built(correction(1, "boxes.B1.depth_mm", found(35), "box:B1"))
    assert says(b) == ["Wall box B1, depth: the revision says 47 mm (seen open); found 35 mm (measured)."]
    assert b.differences[0].entries == (entry_id(1),)
    fact = b.house.boxes["B1"].depth_mm
    assert fact is not None
    assert fact.value == 35


def test_in_an_nec_house_lengths_differ_in_inches_too_and_volumes_in_cubic_inches() -> None:
    house = HOUSE.model_copy(update={"wiring_rules": WiringRules.NEC})
    depth = correction(1, "boxes.B1.depth_mm", found(35), "box:B1")
    # 47 mm are 1.850 in, 35 mm 1.378 in.
    assert says(as_built(house, journal_of((depth,)), models={})) == [
        'Wall box B1, depth: the revision says 47 mm (1 7/8") (seen open); found 35 mm (1 3/8") (measured).'
    ]
    box = house.boxes["B1"].model_copy(update={"volume_mm3": Fact(value=294_967, known=Known.MEASURED)})
    measured = house.model_copy(update={"boxes": {**house.boxes, "B1": box}})
    assert [d.found for d in differences(house, measured, {})] == ["18.0 in³ (measured)"]
    plain = measured.model_copy(update={"wiring_rules": WiringRules.IEC})
    assert [d.found for d in differences(HOUSE, plain, {})] == ["294967 mm³ (measured)"]


def test_a_fact_that_turns_out_unknown_goes() -> None:
    b = built(correction(1, "boxes.B1.depth_mm", None, "box:B1"))
    assert b.house.boxes["B1"].depth_mm is None
    assert says(b)[0].endswith("found nothing.")


@pytest.mark.parametrize(
    ("path", "value", "subject"),
    [
        ("boxes.B1.depth_mm", 35, "box:B1"),
        ("boxes.B1.depth_mm", found(100_000), "box:B1"),
        ("boxes.B1.room", None, "box:B1"),
        ("boxes.B9", "a box", "box:B9"),
        ("boxes.B9", {"room": "R2"}, "box:B9"),
        ("boxes.B1.gangs.1.duty", "sings", "gang:B1.1"),
    ],
)
def test_a_fact_that_does_not_fit_is_told_and_changes_nothing(path: str, value: object, subject: str) -> None:
    b = built(correction(1, path, value, subject))
    assert b.house is HOUSE
    assert len(b.told) >= 1
    assert all(t.serious and t.entry == entry_id(1) for t in b.told)


@pytest.mark.parametrize(
    ("path", "value", "subject"),
    [
        ("boxes.B1.room", "R77", "box:B1"),
        ("boxes.L1", {"room": "R2", "mounts": {"1": {}}, "gangs": {}}, "box:L1"),
        ("boxes.B1.gangs.1.duty", {"duty": "feeds", "load": "L2"}, "gang:B1.1"),
        ("boxes.B1.gangs.1.duty", {"duty": "feeds"}, "gang:B1.1"),
        ("boxes.B1.mounts.1.neutral", found("C9"), "box:B1"),
    ],
)
def test_a_fact_that_would_break_the_house_is_set_aside_and_others_stay(
    path: str, value: object, subject: str
) -> None:
    b = built(correction(1, path, value, subject), write(2, "named", "load:L2", name="Bench lamp"))
    assert says(b) == ["Load L2 (Desk), name: the revision says Desk; found Bench lamp."]
    assert [t.entry for t in b.told] == [entry_id(1)]
    assert "cannot be" in words(b)[0]


def test_a_fact_that_breaks_something_else_is_found_alone() -> None:
    """The box stands too high for the storey's height: the fault lies at the box, the entry at the storey."""
    plain = document()
    plain["boxes"]["B1"]["position"]["height_mm"] = 2300
    low = correction(1, "storeys.S0.height_mm", 2100, "storey:S0")
    b = as_built(house(plain), journal_of([low, write(2, "named", "load:L2", name="Bench lamp")]), models={})
    assert [t.entry for t in b.told] == [entry_id(1)]
    assert [d.place for d in b.differences] == ["L2"]


def test_where_only_several_together_break_it_all_are_set_aside() -> None:
    plain = document()
    plain["boxes"]["B1"]["position"]["height_mm"] = 2300
    plain["storeys"]["S1"] = {"name": "Loft", "level_mm": 2800, "height_mm": 2600}
    together = [
        correction(1, "rooms.R1.storey", "S1", "room:R1"),
        correction(2, "storeys.S1.height_mm", 1900, "storey:S1"),
        write(3, "named", "load:L2", name="Bench lamp"),
    ]
    b = as_built(house(plain), journal_of(together), models={})
    assert [t.entry for t in b.told] == [entry_id(n) for n in (1, 2, 3)]
    assert b.differences == ()


def test_a_box_the_book_lacks_comes_in_with_what_was_found_of_it() -> None:
    b = built(
        correction(2, "boxes.B9.depth_mm", found(61), "box:B9"),
        correction(1, "boxes.B9", BOX, "box:B9"),
        correction(3, "boxes.B1.gangs.3", {"note": "behind the plate"}, "gang:B1.3"),
        write(4, "function_tested", "gang:B9.1", answered={}),
    )
    assert b.told == ()
    whole = "Wall box B9 is not in the revision; found: room R2, mounts 1, gangs 1, depth 61 mm (measured)."
    assert says(b)[-1] == whole
    assert "B1.3" in {d.place for d in b.differences}


def test_what_speaks_of_things_not_in_the_house_is_told() -> None:
    b = built(
        write(1, "named", "room:R77", name="Loft"),
        write(2, "function_tested", "gang:B7.1", answered={}),
        write(3, "measured", "link:D01>P9", lqi=80),
        write(4, "joined", "device:D77", network="N1"),
        correction(5, "boxes.B7.depth_mm", found(40), "box:B7"),
        correction(6, "boxes.B1.mounts.2.neutral", found("absent"), "box:B1"),
    )
    assert b.house is HOUSE
    assert [t.entry for t in b.told] == [entry_id(n) for n in range(1, 7)]
    assert all("not in th" in w for w in words(b))


def test_a_swap_leads_every_reference_to_the_entry_that_took_over() -> None:
    plain = document()
    plain["scenes"]["SC1"]["commands"] = [{"device": "D01", "entry": n, "to": "off"} for n in (1, 2, 0)]
    b = as_built(house(plain), journal_of([write(1, "fitted", "device:D31", **FIT_D31)]), models=models())
    assert "D01" not in b.house.devices
    assert [(c.device, c.entry) for c in b.house.scenes["SC1"].commands] == [("D31", 2), ("D31", 1)]
    assert (b.house.outside_uses["U1"].device, b.house.outside_uses["U1"].entry) == ("D31", 1)
    assert any("no longer stands" in s for s in says(b))
    scene = next(d for d in b.differences if d.place == "SC1")
    assert scene.designed.count("device D01") == 3
    assert scene.entries == (entry_id(1),)


def test_a_device_removed_takes_along_what_named_it() -> None:
    plain = document()
    plain["scenes"]["SC1"]["commands"] = [{"device": "D01", "entry": 1, "to": "off"}]
    gone = [write(1, "removed", "device:D01"), write(2, "removed", "device:D02")]
    b = as_built(house(plain), journal_of(gone), models={})
    assert b.house.devices == {}
    assert b.house.scenes["SC1"].commands == b.house.scenes["SC1"].starts == ()
    assert b.house.outside_uses == {}
    assert b.told == ()
    assert {"SC1", "U1", "D01", "D02"} == {d.place for d in b.differences}


def test_entries_about_a_device_that_left_are_history() -> None:
    b = built(
        write(1, "joined", "device:D01", network="N1"),
        write(2, "join_failed", "device:D02", network="N1"),
        write(3, "named", "entry:D01.1", name="Hall ceiling"),
        write(4, "measured", "link:D01>P1", lqi=80),
        write(5, "removed", "device:D01"),
        write(6, "removed", "device:D02"),
    )
    assert (b.told, b.remarks) == ((), ())


def test_a_replaced_device_fitted_again_elsewhere_stays() -> None:
    plain = document()
    plain["places"]["P3"] = {"kind": "surface", "name": "Shelf by the door", "room": "R1"}
    moved = write(1, "fitted", "device:D02", place="P3")
    other = write(2, "fitted", "device:D40", place="P2", model="corvell-pebble@2", replaces="D02")
    b = as_built(house(plain), journal_of([moved, other]), models=models())
    assert {k: d.place for k, d in b.house.devices.items() if d.place} == {"D02": "P3", "D40": "P2"}


def test_replacements_in_a_ring_are_void_and_told() -> None:
    b = built(
        write(1, "fitted", "device:D31", **{**FIT_D31, "replaces": "D01"}),
        write(2, "fitted", "device:D01", replaces="D31"),
        models=models(),
    )
    assert "D01" in b.house.devices
    assert sum("neither counts" in w for w in words(b)) == 2


def test_two_devices_fitted_in_one_mount_are_both_set_aside() -> None:
    fit = {k: v for k, v in FIT_D31.items() if k != "takes_over"}
    b = built(
        write(1, "fitted", "device:D31", **fit), write(2, "fitted", "device:D32", **fit), models=models()
    )
    assert b.house is HOUSE
    assert {t.entry for t in b.told} == {entry_id(1), entry_id(2)}


def test_a_model_that_nobody_has_is_set_aside() -> None:
    b = built(write(1, "fitted", "device:D31", **{**FIT_D31, "model": "nobody-knows@1"}), models=models())
    assert b.house is HOUSE
    assert "a model of the catalogue" in words(b)[0]


def test_another_model_under_the_same_id_is_another_body() -> None:
    joined = write(1, "joined", "device:D02", network="N1", address="00124B0000C0FFEE")
    first = built(joined).house
    other = {"model": "corvell-pebble@3"}
    newer = models()["corvell-pebble@2"].model_copy(update={"edition": 3})
    b = as_built(first, journal_of([write(2, "fitted", "device:D02", **other)]), models={newer.key: newer})
    assert b.house.devices["D02"].address is None
    assert b.house.devices["D02"].model == "corvell-pebble@3"


def test_joined_and_excluded_give_and_take_network_and_address() -> None:
    joined = write(1, "joined", "device:D01", network="N1", address="00124B0000C0FFEE")
    b = built(joined)
    assert b.house.devices["D01"].address == "00124B0000C0FFEE"
    out = built(joined, write(2, "excluded", "device:D01", network="N1", sees=[1]))
    assert (out.house.devices["D01"].network, out.house.devices["D01"].address) == (None, None)


def test_remarks_tell_what_no_document_holds() -> None:
    b = built(
        write(1, "join_failed", "device:D01", network="N1", note="no answer at 3 m"),
        write(2, "skipped", "gang:B1.1", deed="test", reason="a child asleep"),
        write(3, "named", "entry:D01.2", name="Desk lamp"),
        write(4, "purpose_set", "entry:D01.2", purpose="night_light"),
    )
    assert [r.says for r in b.remarks] == [
        "Gang B1.1 was not tested: a child asleep.",
        "Device D01 did not join N1: no answer at 3 m.",
        "Entry D01.2 has the purpose night light in the controller.",
        "Entry D01.2 is called 'Desk lamp' in the controller.",
    ]
    assert b.house is HOUSE


def test_crossed_gangs_are_as_built_as_they_work() -> None:
    b = built(
        write(1, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
        write(2, "function_tested", "gang:B1.2", answered={"L1": "changed"}),
    )
    assert says(b) == [
        "Gang B1.1, duty: the revision says feeds L1; found feeds L2.",
        "Gang B1.2, duty: the revision says feeds L2; found feeds L1.",
    ]


def test_a_load_found_elsewhere_leaves_its_old_gang_not_known() -> None:
    b = built(write(1, "function_tested", "gang:B1.1", answered={"L2": "changed"}))
    assert b.house.boxes["B1"].gangs["2"].duty is Duty.NOT_KNOWN
    assert {d.place: d.entries for d in b.differences} == {"B1.1": (entry_id(1),), "B1.2": (entry_id(1),)}


@pytest.mark.parametrize(
    "fields",
    [
        {"answered": {}},
        {"answered": {"L1": "on"}},
        {"answered": {"L77": "on"}},
        {"answered": {"L2": "on"}, "also_answered": "a bell"},
    ],
)
def test_a_test_that_does_not_settle_the_wire_leaves_the_document(fields: dict[str, Any]) -> None:
    assert built(write(1, "function_tested", "gang:B1.1", **fields)).house is HOUSE


def test_words_of_the_trade_are_shown_for_kinds_and_purposes() -> None:
    b = built(
        correction(1, "loads.L1.kind", found("tungsten"), "load:L1"),
        write(2, "purpose_set", "load:L2", purpose="night_light"),
        correction(3, "boxes.B2.gangs.1.duty", "capped", "gang:B2.1"),
    )
    assert [(d.designed, d.found) for d in b.differences] == [
        ("extends B1.2", "capped"),
        ("LED lamp with built-in driver (seen open)", "tungsten filament lamp (measured)"),
        ("lighting", "night light"),
    ]


def test_a_revision_that_cannot_be_read_is_our_own_fault() -> None:
    broken = changed(HOUSE, rooms={})
    with pytest.raises(ValueError, match="the revision itself"):
        as_built(broken, journal_of([]), models={})


def test_a_sensor_start_follows_its_one_heir_and_no_choice_of_two() -> None:
    def heirs(*devices: str) -> AsBuilt:
        fits = (
            write(n, "fitted", f"device:{d}", place="P2", model="corvell-pebble@2", replaces="D02")
            for n, d in enumerate(devices, start=1)
        )
        return built(*fits, models=models())

    assert [s.device for s in heirs("D40").house.scenes["SC1"].starts] == ["D40"]
    assert heirs("D40", "D41").house.scenes["SC1"].starts == ()


def test_an_output_outside_the_boxes_loses_a_load_that_another_works() -> None:
    plain = document()
    plain["boxes"]["B1"]["gangs"]["1"] = {}
    plain["places"]["P3"] = {"kind": "light_point", "name": "Ceiling rose", "room": "R1"}
    plain["devices"]["D03"] = {"place": "P3", "outputs": {"1": "L1"}}
    test = write(1, "function_tested", "gang:B1.2", answered={"L1": "on"})
    b = as_built(house(plain), journal_of([test]), models={})
    assert b.house.devices["D03"].outputs == {}
    moved = write(2, "fitted", "device:D03", place="P3", outputs={"1": "L1", "2": "L2"})
    assert as_built(house(plain), journal_of([moved]), models={}).told[0].entry == moved.id


def test_the_order_of_a_devices_gangs_is_a_difference() -> None:
    b = built(write(1, "fitted", "device:D01", gangs=["2", "1"]))
    assert says(b) == ["Device D01, gangs: the revision says 1, 2; found 2, 1."]


def test_a_conflict_leaves_the_revision_and_stops_adoption() -> None:
    b = built(*(write(n, "named", "load:L1", name=f"n{n}") for n in (1, 2)))
    assert b.house is HOUSE
    refused = adopt(b, **ADOPT)
    assert isinstance(refused, tuple)
    assert "in conflict" in refused[0]


def test_adopting_makes_a_revision_that_the_same_journal_leaves_alone() -> None:
    journal = journal_of(
        [
            write(1, "fitted", "device:D31", **FIT_D31),
            write(2, "joined", "device:D31", network="N1", address="00124B0000C0FFEE"),
            correction(3, "boxes.B9.cables", found(2), "box:B9"),
            correction(6, "boxes.B9", BOX, "box:B9"),
            write(4, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
            write(5, "named", "load:L1", name="Pendant"),
        ]
    )
    b = as_built(HOUSE, journal, models=models())
    adoption = adopt(b, **ADOPT)
    assert isinstance(adoption, Adoption)
    assert as_canonical_json(adoption.house) == as_canonical_json(b.house)
    assert adoption.entry.took_in == tuple(entry_id(n) for n in range(1, 7))
    whole = merge(journal, journal_of([adoption.entry]))
    again = as_built(adoption.house, whole, models={}, revisions=frozenset({"A"}))
    assert again.house is adoption.house
    assert (again.differences, again.told) == ((), ())
    assert again.fresh == (adoption.entry.id,)


def test_the_second_adoption_takes_in_only_what_is_new() -> None:
    first = journal_of([write(1, "named", "load:L1", name="Pendant")])
    adoption = adopt(as_built(HOUSE, first, models={}), **ADOPT)
    assert isinstance(adoption, Adoption)
    late = write(2, "named", "load:L2", name="Bench lamp")
    b = as_built(adoption.house, merge(first, journal_of([adoption.entry, late])), models={})
    assert b.fresh == (late.id, adoption.entry.id)
    assert len(says(b)) == 1
    second = adopt(b, **{**ADOPT, "entry_id": entry_id(501), "revision": "B", "to_revision": "C"})
    assert isinstance(second, Adoption)
    assert second.entry.took_in == (late.id, adoption.entry.id)
    assert second.entry.sees == (adoption.entry.id,)


def test_there_is_nothing_to_adopt_in_an_empty_journal() -> None:
    refused = adopt(built(), **{**ADOPT, "to_revision": "A"})
    assert isinstance(refused, tuple)
    assert len(refused) == 2


def test_the_answer_as_json_holds_every_part() -> None:
    b = built(
        write(1, "named", "load:L1", name="Pendant"),
        write(2, "snag_raised", "box:B1", words="plate chipped"),
        *(write(n, "named", "load:L2", name=f"n{n}") for n in (3, 4)),
    )
    plain = as_built_as_json(b)
    assert set(plain) == {
        "house", "differences", "remarks", "conflicts", "open_snags", "unknown", "told", "counted",
        "withdrawn", "not_adopted",
    }  # fmt: skip
    assert plain["conflicts"][0]["entries"][0]["name"] == "n3"
    assert plain["counted"] == 4


def test_a_device_fitted_elsewhere_leaves_its_old_stand_behind() -> None:
    b = built(write(1, "fitted", "device:D02", box="B2"))
    assert (b.house.devices["D02"].box, b.house.devices["D02"].place) == ("B2", None)
    back = as_built(b.house, journal_of([write(2, "fitted", "device:D02", place="P1")]), models={})
    assert (back.house.devices["D02"].box, back.house.devices["D02"].place) == (None, "P1")


def test_a_model_of_another_protocol_stands_on_no_network_until_it_joins() -> None:
    plain = document()
    plain["networks"]["N2"] = {"name": "Second", "protocol": "zigbee"}
    pebble = models()["corvell-pebble@2"]
    other = pebble.model_copy(update={"edition": 3, "protocol": Protocol.ZIGBEE})
    fitted = write(1, "fitted", "device:D02", model=other.key)
    alone = as_built(house(plain), journal_of([fitted]), models={other.key: other})
    assert alone.told == ()
    assert alone.house.devices["D02"].network is None
    joined = write(2, "joined", "device:D02", network="N2")
    both = as_built(house(plain), journal_of([fitted, joined]), models={other.key: other})
    assert both.house.devices["D02"].network == "N2"


def test_an_address_belongs_to_one_network() -> None:
    plain = document()
    plain["networks"]["N2"] = {"name": "Second", "protocol": "zwave"}
    plain["devices"]["D01"]["address"] = "00124B0000C0FFEE"
    moved = write(1, "joined", "device:D01", network="N2")
    b = as_built(house(plain), journal_of([moved]), models={})
    assert (b.house.devices["D01"].network, b.house.devices["D01"].address) == ("N2", None)
    out = write(1, "excluded", "device:D01", network="N1")
    b = as_built(house(plain), journal_of([out]), models={})
    assert (b.house.devices["D01"].network, b.house.devices["D01"].address) == (None, None)
    other = write(1, "excluded", "device:D01", network="N2")
    b = as_built(house(plain), journal_of([other]), models={})
    assert b.house.devices["D01"].network == "N1"


def test_nothing_is_added_that_nobody_found() -> None:
    small = begin(house_id=HOUSE.id, name="Small")
    b = as_built(small, journal_of([write(1, "named", "room:R1", name="Porch")]), models={})
    assert as_canonical_json(b.house) == as_canonical_json(small).replace("Hall", "Porch")


def test_a_thing_that_the_book_has_is_not_found_whole_again() -> None:
    b = built(correction(1, "boxes.B1", BOX, "box:B1"))
    assert b.house is HOUSE
    assert "corrected by its facts" in words(b)[0]


def test_a_wrong_fact_does_not_take_along_what_else_was_said_of_the_gang() -> None:
    b = built(
        write(1, "survey_corrected", "gang:B1.1", path="boxes.B1.gangs.1.line", found=found("C77")),
        write(2, "function_tested", "gang:B1.1", answered={"L2": "changed"}),
        write(3, "function_tested", "gang:B1.2", answered={"L1": "changed"}),
    )
    assert [t.entry for t in b.told if t.serious] == [entry_id(1)]
    assert b.house.boxes["B1"].gangs["1"].load == "L2"
