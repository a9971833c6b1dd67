"""What a contact does when power comes back."""

from enum import StrEnum


class PowerLossState(StrEnum):
    """State of a gang after the supply was lost and has returned."""

    OFF = "off"
    ON = "on"
    LAST = "last"


POWER_LOSS_LABELS: dict[PowerLossState, str] = {
    PowerLossState.OFF: "returns off",
    PowerLossState.ON: "returns on",
    PowerLossState.LAST: "returns as it was",
}
