"""What the radio answer tells those who add up commands."""

from secondfix import radio, scenes
from secondfix.house import House


def air_of(house: House, reached: radio.Reach) -> scenes.Air:
    """Frames as the region has them, and the links of each route found."""
    links = {device.id: device.hops for device in reached.devices if device.hops}
    return scenes.Air(radio.sending(house.radio_region), links)
