"""Which device fell silent: by address, node, entry and function test; a name is only a name."""

from secondfix.house import House, read_house
from secondfix.journal import Journal, fold
from secondfix.maintenance import Suspects, suspects
from tests import example_house as ex
from tests.journal.writing import journal, write


def house() -> House:
    plain = ex.document()
    plain["devices"]["D01"]["address"] = "5A11C04D00317E02"
    read = read_house(ex.as_bytes(plain), where="example", models=ex.models())
    assert isinstance(read, House), read
    return read


NOTHING = Journal()


def asked(
    known: Journal = NOTHING, *, silent: tuple[str, ...] = (), answering: tuple[str, ...] = ()
) -> Suspects:
    return suspects(house(), fold(house(), known), silent=silent, answering=answering)


def test_an_address_with_its_endpoint_names_the_device() -> None:
    found = asked(silent=("5a:11:c0:4d:00:31:7e:02/2",))
    assert [(s.device, s.place, s.sure) for s in found.suspects] == [("D01", "B1", True)]


def test_a_node_number_is_that_of_the_journal() -> None:
    known = journal(write(1, "joined", "device:D01", network="N1", node=23))
    assert asked(known, silent=("node 23",)).suspects[0].device == "D01"
    assert asked(known, silent=("node 24",)).unknown == ("node 24",)


def test_a_gang_that_answered_nothing_in_the_function_test_counts() -> None:
    known = journal(write(1, "function_tested", "gang:B1.1", answered={}))
    assert asked(known).suspects[0].silent == ("the function test of B1.1",)


def test_a_name_alone_makes_nobody_sure() -> None:
    known = journal(write(1, "named", "entry:D01.1", name="Thursday"))
    (one,) = asked(known, silent=("Thursday",)).suspects
    assert one.device == "D01"
    assert not one.sure


def test_what_still_answers_speaks_against() -> None:
    (one,) = asked(silent=("D01.1",), answering=("D01.2",)).suspects
    assert one.answers == ("D01.2",)
    assert not one.sure


def test_several_silent_devices_leave_it_open() -> None:
    others = [d for d in house().devices if d != "D01"]
    found = asked(silent=("D01.1", f"{others[0]}.1"))
    assert len(found.suspects) == 2
    assert not any(s.sure for s in found.suspects)


def test_what_names_nothing_is_told() -> None:
    assert asked(silent=("the red one",)).unknown == ("the red one",)
