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


def id_words(house: House, thing: str) -> str:
    """The id; of a scene or a storey with that word before it, for ``S1`` reads like a sheet's number."""
    head = thing.split(".", maxsplit=1)[0]
    kinds = (("scene", house.scenes), ("storey", house.storeys))
    return next((f"{word} {thing}" for word, kind in kinds if head in kind), thing)


def about_words(house: House, thing: str) -> str:
    """What stands beside an id: a name, a room, or nothing."""
    head = thing.split(".", maxsplit=1)[0]
    named = (house.loads, house.circuits, house.networks, house.scenes, house.storeys)
    name = next((kind[head].name for kind in named if head in kind), "")
    return ", ".join(w for w in (name, room_name(house, thing)) if w)


def thing_words(house: House, thing: str) -> str:
    """``B07.2 Dining room``; ``L05 Cove, Dining room``; the id alone for what has no room."""
    return f"{id_words(house, thing)} {about_words(house, thing)}".strip()


def device_words(schedule: Schedule, device_id: str) -> str:
    """The model's title, or that it is not chosen."""
    model = schedule.model_of(device_id)
    return model.title if model else "model not chosen"
