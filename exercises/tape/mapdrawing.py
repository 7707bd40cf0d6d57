"""What a tape map shows: the runs of each track, and the faults beneath them."""

from collections.abc import Iterator, Mapping

from exercises.tape.bench import Bench
from exercises.tape.mapparts import FaultMark, Segment
from exercises.tape.mapwindow import Window
from exercises.tape.playback import Condition, play
from exercises.tape.tape import Tape
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


def copies(track: Track[Laid], window: Window, names: Mapping[str, str]) -> Iterator[Segment]:
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


def pulses(track: Track[Pulses], window: Window) -> Iterator[Segment]:
    reached = None
    for run in track.laid:
        if window.shows(run.start, run.end):
            jump = run.start == reached and run.start >= window.start
            yield Segment(**window.place(run.start, run.end), label="pulses", jump=jump)
        reached = run.end


def faults(tape: Tape, bench: Bench, window: Window) -> Iterator[FaultMark]:
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
