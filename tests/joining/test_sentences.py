"""Steps become sentences that can be followed; none lets a front come off under power in a wall box."""

import re
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.catalogue import Procedure
from secondfix.files import shipped_models
from secondfix.joining.fronts import Body, Fed, body_of, wants_bench
from secondfix.joining.sentences import BENCH, procedure_sentences

SHUT, OPEN = Body(Fed.CIRCUIT, live=False), Body(Fed.CIRCUIT, live=True)
DEAD_FIRST = "Isolate, lock off and prove dead; only then release the front."


def said(*steps: dict[str, Any], note: str = "", body: Body = SHUT) -> tuple[str, ...]:
    return procedure_sentences(Procedure.model_validate({"steps": list(steps), "note": note}), body)


@pytest.mark.parametrize(
    ("step", "sentence"),
    [
        ({"act": "release_front"}, "Release the front."),
        ({"act": "refit_front"}, "Fit the front again."),
        ({"act": "power_on"}, "See that the circuit is on."),
        ({"act": "press", "button": "gang 2", "times": 1}, "Press once: gang 2."),
        (
            {"act": "press", "button": "gang 2", "times": 4, "within_ms": 2500, "indicator": "glows"},
            "Press 4 times within 2.5 s: gang 2. Watch for: glows.",
        ),
        ({"act": "hold", "button": "gang 1", "hold_ms": 700}, "Hold for 0.7 s: gang 1."),
        ({"act": "watch", "indicator": "goes dark."}, "Watch for: goes dark."),
        ({"act": "watch", "indicator": "the lamp dips once"}, "Watch for: the lamp dips once."),
        ({"act": "wait", "wait_ms": 90_000}, "Wait 90 s."),
        ({"act": "wait", "wait_ms": 5000, "indicator": "goes dark"}, "Wait 5 s. Watch for: goes dark."),
    ],
)
def test_each_act_is_one_sentence(step: dict[str, Any], sentence: str) -> None:
    assert said(step) == (sentence,)


@pytest.mark.parametrize(
    ("fed", "words"),
    [
        (
            Fed.CIRCUIT,
            (
                "See that the circuit is on. Watch for: glows.",
                "Switch the circuit off at the board.",
                "Switch the circuit on again at the board. Watch for: glows.",
            ),
        ),
        (
            Fed.SOCKET,
            (
                "Plug it in. Watch for: glows.",
                "Pull it out of its socket.",
                "Plug it in again. Watch for: glows.",
            ),
        ),
        (
            Fed.BATTERY,
            (
                "Put the battery in. Watch for: glows.",
                "Take the battery out.",
                "Put the battery in again. Watch for: glows.",
            ),
        ),
    ],
)
def test_power_comes_and_goes_in_the_words_of_what_feeds_the_device(fed: Fed, words: tuple[str, ...]) -> None:
    on = {"act": "power_on", "indicator": "glows"}
    assert said(on, {"act": "power_off"}, on, body=Body(fed, live=False)) == words


def test_the_makers_note_comes_last() -> None:
    assert said({"act": "power_on"}, note="Only once. ")[-1] == "Only once."


def test_every_shipped_procedure_keeps_its_numbers_apart_and_its_indicators_as_written() -> None:
    for model in shipped_models().values():
        for procedure in filter(None, (model.join, model.reset, model.remove)):
            told = " ".join(procedure_sentences(procedure, body_of(model)))
            assert not re.search(r"\d \d", told), told
            assert "the lamp the lamp" not in told
            for step in procedure.steps:
                assert step.indicator is None or f"Watch for: {step.indicator}" in told, model.key


PRESS = {"act": "press", "button": "the pin hole", "times": 2, "indicator": "glows"}
OFF, ON = {"act": "release_front"}, {"act": "refit_front"}


def test_a_gesture_with_the_front_off_and_power_on_goes_to_the_bench() -> None:
    assert said({"act": "power_on"}, OFF, PRESS, ON, body=OPEN) == (
        BENCH,
        "Release the front.",
        "Switch the bench lead on; touch nothing but what the next step names.",
        "Press 2 times: the pin hole. Watch for: glows.",
        "Switch the bench lead off.",
        "Fit the front again.",
    )
    assert said({"act": "power_on"}, OFF, PRESS, ON, body=SHUT)[1:3] == (
        "Release the front.",
        "Press 2 times: the pin hole. Watch for: glows.",
    )


def test_on_the_bench_power_is_told_where_its_sign_is_waited_for_and_a_front_left_off_is_told() -> None:
    told = said({"act": "power_on", "indicator": "winks"}, OFF, {"act": "wait", "wait_ms": 2000}, body=OPEN)
    assert told[1:4] == ("Switch the bench lead on.", "Watch for: winks.", "Switch the bench lead off.")
    assert told[-2:] == ("Switch the bench lead off.", "Fit the front again before it goes to its place.")
    cut = said(OFF, PRESS, {"act": "power_off", "indicator": "fades"}, PRESS, ON, body=OPEN)
    assert cut[4:7] == (
        "Switch the bench lead off.",
        "Watch for: fades.",
        "Press 2 times: the pin hole. Watch for: glows.",
    )


@pytest.mark.parametrize(
    ("fed", "first", "last"),
    [
        (Fed.CIRCUIT, DEAD_FIRST, "Fit the front again; only then energise the circuit."),
        (
            Fed.SOCKET,
            "Pull it out of its socket; only then release the front.",
            "Fit the front again; only then plug it in.",
        ),
    ],
)
def test_a_front_that_only_comes_off_does_so_dead(fed: Fed, first: str, last: str) -> None:
    assert said(OFF, ON, body=Body(fed, live=True)) == (first, last)


def test_without_power_a_gesture_behind_the_front_is_made_isolated() -> None:
    told = said({"act": "power_off"}, OFF, PRESS, ON, {"act": "power_on"}, body=OPEN)
    assert told[1:4] == (DEAD_FIRST, "Press 2 times: the pin hole. Watch for: glows.", "Fit the front again.")
    assert said({"act": "power_off"}, OFF, body=OPEN)[-1] == "Fit the front again before power returns."


ACTS = st.sampled_from(
    [OFF, ON, PRESS, {"act": "power_on"}, {"act": "power_off"}, {"act": "wait", "wait_ms": 900}]
)


@given(st.lists(ACTS, min_size=1, max_size=9), st.sampled_from([Fed.CIRCUIT, Fed.SOCKET]))
def test_where_live_parts_may_be_touched_a_front_never_comes_off_under_power(
    steps: list[dict[str, Any]], fed: Fed
) -> None:
    body = Body(fed, live=True)
    told = said(*steps, body=body)
    procedure = Procedure.model_validate({"steps": steps})
    assert (told[0] == BENCH) == wants_bench(body, procedure)
    if told[0] != BENCH:
        assert "Release the front." not in told
        return
    lead = False
    for sentence in told:
        if sentence.startswith("Switch the bench lead"):
            lead = "lead on" in sentence
        if "the front" in sentence:
            assert not lead


# The gestures below are common practice, no source: what installers report, the sentences must carry.
def test_any_button_held_ten_seconds_can_be_said() -> None:
    step = {"act": "hold", "button": "any button", "hold_ms": 10_000, "indicator": "blinks green twice"}
    assert said(step) == ("Hold for 10 s: any button. Watch for: blinks green twice.",)


def test_three_quick_presses_behind_the_front_can_be_said() -> None:
    press = {"act": "press", "button": "the hidden button behind the front", "times": 3, "within_ms": 1500}
    assert said({"act": "release_front"}, press) == (
        "Release the front.",
        "Press 3 times within 1.5 s: the hidden button behind the front.",
    )


def test_presses_followed_by_a_hold_can_be_said() -> None:
    step = {"act": "press_then_hold", "button": "the hidden button", "times": 2, "hold_ms": 6000}
    assert said(step) == ("Press 2 times, then hold for 6 s: the hidden button.",)
