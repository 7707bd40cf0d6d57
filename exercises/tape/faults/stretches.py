"""Stretches of a track that show or sound as one: the source runs on without a cut."""

from collections.abc import Iterable
from typing import NamedTuple

from exercises.tape.runs import Run
from exercises.tape.track import Laid


class UncutStretch(NamedTuple):
    """Runs that continue one another, however each was recorded."""

    first: Run[Laid]
    last: Run[Laid]

    @property
    def start(self) -> int:
        return self.first.start

    @property
    def end(self) -> int:
        return self.last.end


def runs_on(before: Run[Laid], after: Run[Laid]) -> bool:
    held, next_ = before.value, after.value
    return (
        before.end == after.start
        and next_.frame == held.frame + before.end - before.start
        and next_.source == held.source
    )


def stretches(runs: Iterable[Run[Laid]]) -> list[UncutStretch]:
    found: list[UncutStretch] = []
    for run in runs:
        if found and runs_on(found[-1].last, run):
            found[-1] = UncutStretch(found[-1].first, run)
        else:
            found.append(UncutStretch(run, run))
    return found
