"""Swaps that a visit meets: the demo house, modules at the luminaires, uses of others, and bad questions."""

from pathlib import Path
from typing import Any

import pytest

from secondfix import radio
from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model, read_model
from secondfix.files import shipped_models
from secondfix.house import Fault, House, read_house, schedule, uuid7
from secondfix.journal import Entry, Journal, as_built, journal_of, new_entry
from secondfix.maintenance import (
    LossKind,
    Outcome,
    Refusal,
    StepKind,
    SwapPlan,
    Unit,
    Way,
    device_at,
    swap,
    written,
)
from tests import example_house as ex
from tests.journal.writing import journal, write
from tests.maintenance.random_swaps import case

ASSUMED = default_assumptions()
NOTHING = Journal()


@pytest.fixture(scope="module")
def models(tree: Path) -> dict[str, Model]:
    path = tree / "demo/maintenance/firm/models/brantock-larch-four@1.toml"
    own = read_model(path.read_text(encoding="utf-8"), where=path.name)
    assert isinstance(own, Model), own
    return {**shipped_models(), own.key: own}


@pytest.fixture(scope="module")
def demo(tree: Path, models: dict[str, Model]) -> House:
    house = read_house((tree / "demo/house.json").read_bytes(), where="demo", models=models)
    assert isinstance(house, House)
    return house


@pytest.fixture(scope="module")
def mended(tree: Path, models: dict[str, Model]) -> House:
    house = read_house((tree / "demo/house-mended.json").read_bytes(), where="demo", models=models)
    assert isinstance(house, House)
    return house


def planned(house: House, failed: str, *units: Unit, models: dict[str, Model], **how: Any) -> SwapPlan:
    plan = swap(house, failed, units, models=models, assumptions=ASSUMED, **how)
    assert isinstance(plan, SwapPlan), plan
    return plan


def test_a_four_gang_switch_of_another_maker_in_the_same_box_keeps_everything(
    demo: House, models: dict[str, Model]
) -> None:
    reach = radio.reach(schedule(demo, demo.models), ASSUMED)
    plan = planned(demo, "D08", Unit("brantock-larch-four@1"), models=models, reach=reach)
    assert plan.outcome is Outcome.KEPT
    assert plan.removal.way is Way.REPLACE_FAILED_NODE
    kinds = [s.kind for s in plan.steps]
    assert kinds.index(StepKind.ISOLATE) < kinds.index(StepKind.FIT) < kinds.index(StepKind.JOIN)
    assert kinds.index(StepKind.ISOLATE) < kinds.index(StepKind.REMOVE) < kinds.index(StepKind.TEST)
    assert "licensed" in next(s.words for s in plan.steps if s.kind is StepKind.ISOLATE)
    assert {t.name for t in plan.teach} >= {"House off", "Away"}
    assert not any(t.again for t in plan.teach)  # node and entry numbers stay: trying is enough


def test_what_joins_on_a_bench_joins_before_it_is_fitted(demo: House, models: dict[str, Model]) -> None:
    plan = planned(demo, "D09", Unit("tavrindo-slate-two@1"), models=models)
    kinds = [s.kind for s in plan.steps]
    last = len(kinds) - 1 - kinds[::-1].index(StepKind.JOIN)
    assert kinds.index(StepKind.REMOVE) < kinds.index(StepKind.JOIN)
    assert last < kinds.index(StepKind.ISOLATE) < kinds.index(StepKind.FIT) < kinds.index(StepKind.ENERGISE)
    assert not any("stage" in s.words for s in plan.steps)


def test_a_switch_that_needs_a_neutral_is_refused_where_none_reaches(
    demo: House, models: dict[str, Model]
) -> None:
    plan = planned(demo, "D06", Unit("plimmet-osier-three@1"), models=models)
    assert [r.kind for r in plan.reasons] == [Refusal.FAULT]
    assert "neutral" in plan.reasons[0].words
    assert not plan.steps
    assert not plan.entries
    kept = [n.model for n in plan.nearest if n.outcome is Outcome.KEPT]
    assert kept
    for key in kept:
        assert planned(demo, "D06", Unit(key), models=models).outcome is Outcome.KEPT


def test_a_switch_for_another_mains_voltage_is_a_danger_and_never_among_the_nearest(
    demo: House, models: dict[str, Model]
) -> None:
    plan = planned(demo, "D15", Unit("skelverin-thole@1"), models=models)
    assert [(r.kind, r.about) for r in plan.reasons] == [(Refusal.DANGER, "D34")]
    assert "230 V" in plan.reasons[0].words
    assert not plan.steps
    foreign = {n.model for n in plan.nearest if {r.at_voltage_v for r in models[n.model].ratings} == {120}}
    assert not foreign


def test_each_model_tried_is_told_before_it_is_and_the_rest_may_be_called_off(
    demo: House, models: dict[str, Model]
) -> None:
    told: list[str] = []

    def stop_at_the_third(words: str) -> None:
        told.append(words)
        if len(told) == 3:
            raise InterruptedError

    with pytest.raises(InterruptedError):
        planned(demo, "D15", Unit("tavrindo-finch@1"), models=models, progress=stop_at_the_third)
    assert [words.partition(" of ")[0] for words in told] == ["model 1", "model 2", "model 3"]
    assert any(told[0].endswith(f", {model.title}") for model in models.values())


def test_a_relay_for_a_dimmer_is_for_tonight(demo: House, models: dict[str, Model]) -> None:
    plan = planned(demo, "D15", Unit("plimmet-osier-one@1"), models=models)
    assert plan.outcome is Outcome.LOSSES
    assert {loss.kind for loss in plan.losses} == {LossKind.DIMMING}
    assert plan.for_tonight
    assert plan.nearest[0].model == "plimmet-sedge@1"


def test_fewer_gangs_never_leave_a_pump_that_animals_need_without_supply(
    demo: House, models: dict[str, Model]
) -> None:
    plan = planned(demo, "D08", Unit("ostrabeck-gull-two@2"), models=models, nearest=False)
    assert plan.outcome is Outcome.REFUSED
    assert (Refusal.SUPPLY, "L22") in {(r.kind, r.about) for r in plan.reasons}


def test_two_switches_may_stand_where_one_stood(demo: House, models: dict[str, Model]) -> None:
    plan = planned(
        demo, "D08", Unit("ostrabeck-gull-two@2"), Unit("ostrabeck-gull-two@2"), models=models, nearest=False
    )
    assert [(f.mounts, f.gangs) for f in plan.fits] == [(("1",), ("1", "2")), (("2",), ("3", "4"))]
    assert {n for f in plan.fits for n in f.takes_over} == {"0", "1", "2", "3", "4"}


def test_a_module_at_the_light_point_takes_the_load_and_caps_its_gang(
    demo: House, models: dict[str, Model]
) -> None:
    plan = planned(demo, "D15", Unit("tavrindo-finch@1", load="L35"), models=models, nearest=False)
    assert plan.outcome is Outcome.LOSSES
    assert LossKind.GANG in {loss.kind for loss in plan.losses}
    assert plan.after is not None
    assert plan.after.boxes["B15"].gangs["1"].duty.value == "capped"
    (new,) = [d for d in plan.after.devices.values() if d.outputs.get("1") == "L35"]
    assert new.place == demo.loads["L35"].place
    assert any("keeps its supply" in s.words for s in plan.steps)


# The example house: D01, a two-gang Z-Wave switch in B1.


def example(**changes: Any) -> House:
    plain = ex.document()
    plain.update(changes)
    house = read_house(ex.as_bytes(plain), where="example", models=ex.models())
    assert isinstance(house, House), house
    return house


def test_the_owner_of_an_outside_use_is_asked_before_anything_else() -> None:
    use = {"kind": "routine", "device": "D01", "entry": 2, "words": "blinks at noon"}
    house = example(outside_uses={"U7": use})
    plan = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), nearest=False)
    assert plan.steps[0].kind is StepKind.ASK
    assert "blinks at noon" in plan.steps[0].words
    assert plan.asks[0].now == f"{plan.fits[0].device}.2"


def test_the_node_number_that_the_journal_knows_is_kept_and_expected() -> None:
    house = example()
    known = journal(write(1, "joined", "device:D01", network="N1", node=14))
    plan = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), journal=known, nearest=False)
    joined = next(e for e in plan.entries if e.kind == "joined")
    assert joined.own["node"] == 14
    assert any("node 14" in words for words in plan.removal.words)
    assert all(e.kind != "excluded" for e in plan.entries)


def test_a_name_given_on_site_changes_no_outcome() -> None:
    house = example()
    named = journal(write(1, "named", "entry:D01.1", name="Thursday"))
    plain = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), nearest=False)
    renamed = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), journal=named, nearest=False)
    assert (plain.outcome, plain.losses, plain.reasons) == (renamed.outcome, renamed.losses, renamed.reasons)


def test_ids_once_used_are_never_given_again() -> None:
    spoken = journal(write(1, "removed", "device:D77"))
    plan = planned(
        example(), "D01", Unit("corvell-pair@1"), models=ex.models(), journal=spoken, nearest=False
    )
    assert plan.fits[0].device == "D78"


def test_who_hangs_on_a_repeater_must_be_heard_again_and_is_lost_without_one() -> None:
    house = example()
    reach = radio.reach(schedule(house, house.models), ASSUMED)
    unasked = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), nearest=False)
    assert unasked.children is None
    assert any(s.kind is StepKind.HEAR and "was not asked" in s.words for s in unasked.steps)
    asked = planned(house, "D01", Unit("corvell-pair@1"), models=ex.models(), reach=reach, nearest=False)
    assert asked.children is not None
    assert len([s for s in asked.steps if s.kind is StepKind.HEAR]) == len(asked.children)


QUESTIONS: list[tuple[str, tuple[Unit, ...], str]] = [
    ("nothing to put in", (), "at least one model"),
    ("a model nobody knows", (Unit("corvell-none@9"),), "a model of the catalogue"),
    ("a gang that the box lacks", (Unit("corvell-pair@1", gangs=("7",)),), "one of the gangs of B1"),
    (
        "a gang twice",
        (Unit("corvell-pair@1", gangs=("1",)), Unit("corvell-pair@1", gangs=("1",))),
        "'1' 2 times",
    ),
    ("more gangs than it has", (Unit("corvell-pair@1", gangs=("1", "2", "3")),), "at most 2"),
    ("a mount that the box lacks", (Unit("corvell-pair@1", mounts=("4",)),), "one of the mounts of B1"),
    ("a load that it does not feed", (Unit("corvell-pair@1", load="L9"),), "a load of this house"),
    ("a network that is not there", (Unit("corvell-pair@1", network="N9"),), "a network of this house"),
    ("the code of the failed one", (Unit("corvell-pair@1", code_ref="K01"),), "the code of D01"),
]


@pytest.mark.parametrize(("units", "words"), [q[1:] for q in QUESTIONS], ids=[q[0] for q in QUESTIONS])
def test_a_question_that_cannot_be_asked_is_answered_with_its_faults(
    units: tuple[Unit, ...], words: str
) -> None:
    plain = ex.document()
    plain["devices"]["D01"]["code_ref"] = "K01"
    house = read_house(ex.as_bytes(plain), where="example", models=ex.models())
    assert isinstance(house, House)
    told = swap(house, "D01", units, models=ex.models(), assumptions=ASSUMED)
    assert isinstance(told, list)
    assert words in " | ".join(map(str, told))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("B2", "where no device stands"),
        ("B9", "a device, wall box, gang or place of this house"),
        ("B1.7", "a device, wall box, gang or place of this house"),
    ],
)
def test_an_empty_mount_has_nothing_to_swap(text: str, words: str) -> None:
    plain = ex.document()
    plain["devices"] = {"D01": plain["devices"]["D01"]}
    plain["scenes"] = {}
    plain.pop("outside_uses", None)
    house = read_house(ex.as_bytes(plain), where="example", models=ex.models())
    assert isinstance(house, House), house
    told = device_at(house, text)
    assert isinstance(told, list)
    assert isinstance(told[0], Fault)
    assert words in str(told[0])
    assert device_at(house, "B1") == device_at(house, "B1.2") == "D01"


def test_the_setting_after_a_power_loss_is_written_down_and_told_as_a_step(
    demo: House, models: dict[str, Model]
) -> None:
    plan = planned(demo, "D15", Unit("plimmet-osier-one@1"), models=models)
    new = plan.fits[0].device
    (setting,) = [e for e in plan.entries if e.own.get("path") == f"devices.{new}.after_power_loss"]
    assert setting.own["found"] == "off"
    assert plan.after is not None
    assert plan.after.devices[new].after_power_loss == "off"
    assert "Set for a power loss: returns off" in " ".join(s.words for s in plan.steps)


def test_a_loss_accepted_for_tonight_is_open_until_it_is_cleared(
    mended: House, models: dict[str, Model]
) -> None:
    tonight = planned(mended, "D15", Unit("plimmet-osier-one@1"), models=models)
    assert tonight.for_tonight
    (snag,) = [e for e in tonight.entries if e.kind == "snag_raised"]
    assert (snag.subject, snag.own["severity"]) == ("load:L35", "advice")
    assert "no longer dimmed" in snag.own["words"]
    done = as_written(mended, tonight)
    built = as_built(mended, done, models=models)
    week = planned(built.house, tonight.fits[0].device, Unit("plimmet-sedge@1"), models=models, journal=done)
    assert week.outcome is Outcome.KEPT
    (open_,) = week.snags
    assert open_.subject == "load:L35"
    assert week.steps[-1].words.startswith("Open since earlier: Lost when ")
    assert [s.words for s in as_built(mended, done, models=models).folded.open_snags] == [open_.words]
    other = planned(built.house, "D06", Unit("plimmet-osier-two@1"), models=models, journal=done)
    assert other.snags == ()


def test_every_loss_has_a_snag_whose_subject_the_journal_can_speak_of() -> None:
    """Over random swaps: one snag for each loss, but for gangs whose load is told to be worked by nothing."""
    kinds: set[str] = set()
    for seed in range(400):
        one = case(seed)
        plan = swap(
            one.house, one.failed, [one.unit], models=one.models, assumptions=ASSUMED, whole=one.whole,
            nearest=False,
        )  # fmt: skip
        assert isinstance(plan, SwapPlan)
        if plan.outcome is not Outcome.LOSSES:
            continue
        snags = [e for e in plan.entries if e.kind == "snag_raised"]
        said = " ".join(e.own["words"] for e in snags)
        idle = {e.subject for e in snags if "severity" not in e.own}
        for loss in plan.losses:
            gang = one.house.boxes["B1"].gangs.get(loss.about.partition(".")[2])
            on_load = loss.kind is LossKind.GANG and gang is not None and f"load:{gang.load}" in idle
            assert on_load or loss.words in said, loss
            kinds.add(loss.kind.value)
        built = as_built(one.house, as_written(one.house, plan), models=one.models)
        assert not [t for t in built.told if t.serious], (seed, built.told)
        assert len(built.folded.open_snags) == len(snags)
    assert kinds >= {"dimming", "gang", "press", "scene", "network", "power_loss", "outside_use", "name"}


def test_a_code_that_is_no_reference_is_refused(demo: House, models: dict[str, Model]) -> None:
    faults = swap(
        demo, "D15", [Unit("plimmet-sedge@1", code_ref="34567-89")], models=models, assumptions=ASSUMED
    )
    assert isinstance(faults, list)
    assert [str(f) for f in faults] == [
        ": units[0].code_ref: '34567-89'; expected a reference of the key ring, such as K07"
    ]


def as_written(house: House, plan: SwapPlan) -> Journal:
    """The journal of a plan's entries, written down as they are expected."""
    plain = written(
        plan.entries, NOTHING, house=house.id, revision="A", writer="Oda", at="2033-02-01T08:15+01:00",
        new_id=lambda n: uuid7(unix_ms=1_990_000_000_000 + n, random=bytes(10)),
    )  # fmt: skip
    entries = [new_entry(e, where="test") for e in plain]
    assert all(isinstance(e, Entry) for e in entries), entries
    return journal_of(e for e in entries if isinstance(e, Entry))


def test_the_steps_of_an_nec_house_are_in_its_words(tree: Path, models: dict[str, Model]) -> None:
    house = read_house((tree / "demo/nec-house-mended.json").read_bytes(), where="nec", models=models)
    assert isinstance(house, House)
    steps = planned(house, "D01", Unit("skelverin-pintle-two@2"), models=models).steps
    said = " ".join(s.words for s in steps)
    assert "energize the circuit again" in said
    assert not {"energise", "isolate", "isolated"} & set(said.lower().replace(".", " ").split())
