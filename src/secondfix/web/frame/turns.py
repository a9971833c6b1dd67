"""Who works at the desk when: while an edit is being answered, pages that come in wait a moment.

One process answers everybody, and of its threads one computes at a time: three people who turn pages would
make a fourth wait four times as long for the answers to what they type. So pages go two at a time, none
begins while an edit is under way, and nobody waits longer than a second for that: the why stands in
docs/decisions/turns-at-the-desk.md.
"""

import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, ExitStack, contextmanager
from contextvars import ContextVar
from threading import Condition
from typing import Any

from django.http import HttpRequest
from django.http.response import HttpResponseBase

AT_ONCE = 2
"""Pages of houses that are put together at one time."""
LONGEST_WAIT_S = 1.0
MOST_WAITING = 16
"""Pages that wait; it must leave threads of the server free for edits. Who comes on top goes at once."""
ASIDE = frozenset({"job", "job-file", "swap", "swap-out", "swap-work", "radio-work", "api:foresee"})
"""Sheets and calls that watch work done aside: they rest rather than compute, or ask how far it is."""
_LOOKING = {"GET", "HEAD", "OPTIONS"}


class Turns:
    """Turns of pages and edits. It never refuses and never holds anybody longer than ``longest_wait_s``."""

    def __init__(
        self,
        *,
        at_once: int = AT_ONCE,
        longest_wait_s: float = LONGEST_WAIT_S,
        most_waiting: int = MOST_WAITING,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._at_once, self._longest_wait_s, self._most_waiting = at_once, longest_wait_s, most_waiting
        self._clock = clock
        self._changed = Condition()
        self._pages = self._edits = self._waiting = 0

    @contextmanager
    def edit(self) -> Iterator[None]:
        """An edit under way: it begins at once."""
        with self._changed:
            self._edits += 1
        try:
            yield
        finally:
            with self._changed:
                self._edits -= 1
                self._changed.notify_all()

    @contextmanager
    def page(self) -> Iterator[None]:
        """A page being put together, once its turn has come or it has waited long enough."""
        with self._changed:
            self._wait(lambda: self._edits > 0 or self._pages >= self._at_once)
            self._pages += 1
        try:
            yield
        finally:
            with self._changed:
                self._pages -= 1
                self._changed.notify_all()

    def give_way(self) -> None:
        """For work done aside, between two of its steps: wait while an edit is under way."""
        with self._changed:
            self._wait(lambda: self._edits > 0)

    def _wait(self, held: Callable[[], bool]) -> None:
        if self._waiting >= self._most_waiting:
            return
        until = self._clock() + self._longest_wait_s
        self._waiting += 1
        try:
            while held() and (left_s := until - self._clock()) > 0:
                self._changed.wait(left_s)
        finally:
            self._waiting -= 1


turns = Turns()
"""Those of this desk."""
_turn: ContextVar[ExitStack] = ContextVar("turn")


class InTurn:
    """Middleware that gives every request to a house its turn; the last one: only the view is held."""

    def __init__(self, answer: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.answer = answer

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """The turn is over once the view has answered, whatever it raised; what streams, streams after it."""
        with ExitStack() as turn:
            under_way = _turn.set(turn)
            try:
                return self.answer(request)
            finally:
                _turn.reset(under_way)

    def process_view(self, request: HttpRequest, *_: Any) -> None:
        """Wait for the turn, now that the address is known and the guard has let the person in."""
        turn = turn_of(request)
        if turn is not None:
            _turn.get().enter_context(turn)


def turn_of(request: HttpRequest) -> AbstractContextManager[None] | None:
    """The turn that a request takes; None where it takes none."""
    match = request.resolver_match
    assert match is not None  # Django calls this once the address is resolved
    if "house_id" not in match.kwargs or match.view_name in ASIDE:
        return None
    return turns.page() if request.method in _LOOKING else turns.edit()
