"""Facts of the trade that shipped models must be able to say. Each: common practice, no source."""

from secondfix.catalogue import Act, Edge, Form, NeutralNeed, Output, Removal, Stated
from secondfix.terms import PowerLossState, Protocol, RatingKind
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
    assert counted["ostrabeck-gull-four@1"] == (4, 5)
    assert {key for key, (gangs, entries) in counted.items() if gangs > 1 and entries != gangs + 1} == set()
    assert {key for key, (gangs, entries) in counted.items() if gangs < 2 and entries != 1} == set()


def test_zigbee_and_matter_switches_show_one_entry_per_gang() -> None:
    """Zigbee: one endpoint per gang; Matter: loads on endpoints 1 to n."""
    others = [
        m for m in MODELS.values() if m.protocol in {Protocol.ZIGBEE, Protocol.MATTER_THREAD} and m.gangs
    ]
    assert {m.key for m in others if m.entries != m.gangs} == set()


def test_a_device_that_can_do_without_neutral_does_not_repeat() -> None:
    """Common practice, no source."""
    need = {NeutralNeed.NOT_NEEDED, NeutralNeed.EITHER}
    without = [m for m in MODELS.values() if m.neutral in need and m.output is not Output.NONE]
    assert without
    assert {m.repeats for m in without} == {Stated.NO}
    assert {m.least_load_mw is None for m in without} == {False}


def test_every_dimmer_states_a_least_load() -> None:
    """Lighting Research Center, dimmer guide (secondary): check the least load as well as the greatest."""
    assert {m.key for m in MODELS.values() if m.output is Output.DIMMER and m.least_load_mw is None} == set()


def test_a_module_takes_no_mount() -> None:
    on_the_wall = {Form.SWITCH, Form.EXTENSION_UNIT}
    assert {m.form for m in MODELS.values() if m.mounts == 0} == set(Form) - on_the_wall - {Form.SENSOR}


def test_a_shutter_has_two_interlocked_gangs_for_each_motor() -> None:
    """Common practice, no source: a motor that reverses never gets both ways at once."""
    shutters = [m for m in MODELS.values() if m.output is Output.SHUTTER]
    assert shutters
    assert {(m.gangs % 2, m.interlocked) for m in shutters} == {(0, Stated.YES)}
    assert {m.power_loss.as_delivered for m in shutters if m.power_loss} == {PowerLossState.OFF}


def test_a_heater_switch_carries_16_a_resistive_and_keeps_its_own_time_limit() -> None:
    """Common practice, no source."""
    heaters = [m for m in MODELS.values() if [r.kind for r in m.ratings] == [RatingKind.RESISTIVE]]
    assert len(heaters) == 2
    assert {(m.ratings[0].current_ma, m.own_time_limit) for m in heaters} == {(16_000, Stated.YES)}


def test_a_fan_control_is_rated_for_motors_alone() -> None:
    """LRC and NEC 404.14 (secondary): a lamp dimmer is no fan speed control, nor the other way round."""
    fans = [m for m in MODELS.values() if m.output is Output.FAN_CONTROL]
    assert fans
    assert {r.kind for m in fans for r in m.ratings} == {RatingKind.MOTOR}


def test_no_dimmer_is_rated_for_the_transformer_that_its_edge_does_not_suit() -> None:
    """EDN 2011 and LRC (secondary): over-voltage at turn-off; capacitive gear on a leading edge."""
    against = {Edge.TRAILING: RatingKind.IRON_TRANSFORMER, Edge.LEADING: RatingKind.ELECTRONIC_TRANSFORMER}
    edged = [m for m in MODELS.values() if m.edge in against]
    assert {m.edge for m in edged} == set(against)
    assert {m.key for m in edged if m.edge and m.rating_for(against[m.edge])} == set()


def test_an_extension_unit_has_no_radio_and_shows_no_entry() -> None:
    """IEC 60669-2-1: a second operating place of another gang."""
    units = [m for m in MODELS.values() if m.form is Form.EXTENSION_UNIT]
    assert {m.gangs for m in units} == {1, 3}
    assert {(m.protocol, m.entries, m.output) for m in units} == {(None, 0, Output.NONE)}


def test_a_model_for_120_v_names_a_ul_standard_and_counts_its_yokes() -> None:
    """NEC 314.16(B)(4): the fill counts yokes; UL 20 and UL 1472 are the standards of such devices."""
    american = [m for m in MODELS.values() if any(r.at_voltage_v == 120 for r in m.ratings)]
    assert len(american) >= 9
    assert {r.standard.split(":")[0] for m in american for r in m.ratings} == {"UL 20", "UL 1472"}
    assert {m.key for m in american if m.mounts and m.yokes is None} == set()


def test_a_ul_20_motor_rating_is_at_most_80_percent_of_the_amperes() -> None:
    """UL guide card for snap switches, NEC 404.14(A) (secondary)."""
    of_ul = [m for m in MODELS.values() if m.ratings and m.ratings[0].standard.startswith("UL 20")]
    both = [(m.rating_for(RatingKind.MOTOR), m.rating_for(RatingKind.RESISTIVE)) for m in of_ul]
    pairs = [(motor, plain) for motor, plain in both if motor and plain]
    assert pairs
    assert all(5 * motor.current_ma <= 4 * plain.current_ma for motor, plain in pairs)


def test_a_box_volume_is_a_printed_one_in_cubic_inches() -> None:
    """1 in³ = 16.387064 cm³ exactly; sheets print tenths of a cubic inch; nearest whole mm³."""
    asked = {m.box_volume_per_yoke_mm3 for m in MODELS.values() if m.box_volume_per_yoke_mm3}
    assert asked == {round(tenths * 1638.7064) for tenths in (100, 125, 140, 180)}
