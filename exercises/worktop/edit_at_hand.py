"""The edit that the marks and controls come to, and what keeps a machine from making it."""

from typing import NamedTuple

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code, length
from exercises.tape import SoundMode
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.done import BenchRefused
from exercises.worktop.practical import MASTER
from exercises.worktop.worktop import STEP_TRACKING, Worktop


class MachineSign(NamedTuple):
    """What a machine shows that would not, and why."""

    sign: str
    sentence: str


def edit_at_hand(top: Worktop, *, lasting: int | None = None) -> Json:
    """As a session document has it; `lasting` stands in for a source out.

    Raises BenchRefused for what is missing, or lies off a tape.
    """
    tape, marks, bench = top.source, top.marks, top.set_up.bench
    if tape is None:
        raise BenchRefused("There is no source tape in the player.")
    if top.recorder.tape is None:
        raise BenchRefused("There is no cassette in the recorder.")
    if marks.source_in is None:
        raise BenchRefused("Source in is not marked.")
    if marks.master_in is None:
        raise BenchRefused("Master in is not marked.")
    out = marks.source_out if lasting is None else marks.source_in + lasting
    if out is None:
        raise BenchRefused("Source out is not marked, so there is no end to rehearse to.")
    end = marks.master_in + out - marks.source_in
    if end > top.set_up.master_length:
        ends = code(top.set_up.master_length, bench)
        raise BenchRefused(f"The edit master ends at {ends}: so much does not fit on it.")
    if out > tape.length:
        raise BenchRefused(f"{tape.name} ends at {code(tape.length, bench)}, before that.")
    place = {"source": tape.name, "in": marks.source_in, "out": out, "at": marks.master_in}
    return mode_of(top) | place | made_by(top, marks.source_in)


def mode_of(top: Worktop) -> Json:
    recorder = top.recorder
    if recorder.mode == "assemble":
        return {"mode": "assemble"}
    return {"mode": "insert", "picture": recorder.picture, "sound": recorder.sound}


def made_by(top: Worktop, in_: int) -> Json:
    """How the two machines stand, where that is not as a well-adjusted bench does."""
    recorder, tape = top.recorder, top.source
    assert tape is not None  # noqa: S101 - edit_at_hand has looked
    made: Json = {}
    player = Adjusted(top.player, tape, top.set_up.bench.rate).as_made(in_)
    if any(player.values()):
        made["player"] = player
    if recorder.tracking:
        made["recorder"] = {"tracking": STEP_TRACKING * recorder.tracking}
    if recorder.picture_gain is not None:
        made["picture_level"] = {"gain": recorder.picture_gain}
    if recorder.sound_gain or recorder.sound_mode != SoundMode.BY_HAND:
        made["sound_level"] = {"mode": recorder.sound_mode, "gain": recorder.sound_gain}
    return made


def refused_by_machine(top: Worktop) -> MachineSign | None:
    """Where the recorder or the player would not go on, whatever is pressed."""
    name, tape, first = top.recorder.tape, top.source, top.marks.source_in
    if name not in (None, MASTER):
        return MachineSign(
            "no record", f"{name} is protected: its tab is out, and the recorder will not record."
        )
    if tape and first is not None and tape.take_at(first) is None:
        at = code(first, top.set_up.bench)
        return MachineSign(
            "no lock", f"There is no recording on {tape.name} at {at}: the player never locked."
        )
    return None


def pre_rolled(top: Worktop, edit: Json) -> tuple[int, int]:
    """Where player and recorder begin to run: a tape can't be wound back beyond its beginning."""
    pre_roll = top.set_up.pre_roll
    return max(0, edit["in"] - pre_roll), max(0, edit["at"] - pre_roll)


def lamps(top: Worktop, edit: Json) -> str:
    """When the servo lamps came on, against the edit in."""
    bench = top.set_up.bench
    run_ups = {
        "player": top.set_up.session.sources[edit["source"]].run_up(edit["in"]),
        "recorder": top.master.run_up(edit["at"]),
    }
    late = {name: bench.lock - frames for name, frames in run_ups.items() if frames < bench.lock}
    if not late:
        return "Both servo lamps were lit before the edit in."
    told = (f"the {name}’s {length(by, bench.rate)} after the edit in" for name, by in late.items())
    return f"A servo lamp came on late: {' and '.join(told)}."
