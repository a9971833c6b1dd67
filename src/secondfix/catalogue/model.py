"""One model of one maker in one edition, as its data sheet states it.

What the sheet does not state stays absent: a check that needs it says *cannot tell*.
"""

from collections.abc import Iterator
from enum import StrEnum
from typing import Annotated, Literal, Self

from pydantic import Field, Strict, model_validator

from secondfix.catalogue.procedure import Procedure
from secondfix.catalogue.strict import Part
from secondfix.terms import PowerLossState, Protocol, RatingKind

Slug = Annotated[str, Field(pattern=r"^[a-z][a-z0-9-]{0,30}$")]
Text = Annotated[str, Field(min_length=1, max_length=200)]
Press = Literal["once", "twice", "three_times", "held"]


class Form(StrEnum):
    """What the device is, as a body in a place."""

    SWITCH = "switch"
    IN_BOX_MODULE = "in_box_module"
    LUMINAIRE_MODULE = "luminaire_module"
    PLUG_IN = "plug_in"
    BATTERY_BUTTON = "battery_button"
    SENSOR = "sensor"
    CEILING_MODULE = "ceiling_module"
    BOARD_MODULE = "board_module"
    EXTENSION_UNIT = "extension_unit"


class Output(StrEnum):
    """What stands between line and load."""

    RELAY = "relay"
    DIMMER = "dimmer"
    FAN_CONTROL = "fan_control"
    SHUTTER = "shutter"
    NONE = "none"


class Edge(StrEnum):
    """Which edge of each half wave a dimmer cuts; *both* where it can be set or finds it out by itself."""

    LEADING = "leading"
    TRAILING = "trailing"
    BOTH = "both"


class Supply(StrEnum):
    """Where the device takes its own power from."""

    MAINS = "mains"
    BATTERY = "battery"


class NeutralNeed(StrEnum):
    """Whether the device must have a neutral."""

    NEEDED = "needed"
    NOT_NEEDED = "not_needed"
    EITHER = "either"


class Stated(StrEnum):
    """An answer of the data sheet; *not stated* is never read as the convenient one."""

    YES = "yes"
    NO = "no"
    NOT_STATED = "not_stated"


class Removal(StrEnum):
    """When a device must be removed from a network before it can join another."""

    ALWAYS = "always"
    WHEN_USED = "when_used"
    NEVER = "never"
    NOT_STATED = "not_stated"


class WholeSwitches(StrEnum):
    """Which gangs the whole-device entry switches; *to be tested* where the maker is silent."""

    ALL = "all"
    FIRST = "first"
    NONE = "none"
    TO_BE_TESTED = "to_be_tested"


class CodeKind(StrEnum):
    """Which onboarding code the device carries."""

    ZIGBEE_INSTALL_CODE = "zigbee_install_code"
    ZWAVE_DSK = "zwave_dsk"
    MATTER = "matter"
    NONE = "none"


class Rating(Part):
    """A printed rating of one gang for one kind of load.

    ``current_ma`` at ``at_voltage_v`` (power is stored as current and voltage, for watts alone
    do not carry over between 120 V and 230 V); ``standard`` with its edition.
    """

    kind: Annotated[RatingKind, Strict(False)]
    current_ma: int = Field(ge=1, le=63_000)
    at_voltage_v: int = Field(ge=12, le=440)
    standard: Text


class Peak(Part):
    """Largest inrush that one gang's contact is rated for, at a pulse width."""

    current_ma: int = Field(ge=1, le=2_000_000)
    width_us: int = Field(ge=1, le=100_000)


class PowerLoss(Part):
    """What gangs do when power returns: the states that can be set, and the one out of the carton."""

    settable: Annotated[tuple[Annotated[PowerLossState, Strict(False)], ...], Strict(False)]
    as_delivered: Annotated[PowerLossState, Strict(False)]


class Model(Part):
    """One edition of one model. Key: ``<maker>-<name>@<edition>``."""

    maker: Slug
    name: Slug
    edition: int = Field(ge=1, le=99)
    title: Text
    sheet: Text
    form: Annotated[Form, Strict(False)]
    protocol: Annotated[Protocol, Strict(False)] | None = Field(
        None, description="the radio it speaks; none for an extension unit, which is wired to its gang"
    )
    supply: Annotated[Supply, Strict(False)]
    output: Annotated[Output, Strict(False)]
    mounts: int = Field(ge=0, le=6, description="plate widths or yokes it takes; 0 behind or beside another")
    gangs: int = Field(ge=0, le=8, description="switching positions, each with its own output or button")
    yokes: int | None = Field(None, ge=0, le=6, description="straps that hold it in an NEC box")
    box_volume_per_yoke_mm3: int | None = Field(
        None, ge=10_000, le=1_000_000, description="volume of box asked for each yoke; 1 in³ is 16 387 mm³"
    )
    neutral: Annotated[NeutralNeed, Strict(False)] | None = None
    edge: Annotated[Edge, Strict(False)] | None = None
    interlocked: Annotated[Stated, Strict(False)] = Field(
        Stated.NOT_STATED, description="gangs 1 and 2, 3 and 4 … can never both be on"
    )
    ratings: Annotated[tuple[Rating, ...], Strict(False)] = ()
    peak: Peak | None = None
    module_total_ma: int | None = Field(None, ge=1, le=63_000)
    least_load_mw: int | None = Field(None, ge=0, le=500_000)
    depth_behind_plate_mm: int | None = Field(None, ge=1, le=90)
    standby_mw: int | None = Field(None, ge=0, le=20_000)
    own_time_limit: Annotated[Stated, Strict(False)] = Stated.NOT_STATED
    power_loss: PowerLoss | None = None
    repeats: Annotated[Stated, Strict(False)] = Stated.NOT_STATED
    whole_entry: bool = Field(description="whether a whole-device entry appears beside those of the gangs")
    whole_switches: Annotated[WholeSwitches, Strict(False)] = WholeSwitches.TO_BE_TESTED
    group_commands: Annotated[Stated, Strict(False)] = Stated.NOT_STATED
    reports_presses: Annotated[tuple[Press, ...], Strict(False)] | None = Field(
        None, max_length=4, description="presses of a gang that it tells the controller of, whatever its duty"
    )
    transmit_power_dbm: int | None = Field(None, ge=-30, le=30)
    sensitivity_dbm: int | None = Field(None, ge=-130, le=-40)
    live_parts_front_off: Annotated[Stated, Strict(False)] = Stated.NOT_STATED
    removal_before_join: Annotated[Removal, Strict(False)] = Removal.NOT_STATED
    code: Annotated[CodeKind, Strict(False)]
    code_printed_at: Text | None = None
    join: Procedure | None = None
    reset: Procedure | None = None
    remove: Procedure | None = None

    @model_validator(mode="after")
    def _holds_together(self) -> Self:
        """Every contradiction at once, a line each: `read_model` tells them apart."""
        said = [*self._agrees(), *self._speaks(), *self._wired()]
        if said:
            raise ValueError("\n".join(said))
        return self

    def _agrees(self) -> Iterator[str]:
        if self.output is not Output.NONE and self.gangs == 0:
            yield "a model with an output has at least one gang"
        if self.form is Form.SWITCH and self.mounts == 0:
            yield "a switch takes at least one mount"
        kinds = [r.kind for r in self.ratings]
        if len(set(kinds)) != len(kinds):
            yield "one rating per kind of load"
        if self.whole_switches is not WholeSwitches.TO_BE_TESTED and not self.whole_entry:
            yield "whole_switches speaks of a whole-device entry that the model does not have"

    def _speaks(self) -> Iterator[str]:
        """An extension unit has no radio, every other device has one; to have one is to join."""
        if self.form is not Form.EXTENSION_UNIT:
            if self.protocol is None or self.join is None:
                yield "a device with a radio states its protocol and how it joins"
            return
        if self.protocol or self.join or self.code is not CodeKind.NONE or self.whole_entry:
            yield "an extension unit has no radio: neither protocol, join, code nor entry"
        if self.output is not Output.NONE or not self.mounts or not self.gangs:
            yield "an extension unit has mounts and gangs, and no output"

    def _wired(self) -> Iterator[str]:
        if self.edge is not None and self.output is not Output.DIMMER:
            yield "only a dimmer cuts an edge"
        if self.output is Output.SHUTTER and self.gangs % 2:
            yield "a shutter output has two gangs for each motor, one a direction"
        if self.interlocked is not Stated.NOT_STATED and self.gangs < 2:
            yield "interlocked speaks of two gangs"
        if self.yokes is not None and self.yokes > self.mounts:
            yield "a model has at most one yoke for each mount"

    @property
    def key(self) -> str:
        """``<maker>-<name>@<edition>``: what houses refer to."""
        return f"{self.maker}-{self.name}@{self.edition}"

    @property
    def entries(self) -> int:
        """How many entries must appear in the controller after joining: none without a radio."""
        if self.protocol is None:
            return 0
        return max(self.gangs, 1) + (1 if self.whole_entry else 0)

    def rating_for(self, kind: RatingKind) -> Rating | None:
        """The printed rating for this kind, or None where the sheet prints none."""
        return next((r for r in self.ratings if r.kind is kind), None)
