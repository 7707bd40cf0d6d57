"""Rehearsing an edit, making it, looking back at it."""

from dataclasses import replace

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code, span
from exercises.worktop.actions.transport import winding
from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.edit_at_hand import edit_at_hand, lamps, pre_rolled, refused_by_machine
from exercises.worktop.worktop import EditMarks, Worktop

LONGEST_BY_HAND = 600  # seconds until somebody must have stopped a recording


def rehearse(top: Worktop) -> Done:
    """The edit run through, with nothing recorded."""
    edit = edit_at_hand(top)
    ran = replace(standing_after(top, edit), rehearsed=True)
    return Done(ran, f"Rehearsed {over(top, edit)}. {lamps(top, edit)}")


def record(top: Worktop) -> Done:
    """The edit; without a source out, until `stop`."""
    if sign := refused_by_machine(top):
        return Done(top.spending(top.set_up.bench.rate.nominal), sign.sentence, sign.sign)
    if top.marks.source_out is None:
        edit = edit_at_hand(top, lasting=1)
        running = replace(top, running=True)
        return Done(
            running, f"Recording from {code(edit['at'], top.set_up.bench)} on, until you stop it."
        )
    return recorded(top, edit_at_hand(top))


def stop(top: Worktop, *, after: int) -> Done:
    """A recording that runs, ended by hand after so many frames."""
    if not top.running:
        raise BenchRefused("Nothing is running: there is nothing to stop.")
    if not 0 < after <= LONGEST_BY_HAND * top.set_up.bench.rate.nominal:
        raise BenchRefused(f"Stop it after 1 frame to {LONGEST_BY_HAND // 60} minutes.")
    edit = edit_at_hand(top, lasting=after)
    return recorded(replace(top, running=False), edit)


def look_back(top: Worktop) -> Done:
    """The last edit on the master, played from its pre-roll on."""
    if not top.edits:
        raise BenchRefused("There is no edit yet to look back at.")
    if top.recorder.tape is None:
        raise BenchRefused("There is no cassette in the recorder.")
    edit = top.edits[-1]
    first, end = looked_at(top)
    cost = winding(top.recorder.at, first) + end - first
    ran = top.with_recorder(at=end, shows="tape").spending(cost, looked_back=True)
    return Done(ran, f"Looked back at the edit {over(top, edit)}.")


def hand_in(top: Worktop) -> Done:
    return Done(replace(top, handed_in=True), "Handed in.")


def looked_at(top: Worktop) -> tuple[int, int]:
    """What a look back at the last edit plays of the master."""
    edit, set_up = top.edits[-1], top.set_up
    end: int = edit["at"] + edit["out"] - edit["in"]
    return max(0, edit["at"] - set_up.pre_roll), min(end + set_up.post_roll, set_up.master_length)


def recorded(top: Worktop, edit: Json) -> Done:
    ran = standing_after(top, edit)
    told = f"Recorded {over(top, edit)}. {lamps(top, edit)}"
    made = replace(ran.with_edit(edit), marks=EditMarks())
    return Done(replace(made, rehearsed=False, looked_back=False), told)


def standing_after(top: Worktop, edit: Json) -> Worktop:
    """Both machines wind to their pre-roll, run through the edit, and roll on."""
    set_up = top.set_up
    frames = edit["out"] - edit["in"]
    cues = pre_rolled(top, edit)
    away = max(winding(top.player.at, cues[0]), winding(top.recorder.at, cues[1]))
    run = max(edit["in"] - cues[0], edit["at"] - cues[1]) + frames + set_up.post_roll
    source_end = set_up.by_name[edit["source"]].length
    moved = top.with_player(at=min(edit["out"] + set_up.post_roll, source_end))
    master_at = min(edit["at"] + frames + set_up.post_roll, set_up.master_length)
    return moved.with_recorder(at=master_at).spending(away + run)


def over(top: Worktop, edit: Json) -> str:
    return span(edit["at"], edit["at"] + edit["out"] - edit["in"], top.set_up.bench)
