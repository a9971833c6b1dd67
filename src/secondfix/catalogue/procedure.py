"""Procedures as data: how one model is joined, reset or removed, step by step."""

from enum import StrEnum
from typing import Annotated, Self

from pydantic import Field, Strict, model_validator

from secondfix.catalogue.strict import Part

Text = Annotated[str, Field(min_length=1, max_length=200)]


class Act(StrEnum):
    """What the hands or eyes do in one step."""

    RELEASE_FRONT = "release_front"
    REFIT_FRONT = "refit_front"
    POWER_ON = "power_on"
    POWER_OFF = "power_off"
    PRESS = "press"
    HOLD = "hold"
    PRESS_THEN_HOLD = "press_then_hold"
    WATCH = "watch"
    WAIT = "wait"


class Step(Part):
    """One step.

    ``button`` names the button in words (any button, gang 2, the hidden button);
    ``times`` quick presses within ``within_ms``; ``hold_ms`` how long held; ``indicator`` what
    the indicator lamp then does, in words; ``wait_ms`` how long to wait.
    """

    act: Annotated[Act, Strict(False)]
    button: Text | None = None
    times: int | None = Field(None, ge=1, le=20)
    within_ms: int | None = Field(None, ge=100, le=60_000)
    hold_ms: int | None = Field(None, ge=100, le=120_000)
    wait_ms: int | None = Field(None, ge=100, le=600_000)
    indicator: Text | None = None

    @model_validator(mode="after")
    def _complete(self) -> Self:
        needs = {
            Act.PRESS: ("button", "times"),
            Act.HOLD: ("button", "hold_ms"),
            Act.PRESS_THEN_HOLD: ("button", "times", "hold_ms"),
            Act.WATCH: ("indicator",),
            Act.WAIT: ("wait_ms",),
        }.get(self.act, ())
        missing = [name for name in needs if getattr(self, name) is None]
        if missing:
            raise ValueError(f"a '{self.act.value}' step also states {', '.join(missing)}")
        return self


class Procedure(Part):
    """Steps in order, the usual time near the controller and far from it, and a note."""

    steps: Annotated[tuple[Step, ...], Strict(False), Field(min_length=1, max_length=20)]
    near_s: int | None = Field(None, ge=1, le=1800)
    far_s: int | None = Field(None, ge=1, le=3600)
    note: Annotated[str, Field(max_length=400)] = ""

    @model_validator(mode="after")
    def _times_rise(self) -> Self:
        if self.near_s is not None and self.far_s is not None and self.far_s < self.near_s:
            raise ValueError("far_s is at least near_s")
        return self
