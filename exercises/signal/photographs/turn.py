"""One picture at a time in each process of the site, a few waiting, and no one for long."""

from collections.abc import Iterator
from contextlib import contextmanager
from threading import BoundedSemaphore

from exercises.signal.photographs.limits import AT_ONCE, LONGEST_WAIT, WAITING

BUSY = "The site is busy with other pictures and has not taken yours. Send it again in a minute."


class PhotographsBusy(Exception):
    """The picture was not looked at: too many others are, and wait. Try again soon."""

    def __init__(self) -> None:
        super().__init__(BUSY)


class Turns:
    """So many at once, so many more that wait, each so many seconds at most."""

    def __init__(self, at_once: int, waiting: int, longest: float) -> None:
        self.places = BoundedSemaphore(at_once + waiting)
        self.turns = BoundedSemaphore(at_once)
        self.longest = longest

    @contextmanager
    def turn(self) -> Iterator[None]:
        """Wait for it; PhotographsBusy where all places are taken, or it does not come."""
        if not self.places.acquire(blocking=False):
            raise PhotographsBusy
        try:
            if not self.turns.acquire(timeout=self.longest):
                raise PhotographsBusy
            try:
                yield
            finally:
                self.turns.release()
        finally:
            self.places.release()


DECODING = Turns(AT_ONCE, WAITING, LONGEST_WAIT)
