"""What the guide says of black, which has nothing to see and no levels to set."""

from exercises.drills.setting.settings import Settings
from exercises.worktop.guide import GuidedStep, guided
from exercises.worktop.laying_out import lay_out
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.benches import AT_USUAL


def first_edit(settings: Settings) -> list[GuidedStep]:
    steps = [step for step, _ in guided(lay_out(practicals()["leader"], settings))]
    return steps[: [step.name for step in steps].index("record") + 1]


@AT_USUAL
def test_the_leader_begins_at_the_beginning_of_the_tape(settings: Settings) -> None:
    set_up = lay_out(practicals()["leader"], settings)
    marked = {step.arguments["which"]: step for step in first_edit(settings) if step.name == "mark"}

    assert marked["master_in"].arguments["at"] == set_up.sheet[0].master_in == 0
    assert marked["source_in"].arguments["at"] == set_up.sheet[0].source_in
    assert "shot" not in " ".join(step.why for step in marked.values())
    assert "from the beginning of the tape" in first_edit(settings)[-1].why


@AT_USUAL
def test_nobody_is_asked_to_set_a_level_by_black(settings: Settings) -> None:
    asked = {step.name for step in first_edit(settings)}

    assert not asked & {"play", "picture-level", "sound-level"}
