from collections import Counter
from typing import Any

import pytest

from exercises.drills.asks import Json
from exercises.drills.kind import slug_of
from exercises.drills.kinds.spot_the_bad_edit import KIND as SPOT_DESCRIBED
from exercises.drills.kinds.spot_the_bad_edit.situations import FAULTY, PLAYED_OFF, WELL
from exercises.drills.kinds.spot_the_bad_edit.work import EditsWork
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import USUAL
from exercises.tape import simulate
from tests.exercises.drills.frames import Machines, threaded
from tests.exercises.drills.made import many
from tests.exercises.drills.skeletons import skeleton

MANY = 400
WORST_FIRST = ("no-pulses", "roll", "blank", "unsettled", "over", "worn")


def asked(count: int = MANY) -> list[Question]:
    return many(SPOT_DESCRIBED, count)


def film(key: Json, steps: int) -> tuple[int, int]:
    """From the first edit to the end of the last, after so many of them."""
    made = key["steps"][:steps]
    return min(s["at"] for s in made), max(s["at"] + s["out"] - s["in"] for s in made)


def meant(key: Json, steps: int, track: str) -> dict[int, tuple[str, int]]:
    """What should lie on a track of the film, by master frame, after so many edits."""
    laid: dict[int, tuple[str, int]] = {}
    for step in key["steps"][:steps]:
        if track in step["tracks"]:
            for n in range(step["out"] - step["in"]):
                laid[step["at"] + n] = (step["source"], step["in"] + n)
    return laid


def noticed(key: Json, machines: Machines, steps: int) -> dict[int, str]:
    """The worst thing wrong with each frame of the film, on machines of the test's own."""
    start, end = film(key, steps)
    steady = machines.steady()
    found: dict[int, str] = {}
    for track in ("picture", "sound"):
        laid, copies = meant(key, steps, track), getattr(machines, track)
        for frame in range(start, end):
            copy, wanted = copies[frame], laid.get(frame)
            trouble = None
            if not machines.control[frame]:
                trouble = "no-pulses"
            elif not steady[frame]:
                trouble = "roll"
            elif wanted and not copy:
                trouble = "blank"
            elif wanted and not copy[2]:
                trouble = "unsettled"
            elif wanted and copy[:2] != wanted:
                trouble = "over"
            elif copy and any(is_worn(wear, track, frame, *copy[:2]) for wear in key["worn"]):
                trouble = "worn"
            if trouble:
                found[frame] = min(found.get(frame, trouble), trouble, key=WORST_FIRST.index)
    return found


def is_worn(wear: Json, track: str, at: int, source: str, frame: int) -> bool:
    """Whether a worn place of the edit master lies at a frame, or one of the source in it."""
    place = frame if wear["tape"] else at
    on_tape = wear["tape"] in ("", source) and track in wear["tracks"]
    return on_tape and bool(wear["start"] <= place < wear["end"])


def judged(key: Json) -> tuple[str, str]:
    """The fault and the edit, for an independent judge."""
    edits = key["session"]["edits"]
    shown = [
        noticed(key, threaded(key["session"], edits[:count]), count)
        for count in range(1, len(edits) + 1)
    ]
    if not shown[-1]:
        return "nothing", "nothing"
    if set(shown[-1].values()) == {"worn"}:
        return "worn", "tape"
    first = {
        next(i for i in range(len(shown)) if all(frame in later for later in shown[i:]))
        for frame in shown[-1]
    }
    assert len(first) == 1
    return min(shown[-1].values(), key=WORST_FIRST.index), str(first.pop() + 1)


def test_fault_and_edit_are_right_for_an_independent_judge() -> None:
    for seed, question in enumerate(asked(20)):
        right = (question.right["fault"], question.right["edit"])

        assert judged(question.key) == right, seed


def states(document: Json) -> list[Json]:
    """The states that the session's answer lists."""
    found: Any = simulate(document)["states"]
    return list(found)


def test_blame_agrees_with_what_playback_names() -> None:
    """Playback names the edit that recorded there; pulses that are missing nobody recorded."""
    for question in asked(80):
        key = question.key
        start, end = film(key, len(key["steps"]))
        named = {
            str(state["edit"] + 1)
            for state in states(key["session"])
            if state["state"] not in ("clean", "no-control", "no-picture")
            and state["edit"] is not None
            and state["end"] > start
            and state["start"] < end
        }

        if question.right["fault"] in ("roll", "unsettled") and named:
            assert named == {question.right["edit"]}


def test_every_situation_is_reached() -> None:
    assert {question.situation for question in asked()} == {
        slug_of(each.__name__) for each in (*WELL, *PLAYED_OFF, *FAULTY)
    }
    assert len(FAULTY) >= 10


def test_nothing_is_wrong_with_about_one_in_six() -> None:
    well = sum(question.right["fault"] == "nothing" for question in asked())

    assert 0.12 * MANY < well < 0.22 * MANY


def test_session_goes_as_its_situation_says() -> None:
    """Not used for the answer: only that what was built as faulty is found so, and the reverse."""
    going_well = {slug_of(each.__name__) for each in (*WELL, *PLAYED_OFF)}

    for question in asked():
        well = question.right["fault"] == "nothing"
        assert well == (question.situation in going_well)


@pytest.mark.parametrize("ask", ["fault", "edit", "mend"])
def test_no_answer_is_right_in_more_than_two_of_five(ask: str) -> None:
    counts = Counter(question.right[ask] for question in asked())

    assert max(counts.values()) <= 0.4 * MANY


def test_every_fault_and_every_mend_occurs() -> None:
    faults = {question.right["fault"] for question in asked()}
    mends = {question.right["mend"] for question in asked()}

    assert faults == {*WORST_FIRST, "nothing"}
    recordings = {"insert-picture", "insert-sound", "insert-both", "assemble"}
    assert mends == {"leave", "tracking", "another-tape", *recordings}


def test_situation_has_several_wordings() -> None:
    for situation in (*WELL, *PLAYED_OFF, *FAULTY):
        found = set()
        for seed in range(30):
            work = EditsWork(Scene(Draw(seed), USUAL))
            situation(work)
            purposes = " ".join(job.purpose for job in work.jobs)
            found.add(skeleton(f"{opening(work.scene)} {work.story} {purposes}"))

        assert len(found) >= 4, situation


CAUSES = ("fault", "wrong", "pulse", "phase", "wiped", "settled", "recorded over", "mend", " hole")


def test_description_names_no_cause() -> None:
    for question in asked(80):
        rows = " ".join(text for row in question.shown["rows"] for text in row)
        plan = " ".join(text for edit in question.shown["edits"] for text in edit.values())
        words = f"{question.shown['story']} {question.shown['film']} {rows} {plan}".lower()

        assert [cause for cause in CAUSES if cause in words] == []


def test_description_covers_the_film_and_what_comes_before_and_after() -> None:
    for question in asked(100):
        start, end = film(question.key, len(question.key["steps"]))
        first, last = question.key["window"]

        assert first < start
        assert last > end


def test_description_reads_as_what_is_seen_and_heard() -> None:
    question = next(each for each in asked() if each.situation == "late-assemble")
    wrong = [row for row in question.shown["rows"] if row[3] != "Servo locked"]

    assert wrong[0][1:] == ["snow", "hiss", "Servo not locked, counter standing still"]
    assert wrong[1][1].endswith(", rolling")
    assert wrong[1][2].endswith(", wavering")
    assert wrong[1][3] == "Servo not locked"
