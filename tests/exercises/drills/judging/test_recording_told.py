from exercises.drills.beliefs import Trial
from exercises.drills.judging.recording_told import RecordingTold
from exercises.drills.kinds.choose_the_mode.scenario import news, stays
from exercises.drills.setting.change import Change, Mode
from exercises.tape import SIDES, Assemble, Bench, Rate, Side, Source, Take, Tape, record

BENCH = Bench.default(Rate.R25)
SHOTS = Source("Tape 1", (Take(0, 6000),))
LEADER = Tape.blank(6000).with_pass(0, 500, "leader")
FILM = record(LEADER, Assemble(SHOTS, 300, 1300, 500), BENCH)


def told(
    mode: Mode,
    at: int,
    *,
    frames: int = 250,
    in_: int = 2000,
    tracks: tuple[Side, ...] = SIDES,
    mixed: tuple[int, int] | None = None,
    pushed: bool = False,
) -> list[str]:
    change = Change(source=SHOTS, in_=in_, out=in_ + frames, at=at, tracks=tracks)
    end = 1500 if pushed else 6000
    kept = stays(FILM, BENCH, change, loose=(), free_from=end, pushed=pushed)
    wants = (*news(change, mixed), *kept)
    return RecordingTold(Trial(FILM, change, mode, BENCH), wants).told()


def test_assemble_at_the_end_does_it() -> None:
    assert told(Mode.ASSEMBLE, 1500) == [
        "Assemble records picture, sound and pulses from 00:01:00:00 to 00:01:10:00.",
        "Its pulses run on in phase from those before.",
        "Past its end it wipes 2 seconds of tape, as far as 00:01:12:00.",
        "All that is wanted plays cleanly, and all that must stay is untouched.",
    ]


def test_nothing_locks_to_an_insert_at_the_end() -> None:
    assert told(Mode.INSERT_BOTH, 1500) == [
        "Insert picture and sound records picture and sound from 00:01:00:00 to 00:01:10:00.",
        "It leaves the pulses as they are.",
        "There are no pulses from 00:01:00:00 to 00:01:10:00: "
        "nothing locks to the new picture and sound there.",
    ]


def test_assemble_in_the_middle_ruins_what_follows() -> None:
    assert told(Mode.ASSEMBLE, 1000, tracks=("picture",))[2:] == [
        "Past its end it wipes 2 seconds of tape, as far as 00:00:52:00.",
        "The sound that was to stay is recorded over from 00:00:40:00 to 00:00:50:00.",
        "The picture and sound that were to stay are wiped from 00:00:50:00 to 00:00:52:00.",
        "There the old pulses go on, out of phase: "
        "the picture rolls from 00:00:52:00 to 00:00:53:00.",
    ]


def test_track_that_is_not_recorded_is_told_first() -> None:
    assert told(Mode.INSERT_SOUND, 1000)[2:] == ["The new picture is not recorded."]


def test_short_run_ups_are_told_in_frames() -> None:
    assert told(Mode.INSERT_PICTURE, 1000, in_=40, tracks=("picture",))[2:] == [
        "The new picture is unsteady from 00:00:40:00 to 00:00:43:10: of the 5 seconds of "
        "run-up before the edit in, the take has 1 second 15 frames."
    ]


def test_mix_comes_out_as_a_cut() -> None:
    assert told(Mode.ASSEMBLE, 1500, mixed=(1500, 1525))[3:] == [
        "It makes a plain cut at 00:01:00:00: one player gives one picture, "
        "and there is nothing to mix it with."
    ]


def test_nothing_moves_along() -> None:
    assert told(Mode.INSERT_BOTH, 1000, pushed=True)[2:] == [
        "Nothing moves along: what lay from 00:00:40:00 on stays where it was, "
        "and the new shot is recorded over 10 seconds of it."
    ]
