"""How a fault that was spotted by eye or ear is judged, and what is shown then."""

from collections.abc import Iterator, Mapping
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.judging.parts import judged, parts
from exercises.drills.kind import Verdict
from exercises.drills.question import Question
from exercises.drills.setting.phrases import begun
from exercises.tape import TapeMap


def grade(question: Question, answer: Mapping[str, Any]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises AnswerRefused for an answer that isn't one of the options.
    """
    key = question.key
    return judged(
        list(parts(question, answer)),
        question.revealed(answer),
        happened=list(_beyond_the_map(key)),
        pictures=[*key["afterwards"], *_chosen(question, answer["fault"])],
        map=key["map"],
        caption=key["caption"],
    )


def _beyond_the_map(key: Json) -> Iterator[str]:
    """What happened, without what the map lists beneath itself."""
    marked = TapeMap.from_json(key["map"]).faults or ()
    listed = {begun(f"{fault.sentence.partition(' (edit ')[0]}.") for fault in marked}
    return (sentence for sentence in key["happened"] if sentence not in listed)


def _chosen(question: Question, fault: str) -> list[int]:
    """What the fault that was chosen wrongly is like."""
    examples: dict[str, int] = question.key["examples"]
    if fault == question.right["fault"] or fault not in examples:
        return []
    return [examples[fault]]
