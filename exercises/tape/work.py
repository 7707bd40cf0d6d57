"""How much work an answer may make: in steps, so that a document is always refused or never.

A step takes about three microseconds, whatever it is: the seconds would depend on the machine. A
place weighed for a planned recording is one, a second of a drift two, a run laid on a track or
looked at by the judge four, an edit or a pass that is read `READ`.
Whoever loops over what a document asks for in few words (runs, seconds, choices) says so with
`spend`. Memory grows with the steps, too. `python -m tests.bench.tape` tells what a step takes.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from exercises.tape.errors import TapeError

USUAL = 700_000
BYTES = 8  # of a document's text, that are read in a step
READ = 15  # steps, for an edit or a pass before it is made


class TooMuchWork(TapeError):
    """More steps than allowed; ``path`` is the part of the document that they were made for."""

    def __init__(self, most: int) -> None:
        self.path = ""
        super().__init__(
            f"takes more than {most:,} steps of work; ask for less, or allow more (--steps)"
        )


class Work:
    """What is left of the steps that are allowed."""

    __slots__ = ("left", "most")

    def __init__(self, most: int) -> None:
        self.most = self.left = most


_going_on: ContextVar[Work | None] = ContextVar("work", default=None)


@contextmanager
def limited(most: int) -> Iterator[None]:
    """Allow so many steps within; where a limit holds already, that one goes on holding."""
    if _going_on.get() is not None:
        yield
        return
    token = _going_on.set(Work(most))
    try:
        yield
    finally:
        _going_on.reset(token)


def spend(count: int = 1) -> None:
    """So many steps are made. TooMuchWork where they are not allowed."""
    work = _going_on.get()
    if work is not None:
        work.left -= count
        if work.left < 0:
            raise TooMuchWork(work.most)


@contextmanager
def working_on(path: str) -> Iterator[None]:
    """Name the part of the document that the steps within are made for; the inmost name holds."""
    try:
        yield
    except TooMuchWork as refused:
        refused.path = refused.path or path
        raise
