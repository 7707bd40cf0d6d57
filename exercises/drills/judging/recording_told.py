"""What a recording does to a tape, in sentences made from the tape model's own facts."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from exercises.drills.beliefs import Attempt, recorded
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import begun, code, length, listed, span
from exercises.tape import SIDES
from exercises.tape.judging import Demand, Miss, Trouble, misses

NAMES = {
    Mode.ASSEMBLE: "assemble",
    Mode.INSERT_PICTURE: "insert picture",
    Mode.INSERT_SOUND: "insert sound",
    Mode.INSERT_BOTH: "insert picture and sound",
}


@dataclass(frozen=True, slots=True)
class Harm:
    """`[start, end)` of wanted tracks that isn't there, for one reason."""

    tracks: tuple[str, ...]
    new: bool
    trouble: Trouble
    moved: int
    start: int
    end: int


def harms(missing: Iterable[Miss]) -> Iterator[Harm]:
    """The misses put together, what is new first: neighbours, and tracks that suffer alike.

    That what follows doesn't move is one harm, the first: it says it all.
    """
    alike: dict[tuple[bool, int, int, Trouble, int], list[str]] = {}
    for miss in _joined(missing):
        want = miss.want
        place = (not want.new, miss.start, miss.end, miss.trouble, want.moved)
        alike.setdefault(place, []).append(want.track)
    moved_told = False
    for (kept, start, end, trouble, moved), tracks in sorted(alike.items()):
        if not (moved and moved_told):
            yield Harm(tuple(tracks), not kept, trouble, moved, start, end)
        moved_told = moved_told or bool(moved)


def _joined(missing: Iterable[Miss]) -> Iterator[Miss]:
    held: Miss | None = None
    for miss in missing:
        if held and held.end == miss.start and _kind(held) == _kind(miss):
            held = Miss(held.want, held.trouble, held.start, miss.end)
            continue
        if held:
            yield held
        held = miss
    if held:
        yield held


def _kind(miss: Miss) -> tuple[str, bool, int, Trouble]:
    return miss.want.track, miss.want.new, miss.want.moved, miss.trouble


class Outcome:
    """One attempt and what came of it."""

    def __init__(self, attempt: Attempt, wants: Iterable[Demand]) -> None:
        self.attempt = attempt
        self.tape = recorded(attempt)
        laid = [want for want in wants if not want.new or want.track in attempt.mode.tracks]
        self.unrecorded = [
            track for track in attempt.change.tracks if track not in attempt.mode.tracks
        ]
        self.harms = tuple(harms(misses(laid, self.tape, attempt.bench)))

    def told(self) -> list[str]:
        """What it records, then what is wrong with that; or that all is well."""
        right = "All that is wanted plays cleanly, and all that must stay is untouched."
        return [*self._recorded(), *(list(self.wrong()) or [right])]

    def wrong(self) -> Iterator[str]:
        """What is wrong with it, the plainest thing first."""
        if self.unrecorded:
            yield f"The new {listed(self.unrecorded)} is not recorded."
        for harm in self.harms:
            yield self._told(harm)

    def _span(self, start: int, end: int) -> str:
        return span(start, end, self.attempt.bench)

    def _long(self, frames: int) -> str:
        return length(frames, self.attempt.bench.rate)

    def _code(self, frame: int) -> str:
        return code(frame, self.attempt.bench)

    def _recorded(self) -> Iterator[str]:
        change, mode, bench = self.attempt.change, self.attempt.mode, self.attempt.bench
        where = self._span(change.at, change.end)
        if mode is not Mode.ASSEMBLE:
            left = [track for track in SIDES if track not in mode.tracks]
            yield f"{begun(NAMES[mode])} records {listed(mode.tracks)} {where}."
            yield f"It leaves the {listed([*left, 'pulses'])} as they are."
            return
        yield f"Assemble records picture, sound and pulses {where}."
        if self.attempt.master.run_up(change.at) >= bench.lock:
            yield "Its pulses run on in phase from those before."
        wiped = min(bench.erase_gap, self.tape.length - change.end)
        if wiped:
            until = self._code(change.end + wiped)
            yield f"Past its end it wipes {self._long(wiped)} of tape, as far as {until}."

    def _told(self, harm: Harm) -> str:
        if harm.moved:
            return self._told_moved()
        return self._told_new(harm) if harm.new else self._told_kept(harm)

    def _told_moved(self) -> str:
        change = self.attempt.change
        return (
            f"Nothing moves along: what lay from {self._code(change.at)} on stays where it was, "
            f"and the new shot is recorded over {self._long(change.end - change.at)} of it."
        )

    def _told_new(self, harm: Harm) -> str:
        what, where = listed(harm.tracks), self._span(harm.start, harm.end)
        match harm.trouble:
            case Trouble.NO_PULSES:
                return f"There are no pulses {where}: nothing locks to the new {what} there."
            case Trouble.ROLL:
                begins = self._code(harm.start)
                return f"The pulses begin anew at {begins}: what is new is unsteady {where}."
            case Trouble.UNSETTLED:
                are = "is" if len(harm.tracks) == 1 else "are"
                return f"The new {what} {are} unsteady {where}: {self._unlocked()}."
            case Trouble.CUT:
                return (
                    f"It makes a plain cut at {self._code(harm.start)}: one player gives one "
                    "picture, and there is nothing to mix it with."
                )
        return f"The new {what} is not there {where}."

    def _unlocked(self) -> str:
        """Why the machines were not locked when the copy began."""
        master, change = self.attempt.master, self.attempt.change
        lock = self.attempt.bench.lock
        run_ups = {
            "the take": change.source.run_up(change.in_),
            "the edit master": master.run_up(change.at),
        }
        short = [
            f"{which} has {self._long(frames) if frames else 'none'}"
            for which, frames in run_ups.items()
            if frames < lock
        ]
        return f"of the {self._long(lock)} of run-up before the edit in, {listed(short)}"

    def _told_kept(self, harm: Harm) -> str:
        what, where = listed(harm.tracks), self._span(harm.start, harm.end)
        was, is_ = ("was", "is") if len(harm.tracks) == 1 else ("were", "are")
        match harm.trouble:
            case Trouble.ROLL:
                return f"There the old pulses go on, out of phase: the picture rolls {where}."
            case Trouble.OTHER:
                return f"The {what} that {was} to stay {is_} recorded over {where}."
        return f"The {what} that {was} to stay {is_} wiped {where}."
