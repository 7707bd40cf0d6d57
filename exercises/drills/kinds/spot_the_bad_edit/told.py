"""What went wrong and how it is mended, in sentences made from the tape model's own facts."""

from collections.abc import Iterator

from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.cause import cause_of
from exercises.drills.kinds.spot_the_bad_edit.mends import Mend, least
from exercises.drills.kinds.spot_the_bad_edit.state import FaultyStretch, FilmFault, FilmSoFar
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import begun, code, length, listed, span
from exercises.tape import SIDES, Rate, Side, Tape, unpulsed


class CaseTold:
    """A case in words."""

    def __init__(self, case: EditsCase) -> None:
        self.case = case
        self.rate: Rate = case.bench.rate

    def happened(self) -> list[str]:
        """What is wrong with the film and what the edit did; or that nothing is wrong."""
        if self.case.fault is None:
            return list(self._well())
        seen = [self._seen(self.case.last, stretch) for stretch in self.case.faults]
        cause = cause_of(self.case)
        return [*seen, cause.sentence] if cause else seen

    def mended(self, mode: Mode) -> str:
        """What a mend does: that it is enough, or what is still wrong after it."""
        mend = Mend(self.case, mode)
        if mend.start < 0:
            return "Nowhere before it are there pulses in phase for long enough to assemble from."
        left = mend.result().faults()
        if left:
            seen = self._seen(mend.result(), left[0])
            return f"{mode.words} does not put it right. {seen}"
        what = f"{mode.words} {self._span(mend.start, mend.end)}"
        if mode is not least(self.case):
            return f"{what} would do too, but it lays again what is not wrong."
        if mode is not Mode.ASSEMBLE:
            return f"{what} puts it right: the pulses run on there, and all else stays as it is."
        ready = self._long(self.case.last.tape.run_up(mend.start))
        return (
            f"{what} puts it right: {ready} of pulses in phase come before it. "
            "All of the film from there on is laid again."
        )

    def on_another_tape(self) -> str:
        if least(self.case):
            return (
                "On another tape all of the film would play too, but it lays again what is "
                "not wrong."
            )
        return (
            "Whatever is laid where the edit master is worn drops out again; "
            "laid on another tape, the film does not."
        )

    def _span(self, start: int, end: int) -> str:
        return f"{span(start, end, self.case.bench)} ({length(end - start, self.rate)})"

    def _code(self, frame: int) -> str:
        return code(frame, self.case.bench)

    def _long(self, frames: int) -> str:
        return length(frames, self.rate)

    def _well(self) -> Iterator[str]:
        last = self.case.last
        yield f"The film plays as it was meant, {self._span(last.start, last.end)}."
        if last.tape.control.at(last.end) is None:
            yield f"What is seen after {self._code(last.end)} comes after the film: no fault."

    def _seen(self, state: FilmSoFar, stretch: FaultyStretch) -> str:
        where = begun(self._span(stretch.start, stretch.end))
        match stretch.fault:
            case FilmFault.NO_PULSES:
                pieces = unpulsed(state.tape, stretch.start, stretch.end)
                if any(piece.recorded for piece in pieces):
                    return f"{where} there are no pulses: nothing locks to what is recorded there."
                return f"{where} the tape is blank: there is snow, or it is muted."
            case FilmFault.ROLL:
                return f"{where} the pulses have only just begun anew: the picture rolls."
            case FilmFault.BLANK:
                return f"{where} there are pulses, but no {listed(blank(state.tape, stretch))}."
            case FilmFault.UNSETTLED:
                tracks = unsettled(state.tape, stretch)
                return f"{where} the {listed(tracks)} {_was(tracks)} not steady when copied."
        if stretch.fault is FilmFault.WORN:
            return f"{where} the {listed(stretch.tracks)} drops out for moments."
        return f"{where} the {listed(stretch.tracks)} that was to stay is recorded over."


def blank(tape: Tape, stretch: FaultyStretch) -> list[Side]:
    """Which tracks hold nothing where the stretch begins."""
    return [track for track in SIDES if tape.on(track).at(stretch.start) is None]


def unsettled(tape: Tape, stretch: FaultyStretch) -> list[Side]:
    """Which tracks hold an unsettled copy where the stretch begins."""
    runs = {track: tape.on(track).at(stretch.start) for track in SIDES}
    return [track for track, run in runs.items() if run and not run.value.settled]


def _was(tracks: list[Side]) -> str:
    return "was" if len(tracks) == 1 else "were"
