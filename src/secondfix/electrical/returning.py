"""In which state a contact may find itself when the supply has been lost and is back."""

from secondfix.electrical.case import Contact
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Look
from secondfix.terms import POWER_LOSS_LABELS, PowerLossState


def states_of(contact: Contact) -> tuple[PowerLossState, ...]:
    """Every state it may return in, in a fixed order; empty where the data sheet is silent.

    The state that the device is said to be set to; while none is said it may be set to any that its model
    takes, for somebody may have done so.
    """
    loss, stated = contact.model.power_loss, contact.device.after_power_loss
    if loss is None:
        return ()
    if stated is not None:
        return (stated,)
    return tuple(s for s in PowerLossState if s in {*loss.settable, loss.as_delivered})


def words_of(states: tuple[PowerLossState, ...]) -> str:
    """The states in words."""
    return " or ".join(POWER_LOSS_LABELS[s] for s in states) or "not known"


def state_look(contact: Contact) -> Look:
    """The look that would leave one state."""
    if contact.model.power_loss is None:
        return sheet_look(contact.model, "power_loss", "what its contacts do when power returns")
    words = f"state what {contact.device_id} is set to do when power returns"
    return Look(contact.device_id, "after_power_loss", words)
