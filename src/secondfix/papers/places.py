"""Places, devices and loads in the words that the papers print beside their ids."""

from secondfix.house import House, Schedule


def room_name(house: House, thing: str) -> str:
    """The room of a box, gang, place, load or device; empty for what stands in none."""
    head = thing.split(".", maxsplit=1)[0]
    if head in house.rooms:
        return house.rooms[head].name
    device = house.devices.get(head)
    if device:
        head = device.box or device.place or ""
    for kind in (house.boxes, house.places, house.loads):
        if head in kind:
            return house.rooms[kind[head].room].name
    return ""


def thing_words(house: House, thing: str) -> str:
    """``B07.2 Dining room``; ``L05 Cove, Dining room``; the id alone for what has no room."""
    head = thing.split(".", maxsplit=1)[0]
    named = (house.loads, house.circuits, house.networks, house.scenes, house.storeys)
    name = next((kind[head].name for kind in named if head in kind), "")
    return f"{thing} {', '.join(w for w in (name, room_name(house, thing)) if w)}".strip()


def device_words(schedule: Schedule, device_id: str) -> str:
    """The model's title, or that it is not chosen."""
    model = schedule.model_of(device_id)
    return model.title if model else "model not chosen"
