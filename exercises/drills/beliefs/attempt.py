from dataclasses import dataclass

from exercises.drills.change import Change, Mode
from exercises.tape import Bench, Edit, Tape


@dataclass(frozen=True, slots=True)
class Attempt:
    """One change tried in one mode on a master."""

    master: Tape
    change: Change
    mode: Mode
    bench: Bench

    @property
    def edit(self) -> Edit:
        return self.change.edit(self.mode)
