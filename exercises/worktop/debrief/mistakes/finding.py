"""One thing that the judge found: a difference, an unclean state, or a fault."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import begun
from exercises.tape import Condition, Difference, PlaybackState, Tape, unpulsed
from exercises.tape.explaining.differing import differing
from exercises.tape.faults.blame import blamed
from exercises.tape.faults.wording import sentence
from exercises.tape.map.drawing import BLANK, FAULTS, UNPULSED
from exercises.tape.tape import TrackName
from exercises.worktop.debrief.edges import on_the_sheet, told_place
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.wording import place

TRACK_OF: dict[Condition, TrackName] = {
    Condition.NO_CONTROL: "control",
    Condition.RELOCK: "control",
    Condition.NO_PICTURE: "picture",
    Condition.UNSETTLED: "picture",
    Condition.NO_SOUND: "sound",
    Condition.UNSETTLED_SOUND: "sound",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """`edit` is an index in the session, as the tape model gives it; `told` a sentence."""

    sort: Literal["difference", "state", "fault"]
    kind: str
    track: TrackName
    start: int
    end: int
    edit: int | None
    told: str
    shot: int | None = None

    def as_json(self, run: Proceedings) -> Json:
        told = {name: getattr(self, name) for name in ("sort", "kind", "track", "told")}
        return {**told, **self.place(run)}

    def place(self, run: Proceedings) -> Json:
        if self.sort == "fault":
            return place(self.start, self.end, run.bench)
        return told_place(self.start, self.end, run)


def findings(run: Proceedings) -> Iterator[Finding]:
    judgement = run.judgement
    for each in judgement.differences:
        yield Finding(
            sort="difference",
            kind=each.kind,
            track=each.track,
            start=each.start,
            end=each.end,
            edit=each.edit,
            told=differing(_on_the_sheet(each, run), run.brief, run.bench),
            shot=each.shot,
        )
    for state in judgement.states:
        yield from _of_state(state, run)
    for fault in judgement.faults:
        yield Finding(
            sort="fault",
            kind=fault.kind,
            track=fault.track,
            start=fault.start,
            end=fault.end,
            edit=fault.edit,
            told=f"{begun(sentence(fault))}.",
        )


def _on_the_sheet(found: Difference, run: Proceedings) -> Difference:
    start, end = on_the_sheet(found.start, found.end, run)
    return replace(found, start=start, end=end)


def _of_state(state: PlaybackState, run: Proceedings) -> Iterator[Finding]:
    for start, end, told in _pieces(state, run.top.master):
        yield Finding(
            sort="state",
            kind=state.state,
            track=TRACK_OF[state.state],
            start=start,
            end=end,
            edit=state.edit,
            told=f"{begun(told)}.",
        )


def _pieces(state: PlaybackState, master: Tape) -> Iterator[tuple[int, int, str]]:
    """Without pulses, blank tape is one thing, and what each edit recorded there another."""
    if state.state is not Condition.NO_CONTROL:
        yield state.start, state.end, FAULTS[state.state][1]
        return
    for start, end, recorded in unpulsed(master, state.start, state.end):
        if not recorded:
            yield start, end, BLANK[1]
            continue
        for first, stop, _ in blamed(master.picture, start, end):
            yield from ((*piece[:2], UNPULSED[1]) for piece in blamed(master.sound, first, stop))
