"""The fold, case by case: what takes whose place, and what is told of entries that cannot be honest."""

import pytest

from secondfix.journal import Entry, Folded, fold, history, journal_of, subject_of
from secondfix.journal.deeds import Named
from tests.journal.writing import HOUSE, entry_id, write


def folded(*entries: Entry, **words: object) -> Folded:
    return fold(HOUSE, journal_of(entries), **words)  # type: ignore[arg-type] # words are the fold's own


def names(f: Folded) -> list[str]:
    return [e.name for e in f.current.get(("load:L1", "named"), ()) if isinstance(e, Named)]


def told(f: Folded) -> list[str]:
    return [t.words for t in f.told]


A = write(1, "named", "load:L1", name="a")
B = write(2, "named", "load:L1", name="b", sees=[1])
OTHER = write(3, "purpose_set", "load:L1", purpose="lighting", sees=[2])
C = write(4, "named", "load:L1", name="c", sees=[3])


def test_a_later_entry_takes_the_place_of_what_its_writer_knew() -> None:
    assert names(folded(A, B)) == ["b"]


def test_knowledge_passes_through_entries_of_another_aspect() -> None:
    f = folded(A, B, OTHER, C)
    assert names(f) == ["c"]
    assert f.settled("load:L1", "purpose_set", Entry) == OTHER


def test_another_aspect_takes_nobodys_place() -> None:
    assert names(folded(A, B, OTHER)) == ["b"]


def test_two_that_did_not_know_of_each_other_are_a_conflict_where_they_differ() -> None:
    f = folded(A, write(5, "named", "load:L1", name="z"))
    assert [(c.subject, c.aspect) for c in f.conflicts] == [("load:L1", "named")]
    assert f.settled("load:L1", "named", Entry) is None
    assert folded(A, write(5, "named", "load:L1", name="a")).conflicts == ()


def test_an_entry_that_saw_both_settles_the_conflict() -> None:
    f = folded(A, write(5, "named", "load:L1", name="z"), write(6, "named", "load:L1", name="m", sees=[1, 5]))
    assert (names(f), f.conflicts) == (["m"], ())


def test_two_measurements_stand_beside_each_other() -> None:
    f = folded(*(write(n, "measured", "link:D01>P1", rssi_dbm=-60 - n) for n in (1, 2)))
    assert len(f.current["link:D01>P1", "measured"]) == 2
    assert f.conflicts == ()


def test_what_a_withdrawn_entry_hid_stands_again() -> None:
    f = folded(A, B, write(5, "withdrawn", "load:L1", of=2))
    assert names(f) == ["a"]
    assert f.withdrawn == {entry_id(2)}
    assert names(
        folded(A, B, write(5, "withdrawn", "load:L1", of=2), write(6, "withdrawn", "load:L1", of=5))
    ) == ["b"]


def test_who_knew_the_withdrawn_entry_still_knew_what_it_knew() -> None:
    after = write(7, "named", "load:L1", name="d", sees=[2])
    assert names(folded(A, B, after, write(5, "withdrawn", "load:L1", of=2))) == ["d"]


def test_withdrawals_of_each_other_are_void_and_told() -> None:
    f = folded(A, write(5, "withdrawn", "load:L1", of=6), write(6, "withdrawn", "load:L1", of=5))
    assert f.withdrawn == frozenset()
    assert "is in a ring of withdrawals" in told(f)


def test_a_withdrawal_of_what_is_not_here_waits_for_it() -> None:
    waiting = write(5, "withdrawn", "load:L1", of=1)
    assert told(folded(waiting)) == [f"saw entry {entry_id(1)}, which is not here"]
    assert names(folded(A, waiting)) == []


def test_a_withdrawal_through_another_subject_does_nothing() -> None:
    f = folded(A, write(5, "withdrawn", "load:L2", of=1))
    assert names(f) == ["a"]
    assert told(f) == [f"saw entry {entry_id(1)}, which is of load:L1: that does not count"]


def test_a_ring_of_sight_does_not_hang_and_is_void() -> None:
    ring = [write(n, "named", "load:L1", name=f"n{n}", sees=[n % 3 + 1]) for n in (1, 2, 3)]
    f = folded(*ring)
    assert names(f) == ["n1", "n2", "n3"]
    assert told(f) == ["is in a ring of entries that saw each other"] * 3
    alone = write(1, "named", "load:L1", name="self", sees=[1])
    assert names(folded(alone)) == ["self"]


def test_honest_entries_before_and_after_a_ring_keep_their_place() -> None:
    before = write(8, "named", "load:L1", name="first")
    ring = [
        write(1, "named", "load:L1", name="r", sees=[2, 8]),
        write(2, "named", "load:L1", name="r", sees=[1]),
    ]
    after = write(9, "named", "load:L1", name="last", sees=[1, 2])
    assert names(folded(before, *ring)) == ["r", "r"]
    assert names(folded(before, *ring, after)) == ["last"]


def test_a_very_long_chain_is_no_deeper_than_the_stack() -> None:
    chain = [write(n, "named", "load:L1", name="x", sees=[n - 1] if n > 1 else []) for n in range(1, 3000)]
    assert len(names(folded(*chain))) == 1


def test_an_entry_that_sees_what_is_missing_counts_and_is_told() -> None:
    f = folded(B)
    assert names(f) == ["b"]
    assert told(f) == [f"saw entry {entry_id(1)}, which is not here"]
    assert not f.told[0].serious


def test_entries_of_another_house_do_not_count() -> None:
    f = folded(A.model_copy(update={"house": entry_id(77)}), B)
    assert names(f) == ["b"]
    assert any("another house" in words for words in told(f))


def test_an_unknown_base_is_told_where_revisions_are_known() -> None:
    adopted = write(5, "adopted", f"house:{HOUSE.id}", to_revision="B", took_in=[])
    later = write(6, "named", "load:L1", name="z", sees=[1]).model_copy(update={"revision": "B"})
    lost = write(7, "named", "load:L2", name="y").model_copy(update={"revision": "Q"})
    f = folded(A, adopted, later, lost, revisions=frozenset({"A"}))
    assert told(f) == ["was written over revision Q, which is not known"]
    assert ("load:L2", "named") in f.current
    assert told(folded(lost)) == []


@pytest.mark.parametrize(
    ("at", "future"), [("2031-05-06T09:41+02:00", True), ("2031-05-06T10:39+03:00", False)]
)
def test_an_entry_from_the_future_counts_and_is_told(at: str, future: bool) -> None:
    f = folded(A.model_copy(update={"at": at}), now="2031-05-06T07:40:00Z")
    assert names(f) == ["a"]
    assert any("later than now" in words for words in told(f)) == future


def test_a_skipped_step_never_hides_a_deed_and_goes_when_it_is_done() -> None:
    joined = write(1, "joined", "device:D01", network="N1")
    skipped = write(2, "skipped", "device:D01", deed="join", reason="no power yet", sees=[1])
    f = folded(joined, skipped)
    assert f.settled("device:D01", "joining", Entry) == joined
    assert ("device:D01", "skipped join") in f.current
    done = write(3, "joined", "device:D01", network="N1", sees=[2])
    assert ("device:D01", "skipped join") not in folded(joined, skipped, done).current


def test_a_snag_is_open_until_cleared_and_again_when_the_clearing_is_withdrawn() -> None:
    snag = write(1, "snag_raised", "box:B1", words="plate chipped")
    clear = write(2, "snag_cleared", "box:B1", clears=1)
    assert folded(snag).open_snags == (snag,)
    assert folded(snag, clear).open_snags == ()
    assert folded(snag, clear, write(3, "withdrawn", "box:B1", of=2)).open_snags == (snag,)
    assert folded(snag, write(4, "withdrawn", "box:B1", of=1)).open_snags == ()
    assert folded(snag, write(5, "snag_cleared", "box:B2", clears=1)).open_snags == (snag,)


def test_a_test_and_a_correction_of_one_gang_speak_of_one_thing() -> None:
    tested = write(1, "function_tested", "gang:B1.1", answered={"L2": "on"})
    says = {"path": "boxes.B1.gangs.1.duty", "found": {"duty": "feeds", "load": "L2"}}
    assert folded(tested, write(2, "survey_corrected", "gang:B1.1", **says)).conflicts == ()
    says["found"] = "capped"
    assert len(folded(tested, write(2, "survey_corrected", "gang:B1.1", **says)).conflicts) == 1


def test_the_history_of_a_subject_tells_what_was_known_first() -> None:
    late_id = write(9, "named", "load:L1", name="first")
    after = write(1, "named", "load:L1", name="second", sees=[9])
    assert history(folded(after, late_id, B), "load:L1")[-1] != late_id
    assert [e.id for e in history(folded(after, late_id), "load:L1")] == [entry_id(9), entry_id(1)]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (("removed", {}), ("fitted", {})),
        (("joined", {"network": "N1"}), ("excluded", {"network": "N1"})),
        (("joined", {"network": "N1"}), ("join_failed", {"network": "N1"})),
        (("joined", {"network": "N1", "node": 7}), ("joined", {"network": "N1", "node": 8})),
        (("fitted", {"model": "corvell-pair@1"}), ("fitted", {})),
    ],
)
def test_deeds_that_exclude_each_other_are_a_conflict(
    one: tuple[str, dict[str, object]], other: tuple[str, dict[str, object]]
) -> None:
    a, b = (write(n, kind, "device:D01", **fields) for n, (kind, fields) in enumerate((one, other), start=1))
    assert [c.entries for c in folded(a, b).conflicts] == [(a, b)]
    assert folded(a, a.model_copy(update={"id": b.id})).conflicts == ()


def test_signatures_and_what_they_sign_stand_in_the_history() -> None:
    one, two = (write(n, "signed", f"house:{HOUSE.id}", name=f"S. {n}", paper="as-built") for n in (1, 2))
    f = folded(one, two)
    assert f.conflicts == ()
    assert history(f, f"house:{HOUSE.id}") in {(one, two), (two, one)}


def test_a_subject_that_is_none_is_our_own_fault() -> None:
    with pytest.raises(ValueError, match="names no subject"):
        subject_of("lamp:7")
