"""Onboarding codes against published figures; each stands with its source in onboarding-vectors.json.

No tolerance: a code is right or it is not, and every count is exact.
"""

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from stdnum import verhoeff

from secondfix.joining.codes import (
    CodeReading,
    read_code,
    read_dsk,
    read_eui64,
    read_install_code,
    read_matter_manual,
    read_matter_qr,
    read_zwave_qr,
    recognise,
)
from secondfix.joining.codes.base38 import BASE38, decode_base38
from secondfix.joining.codes.matter import passcode_allowed
from secondfix.joining.codes.reading import DECIMAL, Remark, strangers
from secondfix.joining.codes.verhoeff import verhoeff_holds
from secondfix.joining.codes.zigbee import aes_mmo, crc16_x25, hmac_mmo

VECTORS = json.loads((Path(__file__).parent / "onboarding-vectors.json").read_text(encoding="utf-8"))
Reader = Callable[[str], CodeReading]
GROUPS: dict[str, tuple[Reader, str, str]] = {
    "zigbee_install_code": (read_install_code, "code", "zigbee-install-code"),
    "zwave_dsk": (read_dsk, "dsk", "zwave-dsk"),
    "zwave_qr": (read_zwave_qr, "qr", "zwave-qr"),
    "matter_qr": (read_matter_qr, "qr", "matter-qr"),
    "matter_manual": (read_matter_manual, "code", "matter-manual"),
}
EVERY = [
    (group, part, case) for group in GROUPS for part in ("valid", "invalid") for case in VECTORS[group][part]
]


def ids(reading: CodeReading) -> list[str]:
    return [fault.id for fault in reading.faults]


@pytest.mark.parametrize(("group", "part", "case"), EVERY)
def test_code_is_recognised_and_its_published_outcome_found(group: str, part: str, case: dict) -> None:
    reader, key, kind = GROUPS[group]
    assert recognise(case[key]) == kind
    found = reader(case[key])
    assert read_code(case[key]).faults == found.faults
    if part == "valid":
        assert ids(found) == []
    else:
        assert case["error"] in ids(found)


def test_a_single_injected_fault_is_the_only_one_told() -> None:
    # Left aside: a text cut short (checksum and data both suffer), and a string of arbitrary digits.
    several = ("900132782003515253545541424344453132333435212223242500100435", "234567891234567856105")
    for group, part, case in EVERY:
        reader, key, _ = GROUPS[group]
        if part == "invalid" and case[key] not in several:
            assert ids(reader(case[key])) == [case["error"]], case


@pytest.mark.parametrize("case", VECTORS["zigbee_install_code"]["valid"])
def test_link_key(case: dict) -> None:
    assert read_install_code(case["code"].lower()).value("link_key") == case["link_key"]


@pytest.mark.parametrize("case", VECTORS["zigbee_crypto"])
def test_zigbee_primitive(case: dict) -> None:
    message = bytes.fromhex(case["in"])
    found = {
        "crc16_x25": lambda: crc16_x25(message).to_bytes(2, "big"),
        "aes_mmo": lambda: aes_mmo(message),
        "hmac_mmo": lambda: hmac_mmo(bytes.fromhex(case["key"]), message),
    }[case["op"]]()
    assert found.hex() == case["out"].lower()


@pytest.mark.parametrize("case", VECTORS["zwave_dsk"]["valid"])
def test_dsk_bytes_and_pin(case: dict) -> None:
    found = read_dsk(case["dsk"])
    groups = str(found.value("dsk")).split("-")
    assert b"".join(int(group).to_bytes(2, "big") for group in groups).hex() == case["bytes"]
    assert found.value("pin") == case["pin"]


def test_zwave_qr_example_means_what_the_standard_says() -> None:
    (case,) = VECTORS["zwave_qr"]["valid"]
    found = {field.name: field.value for field in read_zwave_qr(case["qr"]).fields}
    assert found.pop("code") == case["qr"]
    assert found == {
        "version": "SmartStart",
        "requested_keys": "S2 Unauthenticated, S2 Authenticated",
        "dsk": case["decoded"]["dsk"],
        "pin": case["decoded"]["pin"],
        "device_class": "generic 0x11, specific 0x01",
        "installer_icon": "0x0601",
        "manufacturer": "0xFFF0",
        "product_type": "0x0064",
        "product": "0x0003",
        "application_version": "2.66",
    }


@pytest.mark.parametrize("case", VECTORS["matter_base38"]["valid"])
def test_base38(case: dict) -> None:
    assert decode_base38(case["text"]) == bytes.fromhex(case["bytes"])


@pytest.mark.parametrize("case", VECTORS["matter_base38"]["invalid"])
def test_base38_refuses(case: dict) -> None:
    if case["error"] == "bad-character":
        assert strangers(case["text"], BASE38)
    else:
        found = decode_base38(case["text"])
        assert isinstance(found, Remark)
        assert found.id == case["error"]


@pytest.mark.parametrize("case", VECTORS["matter_qr"]["valid"])
def test_matter_qr_fields(case: dict) -> None:
    found, expected = read_matter_qr(case["qr"]), case["decoded"]
    assert int(str(found.value("vendor")), 16) == expected["vid"]
    assert int(str(found.value("product")), 16) == expected["pid"]
    assert int(str(found.value("passcode"))) == expected["passcode"]
    assert found.value("discriminator") == expected["discriminator"]
    assert found.value("short_discriminator") == expected["discriminator"] >> 8
    assert found.value("discovery_bits") == expected["discovery"]
    assert found.value("version") == expected["version"]
    assert str(found.value("flow")).startswith(("standard", "a user action", "custom")[expected["flow"]])


@pytest.mark.parametrize("case", VECTORS["matter_manual"]["valid"] + VECTORS["matter_manual"]["format_only"])
def test_matter_manual_fields(case: dict) -> None:
    found, expected = read_matter_manual(case["code"]), case["decoded"]
    assert int(str(found.value("passcode"))) == expected["passcode"]
    assert found.value("short_discriminator") == expected["short_discriminator"]
    for name, key in (("vendor", "vid"), ("product", "pid")):
        value = found.value(name)
        assert (None if value is None else int(str(value), 16)) == expected.get(key)


@pytest.mark.parametrize("case", VECTORS["matter_manual"]["format_only"])
def test_passcode_above_the_limit_is_the_only_fault_of_a_well_formed_manual_code(case: dict) -> None:
    assert ids(read_matter_manual(case["code"])) == ["invalid-passcode"]


def test_forbidden_passcodes() -> None:
    forbidden = VECTORS["matter_forbidden_passcodes"]["values"]
    assert not any(passcode_allowed(passcode) for passcode in forbidden)
    around = {code + step for code in forbidden for step in (-1, 1)} - {-1, 100000000}
    assert all(passcode_allowed(passcode) for passcode in around)
    assert not passcode_allowed(100000000)


@pytest.mark.parametrize("case", VECTORS["eui64"])
def test_eui64(case: dict) -> None:
    found = read_eui64(case["printed"])
    assert found.ok
    assert found.value("address") == case["printed"]
    assert str(found.value("on_air")).replace(":", "") == case["on_air_le"]
    assert found.value("prefix") == case["oui"]


def test_verhoeff_agrees_with_an_independent_library() -> None:
    for number in range(100_000):
        assert verhoeff_holds(str(number)) == verhoeff.is_valid(str(number)), number


HEX_DIGITS, DIGITS = "0123456789ABCDEF", "".join(sorted(DECIMAL))
SLIPS = [
    ("83FED3407A939723A5C639B26916D505C3B5", read_install_code, HEX_DIGITS, (0, 540), (0, 35)),
    (VECTORS["zwave_qr"]["valid"][0]["qr"], read_zwave_qr, DIGITS, (1, 810), (0, 68)),
    (VECTORS["zwave_dsk"]["valid"][0]["dsk"], read_dsk, DIGITS, (336, 430), (26, 40)),
    ("34970112332", read_matter_manual, DIGITS, (0, 99), (0, 8)),
    ("702871264504387000187", read_matter_manual, DIGITS, (0, 189), (0, 18)),
    (
        "Y.K9042C00KA0648G00",
        lambda text: read_matter_qr("MT:" + text),
        "".join(sorted(BASE38)),
        (440, 703),
        (9, 16),
    ),
]


@pytest.mark.parametrize(("code", "reader", "alphabet", "changes", "swaps"), SLIPS)
def test_slips_of_the_hand_that_pass_unseen(
    code: str, reader: Reader, alphabet: str, changes: tuple[int, int], swaps: tuple[int, int]
) -> None:
    """(missed, tried) over every single change and every exchange of unequal neighbours.

    Source of the counts: computed with other code than this project's, before it was written.
    """
    changed = [
        code[:at] + new + code[at + 1 :] for at in range(len(code)) for new in set(alphabet) - {code[at]}
    ]
    swapped = [
        code[:at] + code[at + 1] + code[at] + code[at + 2 :]
        for at in range(len(code) - 1)
        if code[at] != code[at + 1]
    ]
    assert (sum(reader(text).ok for text in changed), len(changed)) == changes
    assert (sum(reader(text).ok for text in swapped), len(swapped)) == swaps


def test_the_one_unseen_change_of_a_zwave_qr_is_warned_of() -> None:
    (case,) = VECTORS["zwave_qr"]["valid"]
    found = read_zwave_qr("9000" + case["qr"][4:])
    assert found.ok
    assert [warning.id for warning in found.warnings] == ["not-smartstart"]
