"""Each form of device stands where its body can: in a box, at a place, or either."""

import pytest

from secondfix.catalogue import Form
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from tests import example_house as ex

BOX, PLACE = {Form.SWITCH, Form.IN_BOX_MODULE, Form.EXTENSION_UNIT}, {Form.BATTERY_BUTTON}
ONE_OF = {m.form: m for m in shipped_models().values() if m.mounts < 2 and m.gangs < 3}
ONE_OF |= {m.form: m for m in shipped_models().values() if m.form not in ONE_OF}


def told(stands: dict[str, object]) -> list[str]:
    plain = ex.document()
    plain["boxes"]["B7"] = {"room": "R1", "mounts": {"1": {}}, "gangs": {}}
    plain["places"]["P7"] = {"kind": "surface", "name": "Board", "room": "R1"}
    plain["devices"]["D7"] = stands
    read = read_house(ex.as_bytes(plain), where="h.json", models={**ex.models(), **shipped_models()})
    return [] if isinstance(read, House) else [f.path for f in read]


@pytest.mark.parametrize("form", sorted(ONE_OF))
def test_in_a_box(form: Form) -> None:
    model = ONE_OF[form]
    stands = {"model": model.key, "box": "B7", "mounts": ["1"][: model.mounts]}
    assert told(stands) == ([] if form in BOX | PLACE else ["devices.D7.box"])


@pytest.mark.parametrize("form", sorted(ONE_OF))
def test_at_a_place(form: Form) -> None:
    stands = {"model": ONE_OF[form].key, "place": "P7"}
    assert told(stands) == (["devices.D7.place"] if form in BOX else [])


def test_every_form_but_sensors_is_shipped_and_so_held_here() -> None:
    assert set(ONE_OF) == set(Form) - {Form.SENSOR}
