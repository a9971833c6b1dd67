"""Radio: is it likely to carry every device to its controller, and on whom does each hang?"""

from secondfix.radio.answers import Chances, DeviceReach, Link, Reach, Word
from secondfix.radio.as_json import reach_as_json
from secondfix.radio.channels.answers import ChannelFigures, Channels, Choice, NetworkChannels, Share
from secondfix.radio.channels.as_json import channels_as_json, transmitter_as_json
from secondfix.radio.channels.carrying import put_together
from secondfix.radio.channels.choosing import channels_of
from secondfix.radio.channels.disturbing import interference_of
from secondfix.radio.channels.heard import Sends, Transmitter
from secondfix.radio.channels.telling import Cost, cost_words
from secondfix.radio.covering.answers import Cover
from secondfix.radio.covering.covering import cover
from secondfix.radio.engine.chances import DeviceChance, Drawn, wilson
from secondfix.radio.engine.drawing import Ends, draw_links
from secondfix.radio.engine.gone import Gone, without_each
from secondfix.radio.engine.panels import (
    Decks,
    Panels,
    Spots,
    count_crossings,
    losses_db,
    spots_on_grid,
    walls_on_grid,
)
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.engine.searching import Steps, how_often, reached, steps_of
from secondfix.radio.foresight.answers import LEAST_GAIN, Case, CaseKind, Foreseen, NetworkForeseen
from secondfix.radio.foresight.as_json import foreseen_as_json
from secondfix.radio.foresight.foreseeing import DRAWS, MOST_DRAWS, Heard, foresee
from secondfix.radio.learning.as_json import learned_as_json
from secondfix.radio.learning.fitting import learn
from secondfix.radio.learning.learned import Learned, Parameter, Predicted
from secondfix.radio.learning.measured import LEAST_FOR_NUMBERS, Measured
from secondfix.radio.learning.next_links import NextLink
from secondfix.radio.margins import margins_after_spread
from secondfix.radio.measuring import reach_measured
from secondfix.radio.network import MOST_HOPS
from secondfix.radio.packets.interference import Interference
from secondfix.radio.paths import Paths, find_paths
from secondfix.radio.question import reach
from secondfix.radio.rules import CHANNEL, RULES
from secondfix.radio.sending import sending
from secondfix.radio.stations import link_look

__all__ = [
    "CHANNEL",
    "DRAWS",
    "LEAST_FOR_NUMBERS",
    "LEAST_GAIN",
    "MOST_DRAWS",
    "MOST_HOPS",
    "RULES",
    "Case",
    "CaseKind",
    "Chances",
    "ChannelFigures",
    "Channels",
    "Choice",
    "Cost",
    "Cover",
    "Decks",
    "DeviceChance",
    "DeviceReach",
    "Drawn",
    "Ends",
    "Foreseen",
    "Gone",
    "Heard",
    "Interference",
    "Learned",
    "Link",
    "Measured",
    "NetworkChannels",
    "NetworkForeseen",
    "NextLink",
    "Panels",
    "Parameter",
    "Paths",
    "Predicted",
    "Reach",
    "Sampled",
    "Sends",
    "Share",
    "Spots",
    "Steps",
    "Transmitter",
    "Word",
    "channels_as_json",
    "channels_of",
    "cost_words",
    "count_crossings",
    "cover",
    "draw_links",
    "find_paths",
    "foresee",
    "foreseen_as_json",
    "how_often",
    "interference_of",
    "learn",
    "learned_as_json",
    "link_look",
    "losses_db",
    "margins_after_spread",
    "put_together",
    "reach",
    "reach_as_json",
    "reach_measured",
    "reached",
    "sending",
    "spots_on_grid",
    "steps_of",
    "transmitter_as_json",
    "walls_on_grid",
    "wilson",
    "without_each",
]
