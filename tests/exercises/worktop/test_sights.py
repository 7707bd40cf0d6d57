"""What the monitors of a bench show, in words that can be true of a picture."""

import re

from exercises.drills.media.described import picture_in_words
from exercises.drills.setting.settings import USUAL
from exercises.signal.picture.seeing import Seeing
from exercises.worktop.laying_out import lay_out
from exercises.worktop.played import run
from exercises.worktop.practical import Practical
from exercises.worktop.shelf import practicals
from exercises.worktop.sights import master_picture, player_shows
from exercises.worktop.worktop import Worktop
from tests.exercises.worktop.benches import EACH

GRAIN = re.compile(r"The grain lies (\w+) dB under the picture")
ASIDE = re.compile(r"lies (\d+) pixels of (\d+) to")


def told_of_sources(practical: Practical) -> list[str]:
    """Each take from its first frame, where nothing has locked, to a second behind."""
    set_up = lay_out(practical, USUAL)
    top = Worktop.at_first(set_up)
    stands = [
        top.with_player(tape=tape.name, at=take.start + frame)
        for tape in set_up.tapes
        for take in tape.takes
        for frame in range(0, 26, 5)
    ]
    return [*(player_shows(each).words[0] for each in stands), *told_of_a_run(stands[0])]


def told_of_a_run(top: Worktop) -> tuple[str, ...]:
    picture, _ = run(top, "player", top.with_player(at=top.player.at + 25))
    return picture.words


@EACH
def test_grain_is_that_of_one_recording(practical: Practical) -> None:
    """46 dB is what a bench's recorder makes of it, where nobody says otherwise (`Bench`)."""
    grains = {grain for told in told_of_sources(practical) for grain in GRAIN.findall(told)}

    assert grains == {"46"}


@EACH
def test_nothing_stands_further_aside_than_the_picture_is_wide(practical: Practical) -> None:
    for told in told_of_sources(practical):
        assert all(int(by) < int(width) for by, width in ASIDE.findall(told)), told


def test_black_along_a_master_has_the_grain_of_a_recording() -> None:
    set_up = lay_out(practicals()["three-shots"], USUAL)
    seeing = Seeing(set_up.master, set_up.bench)

    assert GRAIN.findall(picture_in_words(master_picture(set_up, seeing, 500))) == ["46"]
