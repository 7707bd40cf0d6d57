"""The tape map: three tracks over time, faults marked beneath, ready to draw.

A map is made from a tape, kept with an attempt as JSON, and drawn by a template; it knows
no HTML.
"""

import json
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass
from typing import Any

from exercises.tape.bench import Bench
from exercises.tape.errors import TapeError
from exercises.tape.mapparts import FaultMark, Lane, Mark, Segment
from exercises.tape.playback import Condition, play
from exercises.tape.rate import Rate
from exercises.tape.ruler import ticks
from exercises.tape.tape import Tape
from exercises.tape.timecode import label
from exercises.tape.track import Laid, Pulses, Track

# What a stretch is called on the map, and what it means for who watches.
FAULTS = {
    Condition.NO_CONTROL: ("no pulses", "no pulses: nothing plays"),
    Condition.RELOCK: ("rolls", "the pulses have only just begun: the picture rolls"),
    Condition.NO_PICTURE: ("no picture", "no picture on the tape"),
    Condition.UNSETTLED: ("unsettled", "copied while a machine was not locked: unsteady picture"),
    Condition.NO_SOUND: ("no sound", "no sound on the tape"),
    Condition.UNSETTLED_SOUND: (
        "unsettled sound",
        "copied while a machine was not locked: unsteady sound",
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class TapeMap:
    """A window ``[start, end)`` of a tape. ``faults`` is None where they are not to be shown."""

    start: int
    end: int
    starts: str
    ends: str
    lanes: tuple[Lane, ...]
    faults: tuple[FaultMark, ...] | None
    ticks: tuple[Mark, ...]
    marks: tuple[Mark, ...]

    def described(self) -> tuple[str, ...]:
        """The map in a few sentences, for who can't see it; nothing the drawing doesn't show."""
        return (
            f"The tape from {self.starts} to {self.ends}.",
            *(f"{_begun(mark.name)} at {mark.at}." for mark in self.marks),
            *(lane.described() for lane in self.lanes),
            *self._faults_described(),
        )

    def _faults_described(self) -> Iterator[str]:
        if self.faults is None:
            return
        if not self.faults:
            yield "All of it plays cleanly."
        for fault in self.faults:
            yield f"From {fault.starts} to {fault.ends}, {fault.sentence}."

    def as_json(self) -> dict[str, Any]:
        kept: dict[str, Any] = json.loads(json.dumps(asdict(self)))
        return kept

    @classmethod
    def from_json(cls, kept: Mapping[str, Any]) -> "TapeMap":
        faults = kept["faults"]
        return cls(
            start=kept["start"],
            end=kept["end"],
            starts=kept["starts"],
            ends=kept["ends"],
            lanes=tuple(Lane.from_json(lane) for lane in kept["lanes"]),
            faults=None if faults is None else tuple(FaultMark(**fault) for fault in faults),
            ticks=tuple(Mark(**tick) for tick in kept["ticks"]),
            marks=tuple(Mark(**mark) for mark in kept["marks"]),
        )


def tape_map(
    tape: Tape,
    bench: Bench,
    *,
    start: int = 0,
    end: int | None = None,
    names: Mapping[str, str] | None = None,
    marks: Mapping[str, int] | None = None,
    faults: bool = True,
) -> TapeMap:
    """The map of ``[start, end)`` of a tape: of all of it, if not told.

    ``names`` says what to call a source on the map, ``marks`` which frames have a name;
    those outside the window are left out. A map for a question, which must not give the
    answer away, is made with ``faults=False``.
    """
    end = tape.length if end is None else end
    if not 0 <= start < end <= tape.length:
        raise TapeError(f"A window from {start} to {end} does not lie on a tape of {tape.length}.")
    window = _Window(start, end, bench.rate)
    named = names or {}
    return TapeMap(
        start=start,
        end=end,
        starts=window.code(start),
        ends=window.code(end),
        lanes=(
            Lane("picture", tuple(_copies(tape.picture, window, named))),
            Lane("sound", tuple(_copies(tape.sound, window, named))),
            Lane("control", tuple(_pulses(tape.control, window))),
        ),
        faults=tuple(_faults(tape, bench, window)) if faults else None,
        ticks=tuple(window.mark(at, window.code(at)) for at in ticks(start, end, bench.rate)),
        marks=tuple(
            window.mark(at, name) for name, at in (marks or {}).items() if start <= at <= end
        ),
    )


@dataclass(frozen=True, slots=True)
class _Window:
    start: int
    end: int
    rate: Rate

    def percent(self, frames: int) -> float:
        return round(100 * frames / (self.end - self.start), 3)

    def code(self, frame: int) -> str:
        """Time code of a frame; the clock begins again after a day."""
        return label(frame % self.rate.day(), self.rate)

    def mark(self, frame: int, name: str) -> Mark:
        left = self.percent(frame - self.start)
        return Mark(left=left, frame=frame, at=self.code(frame), name=name)

    def shows(self, start: int, end: int) -> bool:
        return start < self.end and end > self.start

    def place(self, start: int, end: int) -> dict[str, Any]:
        """Where a range lies in the window, as the parts of a map say it."""
        start, end = max(start, self.start), min(end, self.end)
        return {
            "left": self.percent(start - self.start),
            "width": self.percent(end - start),
            "start": start,
            "end": end,
            "starts": self.code(start),
            "ends": self.code(end),
        }


def _copies(track: Track[Laid], window: _Window, names: Mapping[str, str]) -> Iterator[Segment]:
    for run in track.laid:
        if window.shows(run.start, run.end):
            laid = run.tail(window.start).value
            yield Segment(
                **window.place(run.start, run.end),
                label=names.get(laid.source, laid.source),
                source=laid.source,
                frame=laid.frame,
                source_at=window.code(laid.frame),
                generation=laid.generation,
                settled=laid.settled,
            )


def _pulses(track: Track[Pulses], window: _Window) -> Iterator[Segment]:
    reached = None
    for run in track.laid:
        if window.shows(run.start, run.end):
            jump = run.start == reached and run.start >= window.start
            yield Segment(**window.place(run.start, run.end), label="pulses", jump=jump)
        reached = run.end


def _faults(tape: Tape, bench: Bench, window: _Window) -> Iterator[FaultMark]:
    for start, end, state, edit in play(tape, bench):
        if state is Condition.CLEAN or not window.shows(start, end):
            continue
        short, sentence = FAULTS[state]
        yield FaultMark(
            **window.place(start, end),
            state=state.value,
            edit=edit,
            label=short,
            sentence=sentence if edit is None else f"{sentence} (edit {edit + 1})",
        )


def _begun(name: str) -> str:
    """A name as a sentence begins with it."""
    return name[:1].upper() + name[1:]
