"""A session edit by edit: what is wrong in the end, and which edit made it so."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Self

from exercises.drills.asks import Json
from exercises.drills.beliefs import Trial, as_played, recorded
from exercises.drills.kinds.spot_the_bad_edit.state import (
    WORST_FIRST,
    FaultyStretch,
    FilmFault,
    FilmSoFar,
)
from exercises.drills.kinds.spot_the_bad_edit.wear import MASTER, Wear
from exercises.drills.setting.change import Change, Mode
from exercises.tape import Bench, Laid, Run, Tape, read_edit_session
from exercises.tape.by_hand import with_runs


@dataclass(frozen=True, slots=True)
class MeantEdit:
    """An edit: the change that was meant by it, and the mode in which it was made."""

    change: Change
    mode: Mode


class EditsCase:
    """Edits made one after the other on a master.

    `worn` are places of the tapes that drop out; `off`: the machine that plays the master in the
    end has its tracking off.
    """

    def __init__(
        self,
        bench: Bench,
        master: Tape,
        steps: Sequence[MeantEdit],
        *,
        worn: Sequence[Wear] = (),
        off: bool = False,
    ) -> None:
        self.bench = bench
        self.master = master
        self.steps = tuple(steps)
        self.worn = tuple(worn)
        self.off = off

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        session = read_edit_session(stored["session"])
        steps = [
            MeantEdit(
                Change.from_json(step, session.sources[step["source"]]),
                Mode(step["mode"]),
            )
            for step in stored["steps"]
        ]
        worn = [Wear.from_json(each) for each in stored.get("worn", ())]
        off = stored.get("off", False)
        return cls(session.bench, session.master, steps, worn=worn, off=off)

    def states(self, beliefs: Collection[str] = ()) -> list[FilmSoFar]:
        """The master after each edit, by the rules or as a believer expects it."""
        tape, meant = self.master, Tape.blank(self.master.length)
        start, end = self.steps[0].change.at, 0
        found = []
        for step in self.steps:
            tape = recorded(Trial(tape, step.change, step.mode, self.bench), beliefs)
            meant = as_meant(meant, step.change)
            start, end = min(start, step.change.at), max(end, step.change.end)
            played = as_played(tape, self.bench, beliefs)
            found.append(FilmSoFar(played, meant, self.bench, start, end, self.worn))
        return found

    @cached_property
    def all_states(self) -> list[FilmSoFar]:
        return self.states()

    @property
    def last(self) -> FilmSoFar:
        return self.all_states[-1]

    @cached_property
    def _shown(self) -> list[tuple[FaultyStretch, ...]]:
        """What was wrong after each edit."""
        return [state.faults() for state in self.all_states]

    @property
    def faults(self) -> tuple[FaultyStretch, ...]:
        """What is wrong in the end."""
        return self._shown[-1]

    @property
    def fault(self) -> FilmFault | None:
        """The worst of it."""
        kinds = {stretch.fault for stretch in self.faults}
        return next((fault for fault in WORST_FIRST if fault in kinds), None)

    @property
    def is_worn(self) -> bool:
        """Whether all that is wrong is that one of the tapes is worn."""
        return {stretch.fault for stretch in self.faults} == {FilmFault.WORN}

    @property
    def is_master_worn(self) -> bool:
        """Whether that is the edit master itself."""
        return self.is_worn and {each.tape for each in self.worn} == {MASTER}

    @property
    def start(self) -> int:
        """Where what is wrong begins."""
        return min(stretch.start for stretch in self.faults)

    @property
    def end(self) -> int:
        return max(stretch.end for stretch in self.faults)

    @cached_property
    def blamed(self) -> frozenset[int]:
        """The edits after which playback first showed what is wrong in the end, by index."""
        return frozenset(
            self._first_shown(stretch.fault, frame)
            for stretch in self.faults
            for frame in self._cuts(stretch)
        )

    def _cuts(self, stretch: FaultyStretch) -> set[int]:
        """Where, within a stretch, something began to be wrong after some edit."""
        shown = (fault for faults in self._shown for fault in faults)
        cuts = {frame for fault in shown for frame in (fault.start, fault.end)}
        return {frame for frame in cuts if stretch.start <= frame < stretch.end}

    def _first_shown(self, kind: FilmFault, frame: int) -> int:
        """The first edit after which this was wrong with a frame, and stayed so."""
        first = len(self.steps) - 1
        for index in range(len(self.steps) - 1, -1, -1):
            shown = (fault for fault in self._shown[index] if fault.fault is kind)
            if not any(fault.start <= frame < fault.end for fault in shown):
                break
            first = index
        return first


def as_meant(meant: Tape, change: Change) -> Tape:
    """The film as it was meant to be once this change is made."""
    laid = Run(change.at, change.end, Laid(change.source.name, change.in_, 1, True))
    return with_runs(meant, change.tracks, change.at, change.end, [laid])
