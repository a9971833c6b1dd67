"""Long work aside: watched, cancelled, kept within limits."""

from collections.abc import Iterator
from threading import Event
from time import monotonic, sleep

import pytest

from secondfix.web.frame import jobs
from secondfix.web.frame.jobs import Job, Progress, State

HOUSE = "0190b7c4-5e21-7a3d-9c40-6b1f2d8e7a51"


@pytest.fixture(autouse=True)
def no_jobs() -> Iterator[None]:
    jobs._jobs.clear()
    yield
    jobs._jobs.clear()


def begun(work: object, *, by: str = "Ilka", steps: int = 2, size: int = 0) -> Job:
    return jobs.start(
        house_id=HOUSE, by=by, title="Pack", steps=steps, work=work, size_of=lambda _: size  # type: ignore[arg-type] # any callable of the test
    )  # fmt: skip


def ended(job: Job) -> Job:
    until = monotonic() + 20
    while not job.ended:
        assert monotonic() < until
        sleep(0.005)
    return job


def test_what_the_work_made_is_its_result() -> None:
    def work(progress: Progress) -> str:
        progress("findings")
        progress("worksheets")
        return "papers"

    job = ended(begun(work))
    assert (job.state, job.result, job.done, job.at) == (State.DONE, "papers", 2, "")
    assert jobs.find(job.id, house_id=HOUSE) is job
    assert jobs.jobs_of(HOUSE) == (job,)


def test_a_job_is_not_found_from_another_house() -> None:
    job = begun(lambda _: None)
    assert jobs.find(job.id, house_id="0190b7c4-5e21-7a3d-9c40-000000000000") is None


def test_a_running_job_ends_before_its_next_step() -> None:
    inside, on = Event(), Event()

    def work(progress: Progress) -> str:
        progress("first")
        inside.set()
        on.wait(20)
        progress("second")
        return "never"

    job = begun(work)
    assert inside.wait(20)
    assert (job.state, job.at, job.done) == (State.RUNNING, "first", 0)
    jobs.cancel(job)
    on.set()
    assert ended(job).state is State.CANCELLED
    assert job.result is None


def test_a_waiting_job_ends_at_once_and_never_runs() -> None:
    on, ran = Event(), Event()
    held = [begun(lambda _: on.wait(20)) for _ in range(2)]
    job = begun(lambda _: ran.set())
    jobs.cancel(job)
    assert job.state is State.CANCELLED
    on.set()
    assert {ended(j).state for j in held} == {State.DONE}
    assert not ran.is_set()


def test_work_that_breaks_is_told_as_failed() -> None:
    def work(_: Progress) -> None:
        raise RuntimeError("a fault of ours")

    assert ended(begun(work)).state is State.FAILED


def test_one_person_cannot_fill_the_desk() -> None:
    on = Event()
    for _ in range(jobs.MOST_WAITING):
        begun(lambda _: on.wait(20))
    with pytest.raises(jobs.TooManyError):
        begun(lambda _: None)
    other = begun(lambda _: "done", by="Osk")
    on.set()
    assert ended(other).state is State.DONE


def test_the_oldest_results_make_room() -> None:
    first = ended(begun(lambda _: "a", size=jobs.MOST_BYTES))
    second = ended(begun(lambda _: "b", size=jobs.MOST_BYTES))
    assert jobs.jobs_of(HOUSE) == (second,)
    assert jobs.find(first.id, house_id=HOUSE) is None


def test_an_answer_asked_anew_takes_the_place_of_the_one_under_way() -> None:
    on = Event()

    def asked(title: str, by: str = "Ilka", kind: str = "answer") -> Job:
        def work(progress: Progress) -> str:
            progress("first")
            on.wait(20)
            progress("second")
            return title

        return jobs.start(house_id=HOUSE, by=by, title=title, steps=2, work=work, kind=kind)

    older, paper = asked("Who falls"), asked("Who falls", kind="paper")
    others, another = asked("Who falls", by="Osk"), asked("Swap of D03")
    newer = asked("Who falls")
    assert [job.stop.is_set() for job in (older, paper, others, another, newer)] == [True, *[False] * 4]
    on.set()
    assert ended(older).state is State.CANCELLED
    assert {ended(job).state for job in (paper, others, another, newer)} == {State.DONE}
