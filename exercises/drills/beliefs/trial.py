from dataclasses import dataclass

from exercises.drills.setting.change import Change, Mode
from exercises.tape import Bench, Edit, Tape


@dataclass(frozen=True, slots=True)
class Trial:
    """One change tried in one mode on a master.

    `spare` is by how many frames the pre-roll is longer than what a machine needs to lock.
    """

    master: Tape
    change: Change
    mode: Mode
    bench: Bench
    spare: int = 0

    @property
    def edit(self) -> Edit:
        return self.change.edit(self.mode)
