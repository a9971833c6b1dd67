"""Devices fitted, swapped, removed, joined: who stands where, and what named them."""

from secondfix.journal import (
    AsBuilt,
    as_built,
    journal_of,
)
from secondfix.terms import Protocol
from tests.example_house import document, house, models
from tests.journal.building import built, says, words
from tests.journal.writing import FIT_D31, HOUSE, entry_id, write


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


def test_a_sensor_start_follows_its_one_heir_and_no_choice_of_two() -> None:
    def heirs(*devices: str) -> AsBuilt:
        fits = (
            write(n, "fitted", f"device:{d}", place="P2", model="corvell-pebble@2", replaces="D02")
            for n, d in enumerate(devices, start=1)
        )
        return built(*fits, models=models())

    assert [s.device for s in heirs("D40").house.scenes["SC1"].starts] == ["D40"]
    assert heirs("D40", "D41").house.scenes["SC1"].starts == ()


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
