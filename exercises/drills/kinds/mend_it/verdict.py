"""How an answer to “mend it” is judged: the tape model makes the recordings."""

from collections.abc import Mapping, Sequence
from typing import Any

from exercises.drills.asks import AnswerRefused, Json, Table
from exercises.drills.beliefs import telling_apart
from exercises.drills.kind import Verdict
from exercises.drills.kinds.mend_it.repair import Repair, Rows
from exercises.drills.question import Question
from exercises.drills.setting.phrases import begun, listed, span
from exercises.tape import EditRefused, Tape, tape_map
from exercises.tape.explaining import Harm, harms
from exercises.tape.judging import Miss, Trouble

TOO_MANY = 75  # hundredths, where the film is mended by more recordings than it needs

WHAT = {
    Trouble.NO_PULSES: "there are no pulses, and nothing locks",
    Trouble.BLANK: "nothing is recorded",
    Trouble.OTHER: "something else is recorded",
    Trouble.ROLL: "the pulses have only just begun, so that it rolls",
    Trouble.UNSETTLED: "it is unsteady, copied while a machine was not locked",
    Trouble.CUT: "there is a cut",
}


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """Right where the film is mended with as few recordings as it needs.

    Raises AnswerRefused for an answer that `read` can't give, or no tape can hold.
    """
    chosen, right = question.checked(answer), question.checked(question.right)
    repair, rows = Repair.from_json(question.key), answer["recordings"]
    try:
        tape = repair.mended(rows)
    except EditRefused as refusal:
        raise AnswerRefused("One of these recordings runs past the end of the tape.") from refusal
    left = repair.left(tape)
    best = len(question.right["recordings"])
    beliefs = explained(question, repair, answer) if left or len(rows) > best else ()
    return Verdict(
        right=not left and len(rows) <= best,
        score=0 if left else TOO_MANY if len(rows) > best else 100,
        misconceptions=beliefs,
        feedback={
            "credit": _reason(left, len(rows), best),
            "chosen": chosen["recordings"],
            "right": right["recordings"],
            "recordings": lines(question, rows),
            "right_recordings": lines(question, question.right["recordings"]),
            "left": [] if not left else told(repair, left),
            "expected": _expected(question, repair, rows, beliefs),
            "after": _drawn(question, repair, tape),
            "best": question.key["best"],
        },
    )


def lines(question: Question, rows: Rows) -> list[str]:
    """Each recording in words, in the order in which they are made."""
    ask = next(ask for ask in question.asks if isinstance(ask, Table))
    return [", ".join(words) for words in ask.texts([list(row) for row in rows])]


def explained(question: Question, repair: Repair, answer: Mapping[str, Any]) -> tuple[str, ...]:
    """The beliefs that lead to an answer: whose choice it is, or by which it would be enough."""
    given = {"recordings": answer["recordings"]}
    alone = [belief for belief, chosen in question.key["alone"].items() if chosen == given]
    return (
        telling_apart.explained(question.believed, given)
        or tuple(alone if len(alone) == 1 else ())
        or repair.explained(answer["recordings"])
    )


def _expected(
    question: Question, repair: Repair, rows: Rows, beliefs: Sequence[str]
) -> Json | None:
    """The edit master as somebody with these beliefs expects it, where it is another."""
    tape = repair.mended(rows, beliefs)
    other = beliefs and tape != repair.mended(rows)
    return _drawn(question, repair, tape, faults=False) if other else None


def _drawn(question: Question, repair: Repair, tape: Tape, *, faults: bool = True) -> Json:
    start, end = question.key["window"]
    return drawn(repair, tape, (start, end), faults=faults)


def drawn(repair: Repair, tape: Tape, window: tuple[int, int], *, faults: bool = True) -> Json:
    start, end = window
    bench = repair.session.bench
    return tape_map(tape, bench, start=start, end=end, faults=faults).as_json()


def _reason(left: list[Miss], count: int, best: int) -> str:
    if left:
        return "The film is not mended by that."
    if count > best:
        return f"The film is mended, with {count} recordings; {best} would do."
    return "The film is mended, with as few recordings as it needs."


def told(repair: Repair, left: list[Miss]) -> list[str]:
    """What is still wrong, each thing once."""
    return [_sentence(repair, harm) for harm in harms(left)]


def _sentence(repair: Repair, harm: Harm) -> str:
    where = begun(span(harm.start, harm.end, repair.session.bench))
    return f"{where}, {listed(harm.tracks)}: {WHAT[harm.trouble]}."
