"""Tone is laid at line-up, within 1 dB (common practice): later levels are set by it."""

from collections.abc import Iterator

import pytest

from exercises.drills.setting.settings import USUAL
from exercises.worktop.debrief import Debrief, debrief
from exercises.worktop.laying_out import lay_out
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.debrief.three_shots import kinds, lost
from tests.exercises.worktop.hands import Taken, by_the_plan

LINE_UP = lay_out(practicals()["line-up"], USUAL)


def tone_laid(off: int) -> Debrief:
    """The tone so many 0.1 dB off line-up, all the rest well."""

    def actions() -> Iterator[Taken]:
        first = True
        for name, arguments in by_the_plan(LINE_UP):
            if name == "sound-level" and first:
                yield name, {**arguments, "gain": arguments["gain"] + off}
                first = False
            else:
                yield name, arguments

    return debrief(LINE_UP, actions())


def test_tone_that_is_far_too_low_is_the_fault_of_the_edit_that_laid_it() -> None:
    found = tone_laid(-70)

    assert kinds(found) == [("sound-level", [1])]
    assert "it laid tone 7 dB under line-up" in found.mistakes[0]["cause"]
    assert found.mistakes[0]["prevented"]["text"].startswith("Line up on tone")
    assert lost(found) == ["faults", "levels"]


@pytest.mark.parametrize(("off", "lines"), [(-20, ["levels"]), (20, ["levels"]), (10, []), (0, [])])
def test_tone_that_nobody_hears_to_be_off_is_told_of_beyond_1_db(
    off: int, lines: list[str]
) -> None:
    found = tone_laid(off)

    assert (kinds(found), lost(found)) == ([], lines)
    evidence = {line["slug"]: line["evidence"] for line in found.rubric}["levels"]
    assert ("line-up" in evidence) is bool(lines)
