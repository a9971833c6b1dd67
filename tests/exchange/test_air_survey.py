"""A channel survey read from a table: what goes out comes back, and every fault has its line."""

import csv
import io

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import Workbook

from secondfix.exchange import LARGEST_SURVEY_BYTES, AirSurvey, read_air_survey
from secondfix.exchange.air_survey import MOST_HEARD
from secondfix.house import Fault
from secondfix.radio import Sends, Transmitter

PLACES = frozenset({"B01", "P81"})
COLUMNS = ("kind", "channel", "second_channel", "width_mhz", "level_dbm", "duty_pct", "place", "name")

_NAMES = st.text(st.characters(codec="utf-8", categories=("L", "N", "P", "S")), max_size=20)
_OF_ALL = {
    "level_dbm": st.integers(-130, 20),
    "duty_permille": st.none() | st.integers(0, 1000),
    "place": st.none() | st.sampled_from(sorted(PLACES)),
    "name": _NAMES,
}
NARROW = st.builds(
    Transmitter,
    kind=st.just(Sends.WIFI),
    channel=st.integers(1, 14),
    width_mhz=st.sampled_from([20, 22]),
    **_OF_ALL,
)
MESHES = st.builds(
    Transmitter, kind=st.just(Sends.MESH), channel=st.integers(11, 26), width_mhz=st.just(2), **_OF_ALL
)
WIDE = st.builds(
    lambda channel, up, **own: Transmitter(
        Sends.WIFI, channel, 40, second_channel=channel + 4 if up else channel - 4, **own
    ),
    channel=st.integers(5, 9),
    up=st.booleans(),
    **_OF_ALL,
)
TRANSMITTERS = st.one_of(NARROW, MESHES, WIDE)


def cells(one: Transmitter, *, point: str) -> list[str]:
    duty = "" if one.duty_permille is None else f"{one.duty_permille / 10:.1f}".replace(".", point)
    second = "" if one.second_channel is None else str(one.second_channel)
    return [
        one.kind.value, str(one.channel), second, str(one.width_mhz), str(one.level_dbm), duty,
        one.place or "", one.name,
    ]  # fmt: skip


@settings(deadline=None)
@given(
    heard=st.lists(TRANSMITTERS, max_size=6),
    delimiter=st.sampled_from(",;\t"),
    point=st.sampled_from(".,"),
    end=st.sampled_from(["\n", "\r\n"]),
    mark=st.booleans(),
)
def test_what_was_written_is_read(
    heard: list[Transmitter], delimiter: str, point: str, end: str, mark: bool
) -> None:
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=delimiter, lineterminator=end)
    writer.writerow(COLUMNS)
    writer.writerows(cells(one, point=point) for one in heard)
    data = out.getvalue().encode("utf-8-sig" if mark else "utf-8")
    read = read_air_survey(data, where="s.csv", places=PLACES)
    assert isinstance(read, AirSurvey), read
    assert list(read.heard) == heard


@settings(deadline=None)
@given(
    data=st.binary(max_size=300) | st.text(max_size=200).map(lambda t: ("channel,level_dbm\n" + t).encode())
)
def test_anything_is_read_or_told(data: bytes) -> None:
    read = read_air_survey(data, where="s.csv", places=PLACES)
    assert isinstance(read, AirSurvey) or all(isinstance(f, Fault) and f.expected for f in read)


def told(text: str) -> list[str]:
    read = read_air_survey(text.encode(), where="s.csv", places=PLACES)
    assert isinstance(read, list), read
    return list(map(str, read))


HEAD = "channel,level_dbm,duty_pct,kind,width_mhz,second_channel,place,name\n"


@pytest.mark.parametrize(
    ("row", "column", "stands", "expected"),
    [
        ("36,-50,,,,,,", "channel", "'36'", "leave the row out"),
        ("6.5,-50,,,,,,", "channel", "'6.5'", "1 to 14"),
        (",-50,,,,,,", "channel", "nothing", "1 to 14"),
        ("6,-50,,mesh,,,,", "channel", "'6'", "11 to 26"),
        ("6,loud,,,,,,", "level_dbm", "'loud'", "-130 to 20"),
        ("6,-131,,,,,,", "level_dbm", "'-131'", "-130 to 20"),
        ("6,,,,,,,", "level_dbm", "nothing", "-130 to 20"),
        ("6,-50,101,,,,,", "duty_pct", "'101'", "0 to 100 %"),
        ("6,-50,-1,,,,,", "duty_pct", "'-1'", "0 to 100 %"),
        ("6,-50,,radar,,,,", "kind", "'radar'", "wifi or mesh"),
        ("6,-50,,,30,,,", "width_mhz", "'30'", "20 or 22 or 40"),
        ("15,-50,,mesh,20,,,", "width_mhz", "'20'", "2 MHz"),
        ("6,-50,,,40,,,", "second_channel", "nothing", "2 or 10"),
        ("1,-50,,,40,6,,", "second_channel", "'6'", "5, 40 MHz"),
        ("1,-50,,,,5,,", "second_channel", "'5'", "not 40 MHz"),
        ("6,-50,,,,,P99,", "place", "'P99'", "box or place"),
        ("6,-50,,,,,," + "x" * 81, "name", "'xxx", "80 characters"),
        ('6,-50,,,,,,"a\nb"', "name", "'a\nb'", "one line"),
    ],
)
def test_each_fault_has_its_row_column_value_and_what_was_expected(
    row: str, column: str, stands: str, expected: str
) -> None:
    (line,) = told(f"{HEAD}6,-61,12,,,,,\n{row}\n")
    assert line.startswith(f"s.csv: row 3, {column}: {stands}")
    assert expected in line


def test_all_faults_are_told_at_once() -> None:
    assert len(told(f"{HEAD}0,-50,,,,,,\n6,-50,200,,,,P99,\n")) == 3


def test_columns_are_known_by_their_words() -> None:
    read = read_air_survey(
        "\ufeffLevel ;Channel;Second  Channel;WIDTH;Duty;Noise\n\u221270,4;5;9;40;12,5 %;-95\n".encode(),
        where="s.csv",
        places=PLACES,
    )
    assert isinstance(read, AirSurvey), read
    assert read.heard == (Transmitter(Sends.WIFI, 5, 40, -70, 125, second_channel=9),)
    assert any("Noise" in words for words in read.told)


def test_what_may_be_left_out_has_its_usual_value() -> None:
    read = read_air_survey(b"channel,level,kind\n6,-50,\n20,-60,mesh\n", where="s.csv", places=PLACES)
    assert isinstance(read, AirSurvey)
    assert read.heard == (Transmitter(Sends.WIFI, 6, 20, -50), Transmitter(Sends.MESH, 20, 2, -60))


def test_a_survey_that_heard_nobody_is_a_survey() -> None:
    read = read_air_survey(b"channel,level_dbm\n", where="s.csv", places=PLACES)
    assert isinstance(read, AirSurvey)
    assert read.heard == ()


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("channel,duty\n6,4\n", "a column 'level_dbm'"),
        ("level,level_dbm,channel\n-50,-50,6\n", "'level_dbm' twice"),
        ("", "a header"),
        ("channel,level_dbm\n" + "6,-50\n" * (MOST_HEARD + 1), "at most 500"),
        ("channel,level_dbm,name\n6,-50," + "x" * LARGEST_SURVEY_BYTES, "at most 1,048,576 bytes"),
        ('channel,level_dbm\n6,"-50\n', "quoted cells"),
        ("channel\x00,level\n", "zero byte"),
    ],
)
def test_a_table_that_is_none_is_refused_in_a_line(text: str, says: str) -> None:
    assert any(says in line for line in told(text))


def test_a_workbook_is_read_as_a_table() -> None:
    book, out = Workbook(), io.BytesIO()
    sheet = book.active
    assert sheet is not None
    for row in (["channel", "level_dbm", "duty_pct", "name"], [11, -58, 22.5, "Tarn"]):
        sheet.append(row)
    book.save(out)
    read = read_air_survey(out.getvalue(), where="s.xlsx", places=PLACES)
    assert isinstance(read, AirSurvey), read
    assert read.heard == (Transmitter(Sends.WIFI, 11, 20, -58, 225, name="Tarn"),)
