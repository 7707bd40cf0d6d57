"""Shot logs read again, frame by frame; bad input; partial credit."""

import pytest

from exercises.drills.asks import AnswerRefused, Json
from exercises.drills.kind import slug_of
from exercises.drills.kinds.enough_run_up import KIND as ENOUGH_RUN_UP
from exercises.drills.kinds.enough_run_up.situations import SITUATIONS
from exercises.drills.question import Question
from exercises.tape import Rate, frame_of
from tests.believers import believed
from tests.exercises.drills.frames import threaded
from tests.exercises.drills.made import many


def asked(count: int = 200) -> list[Question]:
    return many(ENOUGH_RUN_UP, count)


def test_shots_are_those_that_frame_by_frame_machines_spoil() -> None:
    for seed, question in enumerate(asked(60)):
        assert question.right["shots"] == spoilt(question.key["session"]), seed


def spoilt(document: Json) -> list[str]:
    """A shot that can be edited is there to its last frame and settled from its first."""
    machines = threaded(document)
    found = []
    listed = sorted(document["edits"], key=lambda edit: (edit["source"], edit["in"]))
    for number, edit in enumerate(listed, 1):
        frames = range(edit["at"], edit["at"] + edit["out"] - edit["in"])
        copies = [machines.picture[frame] for frame in frames]
        if not all(copy and copy[2] for copy in copies):
            found.append(str(number))
    return found


def test_earliest_edit_in_is_five_seconds_into_the_take() -> None:
    """Read from the log as it is shown; five seconds: common practice."""
    for seed, question in enumerate(asked(60)):
        rate = next(rate for rate in Rate if rate.label == question.key["session"]["rate"])
        row = question.shown["rows"][question.key["asked"]]
        earliest = frame_of(row["take"][0], rate) + 5 * rate.nominal

        assert question.right["earliest"] == earliest, seed


def test_every_situation_occurs() -> None:
    assert {question.situation for question in asked()} == {
        slug_of(each.__name__) for each in SITUATIONS
    }


def test_reason_stands_beside_every_shot() -> None:
    for question in asked():
        bad = {
            str(number)
            for number, why in enumerate(question.key["told"]["why"], 1)
            if not why.startswith("It can")
        }

        assert bad == set(question.right["shots"])


def test_no_shot_of_the_log_is_right_more_often_than_others() -> None:
    logs = [q for q in asked(900) if len(q.shown["rows"]) == 6]
    shares = [
        sum(str(number) in q.right["shots"] for q in logs) / len(logs) for number in range(1, 7)
    ]

    assert max(shares) - min(shares) < 0.15


def test_some_takes_end_early() -> None:
    early = ["before the edit out" in " ".join(q.key["told"]["why"]) for q in asked()]

    assert 20 < sum(early) < 180


@pytest.mark.parametrize(
    ("shots", "score"),
    [
        (lambda bad, good: bad, 100),
        (lambda bad, good: bad[:1], 50 + round(50 / 3)),
        (lambda bad, good: bad + good[:1], 50 + round(100 / 3)),
        (lambda bad, good: good, 50),
        (lambda bad, good: ["none"], 50),
    ],
)
def test_wrong_ticks_take_from_right_ones(shots, score: int) -> None:  # type: ignore[no-untyped-def]
    question = next(q for q in asked() if len(q.right["shots"]) == 3)
    bad = question.right["shots"]
    good = [str(n) for n in range(1, len(question.shown["rows"]) + 1) if str(n) not in bad]
    verdict = ENOUGH_RUN_UP.grade(question, dict(question.right) | {"shots": shots(bad, good)})

    assert (verdict.right, verdict.score) == (score == 100, score)


@pytest.mark.parametrize(
    ("name", "typed", "sentence"),
    [
        ("shots", [], "Tick at least one. Nothing has been recorded yet."),
        ("shots", ["1", "none"], "Tick either “None: all of them can” or others, not both."),
        ("shots", ["99"], "That is not one of the answers. Choose one of those below."),
        ("shots", ["x" * 10_000], "That is not one of the answers. Choose one of those below."),
        ("earliest", [""], "Give a time code. Nothing has been recorded yet."),
        ("earliest", ["00:00:61:00"], "00:00:61:00 does not exist: the last label is"),
        ("earliest", ["5 s"], "'5 s' is not time code: write HH:MM:SS:FF."),
        ("earliest", ["x" * 10_000], "'xxxxx"),
    ],
)
def test_bad_answer_is_refused_with_a_sentence(name: str, typed: list[str], sentence: str) -> None:
    ask = next(ask for ask in asked()[0].asks if ask.name == name)

    with pytest.raises(AnswerRefused) as refusal:
        ask.read(typed)

    assert str(refusal.value).startswith(sentence)
    assert len(str(refusal.value)) < 120


def test_shot_ticked_twice_counts_once() -> None:
    ask = asked()[0].asks[0]

    assert ask.read(["2", "1", "2"]) == ["1", "2"]


def logs_with(belief: str) -> list[Question]:
    return [each for each in asked() if [belief] in [held for held, _ in each.believed]]


def test_take_right_before_another_gives_it_nothing() -> None:
    """A believer ticks fewer shots than there are, or begins too early."""
    for question in logs_with("touching-takes-share-pulses"):
        answer = believed(question, {"touching-takes-share-pulses"})

        assert set(answer["shots"]) - {"none"} <= set(question.right["shots"])
        assert answer["earliest"] <= question.right["earliest"]
        assert any(row["touches"] for row in question.shown["rows"])


def test_take_before_is_no_cue() -> None:
    """A shot whose take touches another is no more often bad than the others of its log."""
    logs = [q for q in asked(1200) if any(r["touches"] for r in q.shown["rows"])]
    bad: dict[bool, list[bool]] = {True: [], False: []}
    for question in logs:
        for row in question.shown["rows"]:
            bad[bool(row["touches"])].append(str(row["number"]) in question.right["shots"])
    shares = [sum(found) / len(found) for found in bad.values()]

    assert abs(shares[0] - shares[1]) < 0.1


def test_longer_pre_roll_is_told_and_changes_nothing() -> None:
    for question in logs_with("pre-roll-makes-run-up"):
        assert "the pre-roll is set to" in question.shown["bench"]


def test_take_may_end_with_its_shot() -> None:
    """Whoever wants the frame at the edit out as well finds no room for it."""
    for question in logs_with("out-is-last-frame"):
        more = set(believed(question, {"out-is-last-frame"})["shots"]) - set(
            question.right["shots"]
        )

        assert more
        assert all("It can" in question.key["told"]["why"][int(number) - 1] for number in more)


def test_black_counts_as_run_up() -> None:
    assert {each.situation for each in logs_with("black-is-blank")} == {"on-a-prepared-tape"}
