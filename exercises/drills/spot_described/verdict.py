"""How an answer to “spot the bad edit” is judged, and what is shown then."""

from collections.abc import Mapping

from exercises.drills.change import Mode
from exercises.drills.kind import Ask, Json, Option, Question, Verdict
from exercises.drills.phrases import span
from exercises.drills.spot_described.answers import LEAVE
from exercises.drills.spot_described.case import Case
from exercises.drills.spot_described.mends import Mend
from exercises.drills.spot_described.told import Told
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import Tape, tape_map

RECORDINGS = {mode.value for mode in Mode}


def grade(question: Question, answer: Mapping[str, str]) -> Verdict:
    """One part for each ask; right only when all parts are.

    Raises ValueError for an answer that isn't one of the options.
    """
    chosen, key = question.chosen(answer), question.key
    parts = [_part(ask, chosen[ask.name], key["right"][ask.name]) for ask in question.asks]
    rights = sum(part["is_right"] for part in parts)
    beliefs = _beliefs(chosen, key)
    case = Case.from_json(key)
    return Verdict(
        right=rights == len(parts),
        score=round(100 * rights / len(parts)),
        misconceptions=beliefs,
        feedback={
            "parts": parts,
            "happened": Told(case).happened(),
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "mends": _mends(case, chosen["mend"].value, key["right"]["mend"]),
            "rule": key["rule"],
            **_maps(case, key),
        },
    )


def _part(ask: Ask, chosen: Option, right: str) -> Json:
    return {
        "legend": ask.legend,
        "chosen": chosen.text,
        "right": ask.option(right).text,
        "is_right": chosen.value == right,
    }


def _beliefs(chosen: Mapping[str, Option], key: Json) -> tuple[str, ...]:
    """What the wrong parts reveal, each belief once."""
    found = [
        belief
        for name, option in chosen.items()
        for belief in key["reveals"][name].get(option.value, ())
    ]
    return tuple(dict.fromkeys(found))


def _mends(case: Case, chosen: str, right: str) -> list[str]:
    """What the right mend does, and what the chosen one would do instead."""
    told = Told(case)
    if right == LEAVE:
        return [] if chosen == LEAVE else ["There is nothing to mend, and every edit is a risk."]
    found = [told.mended(Mode(right))]
    if chosen in RECORDINGS and chosen != right:
        found.append(told.mended(Mode(chosen)))
    return found


def _maps(case: Case, key: Json) -> Json:
    """The tape as it is, and as it would be once it is mended."""
    right = key["right"]["mend"]
    start, end = key["window"]
    window = span(start, end, case.bench.rate)
    mended = None if right == LEAVE else Mend(case, Mode(right)).result().tape
    return {
        "map": _map(case.last.tape, case, key),
        "caption": f"The master as it is, {window}",
        "mended": mended and _map(mended, case, key),
        "mended_caption": "The master once it is mended",
    }


def _map(tape: Tape, case: Case, key: Json) -> Json:
    start, end = key["window"]
    marks = {"film in": case.last.start, "film out": case.last.end}
    return tape_map(tape, case.bench, start=start, end=end, marks=marks).as_json()
