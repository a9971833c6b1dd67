"""Steps become sentences that can be followed; facts of the trade can be said with them."""

from typing import Any

import pytest

from secondfix.catalogue import Procedure
from secondfix.joining.sentences import procedure_sentences


def said(*steps: dict[str, Any], note: str = "") -> tuple[str, ...]:
    return procedure_sentences(Procedure.model_validate({"steps": list(steps), "note": note}))


@pytest.mark.parametrize(
    ("step", "sentence"),
    [
        ({"act": "release_front"}, "Release the front."),
        ({"act": "refit_front"}, "Fit the front again."),
        ({"act": "power_on"}, "See that the circuit is on."),
        ({"act": "press", "button": "gang 2", "times": 1}, "Press gang 2 once."),
        (
            {"act": "press", "button": "the lower half", "times": 4, "within_ms": 2500, "indicator": "glows"},
            "Press the lower half 4 times within 2.5 s; the lamp then glows.",
        ),
        ({"act": "hold", "button": "gang 1", "hold_ms": 700}, "Hold gang 1 for 0.7 s."),
        ({"act": "watch", "indicator": "goes dark"}, "Watch: the lamp goes dark."),
        ({"act": "wait", "wait_ms": 90_000}, "Wait 90 s."),
        ({"act": "wait", "wait_ms": 5000, "indicator": "goes dark"}, "Wait 5 s until the lamp goes dark."),
    ],
)
def test_each_act_is_one_sentence(step: dict[str, Any], sentence: str) -> None:
    assert said(step) == (sentence,)


def test_power_off_and_on_is_a_turn_of_the_switch_at_the_board() -> None:
    assert said({"act": "power_off"}, {"act": "wait", "wait_ms": 3000}, {"act": "power_on"}) == (
        "Switch the circuit off at the board.",
        "Wait 3 s.",
        "Switch the circuit on again at the board.",
    )


def test_the_makers_note_comes_last() -> None:
    assert said({"act": "power_on"}, note="Only once. ")[-1] == "Only once."


# The gestures below are common practice, no source: what installers report, the sentences must carry.
def test_any_button_held_ten_seconds_can_be_said() -> None:
    step = {"act": "hold", "button": "any button", "hold_ms": 10_000, "indicator": "blinks green twice"}
    assert said(step) == ("Hold any button for 10 s until the lamp blinks green twice.",)


def test_three_quick_presses_behind_the_front_can_be_said() -> None:
    press = {"act": "press", "button": "the hidden button behind the front", "times": 3, "within_ms": 1500}
    assert said({"act": "release_front"}, press) == (
        "Release the front.",
        "Press the hidden button behind the front 3 times within 1.5 s.",
    )


def test_presses_followed_by_a_hold_can_be_said() -> None:
    step = {"act": "press_then_hold", "button": "the hidden button", "times": 2, "hold_ms": 6000}
    assert said(step) == ("Press the hidden button 2 times, then hold it for 6 s.",)
