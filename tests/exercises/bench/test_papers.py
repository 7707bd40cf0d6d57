"""The papers of a practical: the edit sheet and the shot logs, as they were written."""

from course.cohorts.models import Person
from exercises.bench.reads import edit_sheet, shot_logs
from exercises.bench.verbs import begin
from exercises.drills.setting.phrases import code
from exercises.drills.setting.settings import USUAL
from exercises.own_data.parts import PARTS
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals


def test_a_sheet_does_not_know_better_than_whoever_wrote_it() -> None:
    set_up = lay_out(practicals()["another-take"], USUAL)

    assert [row["shot"] for row in edit_sheet(set_up)] == ["3/1", "5/1", "7/1"]


def test_a_log_has_its_mistakes_on_the_page() -> None:
    set_up = lay_out(practicals()["believe-the-tape"], USUAL)
    take = set_up.by_name["Tape 3"].takes[1]
    logged = shot_logs(set_up)[0]["takes"][1]

    assert logged["action"] == code(take.action + 7 * 25, set_up.bench)
    assert logged["action"] != code(take.action, set_up.bench)


def test_a_sheet_has_the_words_that_are_wanted() -> None:
    (row,) = edit_sheet(lay_out(practicals()["another-sentence"], USUAL))

    assert row["tracks"] == "sound"
    assert row["says"] == "You take up the slack, and then you wait for high water."


def test_what_is_taken_away_does_not_say_where_a_log_is_wrong(mina: Person) -> None:
    run = begin(mina, practicals()["believe-the-tape"], Way.ALONE)
    part = next(part for part in PARTS if part.name == "practicals")

    assert "set_up" not in part.columns()
    assert [run.token] == [row[list(part.columns()).index("token")] for row in part.rows(mina)]
