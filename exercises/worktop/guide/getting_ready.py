"""Before an edit: cassettes, the player on the take, levels."""

from collections.abc import Iterator

from exercises.drills.setting.phrases import code
from exercises.tape import SoundMode
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.guide.step import GuidedStep
from exercises.worktop.practical import MASTER
from exercises.worktop.shelf_tape import LoggedTake, ShelfTape
from exercises.worktop.worktop import STEP_SKEW, STEP_TRACKING, Worktop

NEAR = 4  # percent of a track that a control may be off the best place there is
HEARD = 3  # seconds of a take in which a meter can be read


def cassettes(top: Worktop, tape: ShelfTape) -> Iterator[GuidedStep]:
    wanted = {"recorder": MASTER, "player": tape.name}
    there = {"recorder": top.recorder.tape, "player": top.player.tape}
    why = {
        "recorder": "It is the tape that the edit is made on.",
        "player": f"The next shot is on {tape.name}.",
    }
    for machine, name in wanted.items():
        if there[machine] == name:
            continue
        if there[machine]:
            yield GuidedStep(
                name="take-out",
                arguments={"machine": machine},
                what=f"Take {there[machine]} out of the {machine}.",
                why=why[machine],
                how=f"{machine.capitalize()}: Take out.",
            )
        yield GuidedStep(
            name="load",
            arguments={"machine": machine, "tape": name},
            what=f"Put {name} into the {machine}.",
            why=why[machine],
            how=f"{machine.capitalize()}: choose {name}, then Put in.",
        )


def lined_up(top: Worktop, tape: ShelfTape, in_: int) -> Iterator[GuidedStep]:
    """The controls of both machines, set on the take itself."""
    if top.recorder.tracking:
        yield GuidedStep(
            name="recorder-tracking",
            arguments={"to": 0},
            what="Put the recorder’s tracking back to its fixed position.",
            why="Only there does it lay tracks where every recording’s are.",
            how="Recorder, Tracking: 0.",
        )
    yield from tracked(top, tape, in_)
    best = round(tape.skew / STEP_SKEW)
    if top.player.skew != best:
        yield from on_the_take(top, tape, in_)
        yield GuidedStep(
            name="skew",
            arguments={"to": best},
            what=f"Set the player’s skew for {tape.name}.",
            why="Upright lines must be straight at the top of the picture.",
            how="Player, Skew: turn until the top stands over the rest.",
        )


def tracked(top: Worktop, tape: ShelfTape, in_: int) -> Iterator[GuidedStep]:
    error = Adjusted(top.player, tape, top.set_up.bench.rate).tracking_at(in_)
    if top.tracked and abs(error) <= NEAR:
        return
    yield from on_the_take(top, tape, in_)
    yield GuidedStep(
        name="tracking",
        arguments={"to": top.player.tracking - round(error / STEP_TRACKING)},
        what=f"Set the player’s tracking for {tape.name}.",
        why="It belongs where the meter is at its peak on this tape, and each tape has its own.",
        how="Player, Tracking: turn until the meter falls on either side.",
    )


def on_the_take(top: Worktop, tape: ShelfTape, to: int) -> Iterator[GuidedStep]:
    """Wind there, unless the take that the frame is of stands at the heads."""
    if tape.take_at(top.player.at) == tape.take_at(to):
        return
    yield GuidedStep(
        name="wind",
        arguments={"machine": "player", "to": to},
        what=f"Wind {tape.name} to {code(to, top.set_up.bench)}.",
        why="Controls are set on the take that is to be copied, not on blank tape.",
        how="Player: type the time, then Wind there.",
    )


def levels(top: Worktop, tape: ShelfTape, take: LoggedTake) -> Iterator[GuidedStep]:
    recorder, bench = top.recorder, top.set_up.bench
    if not top.metered:
        yield GuidedStep(
            name="play",
            arguments={"machine": "player", "frames": HEARD * bench.rate.nominal},
            what=f"Play some of {tape.name}, and read the recorder’s meters.",
            why="A level is set by what is on this tape, not by where the control was left.",
            how="Player: Play, and read what is told.",
        )
    if recorder.picture_gain is not None:
        yield GuidedStep(
            name="picture-level",
            arguments={"gain": None},
            what="Leave the picture level to the recorder.",
            why="Its automatic level brings this tape’s white to where it belongs.",
            how="Recorder, Picture level: automatic.",
        )
    if (recorder.sound_mode, recorder.sound_gain) != (SoundMode.BY_HAND, -take.sound):
        yield GuidedStep(
            name="sound-level",
            arguments={"mode": SoundMode.BY_HAND.value, "gain": -take.sound},
            what=f"Set the sound level for {tape.name}.",
            why="Played into the recorder, its sound should read 0 on the meter.",
            how="Play some of the take, read the meter, then turn Recorder, Sound level.",
        )
