from dataclasses import dataclass

from exercises.drills.change import Change, Mode
from exercises.drills.scene import Clip
from exercises.drills.wants import Side
from exercises.tape import Session


@dataclass(frozen=True, slots=True)
class Job:
    """One edit as it was made, the tracks that it was meant to change, and the purpose."""

    clip: Clip
    at: int
    mode: Mode
    meant: tuple[Side, ...]
    purpose: str

    @property
    def end(self) -> int:
        return self.at + self.clip.length

    def change(self, session: Session) -> Change:
        return Change(
            source=session.sources[self.clip.tape],
            in_=self.clip.in_,
            out=self.clip.out,
            at=self.at,
            tracks=self.meant,
        )
