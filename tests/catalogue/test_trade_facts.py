"""Facts of the trade that shipped models must be able to say. Each: common practice, no source."""

from secondfix.catalogue import Act, Form, NeutralNeed, Output, Removal, Stated
from secondfix.terms import Protocol
from tests.catalogue.shipped import shipped

MODELS = shipped()


def test_a_zigbee_switch_may_join_on_any_button_held_ten_seconds() -> None:
    """Common practice, no source."""
    step = MODELS["plimmet-osier-three@1"].join.steps[1]
    assert (step.act, step.button, step.hold_ms) == (Act.HOLD, "any button", 10_000)


def test_a_device_may_want_three_quick_presses_of_a_button_behind_the_front() -> None:
    """Common practice, no source."""
    steps = MODELS["tavrindo-slate-two@1"].join.steps
    at = next(n for n, step in enumerate(steps) if step.act is Act.PRESS)
    assert steps[at].times == 3
    assert "behind the front" in (steps[at].button or "")
    assert Act.RELEASE_FRONT in {step.act for step in steps[:at]}
    assert steps[-1].act is Act.REFIT_FRONT


def test_a_reset_may_be_presses_followed_by_a_hold() -> None:
    """Common practice, no source."""
    reset = MODELS["tavrindo-slate-two@1"].reset
    assert reset
    step = next(s for s in reset.steps if s.act is Act.PRESS_THEN_HOLD)
    assert step.times
    assert step.hold_ms


def test_a_zwave_device_wants_the_same_gesture_once_to_exclude_and_once_to_include() -> None:
    """Common practice, no source."""
    for key in ("ostrabeck-gull-four@1", "ostrabeck-gull-two@1", "ostrabeck-gull-two@2"):
        model = MODELS[key]
        assert model.remove
        assert model.remove.steps == model.join.steps
    assert MODELS["ostrabeck-gull-four@1"].removal_before_join is Removal.ALWAYS


def test_zwave_joins_take_longer_far_from_the_controller() -> None:
    """Common practice, no source."""
    times = {m.key: (m.join.near_s, m.join.far_s) for m in MODELS.values() if m.protocol is Protocol.ZWAVE}
    assert times
    assert {key for key, (near, far) in times.items() if near is None or far is None or far <= near} == set()


def test_a_zwave_switch_of_n_gangs_shows_n_plus_one_entries() -> None:
    """Common practice, no source; why it does: Multi Channel class, root device beside its end points."""
    counted = {m.key: (m.gangs, m.entries) for m in MODELS.values() if m.protocol is Protocol.ZWAVE}
    assert counted == {
        "ostrabeck-gull-four@1": (4, 5),
        "ostrabeck-gull-two@1": (2, 3),
        "ostrabeck-gull-two@2": (2, 3),
        "ostrabeck-heron@1": (1, 1),
    }


def test_zigbee_and_matter_switches_show_one_entry_per_gang() -> None:
    """Zigbee: one endpoint per gang; Matter: loads on endpoints 1 to n."""
    others = [m for m in MODELS.values() if m.protocol is not Protocol.ZWAVE and m.gangs]
    assert {m.key for m in others if m.entries != m.gangs} == set()


def test_a_device_that_can_do_without_neutral_does_not_repeat() -> None:
    """Common practice, no source."""
    without = [m for m in MODELS.values() if m.neutral in {NeutralNeed.NOT_NEEDED, NeutralNeed.EITHER}]
    assert without
    assert {m.repeats for m in without} == {Stated.NO}
    assert {m.least_load_mw is None for m in without} == {False}


def test_every_dimmer_states_a_least_load() -> None:
    """Lighting Research Center, dimmer guide (secondary): check the least load as well as the greatest."""
    assert {m.key for m in MODELS.values() if m.output is Output.DIMMER and m.least_load_mw is None} == set()


def test_a_module_takes_no_mount() -> None:
    forms = {Form.IN_BOX_MODULE, Form.LUMINAIRE_MODULE, Form.PLUG_IN, Form.BATTERY_BUTTON}
    assert {m.form for m in MODELS.values() if m.mounts == 0} == forms
