from exercises.tape import Laid, Pulses, Run, Tape
from exercises.tape.by_hand import in_phase, with_runs

BLACK = Tape.blank(900).with_pass(100, 400, "black").with_pass(500, 800, "leader")


def laid(source: str, frame: int) -> Laid:
    return Laid(source, frame, 1, settled=True)


def test_stretch_is_cut_at_both_ends() -> None:
    assert BLACK.picture.within(300, 600) == [
        Run(300, 400, laid("black", 200)),
        Run(500, 600, laid("leader", 0)),
    ]


def test_stretch_of_blank_tape_is_empty() -> None:
    assert BLACK.picture.within(400, 500) == []


def test_runs_replace_what_a_track_holds_there_and_no_more() -> None:
    tape = with_runs(BLACK, ("sound",), 200, 600, [Run(250, 300, laid("Tape 1", 7))])

    assert tape.sound.runs == (
        Run(100, 200, laid("black", 0)),
        Run(250, 300, laid("Tape 1", 7)),
        Run(600, 800, laid("leader", 100)),
    )
    assert (tape.picture, tape.control) == (BLACK.picture, BLACK.control)


def test_pulses_are_in_phase_where_asked() -> None:
    tape = in_phase(BLACK, 50, 600)

    assert tape.control.runs == (Run(50, 600, Pulses()), Run(600, 800, Pulses()))
