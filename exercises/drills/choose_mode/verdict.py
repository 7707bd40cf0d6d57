"""How an answer to “choose the mode” is judged, and what is shown then."""

from collections.abc import Mapping

from exercises.drills.beliefs import Attempt
from exercises.drills.change import Change, Mode
from exercises.drills.choose_mode.answers import CANNOT, OPTIONS
from exercises.drills.choose_mode.scenario import replayed
from exercises.drills.kind import Json, Question, Verdict
from exercises.drills.outcome import NAMES, Outcome
from exercises.drills.phrases import begun, span
from exercises.drills.wants import Want
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.tape import Tape, read_session, tape_map

TEXTS = {option.value: option.text for option in OPTIONS}


def grade(question: Question, answer: Mapping[str, str]) -> Verdict:
    """Right or wrong against the key; the tape model tells what each recording would do.

    Raises ValueError for an answer that isn't one of the options.
    """
    chosen, key = question.chosen(answer)["mode"].value, question.key
    beliefs = key["reveals"].get(chosen, [])
    right = chosen == key["right"]
    return Verdict(
        right=right,
        score=100 if right else 0,
        misconceptions=tuple(beliefs),
        feedback=Feedback(key).told(chosen, beliefs),
    )


class Feedback:
    """What the tape model says about the answers to one question, from its key."""

    def __init__(self, key: Json) -> None:
        session = read_session(key["session"])
        self.key = key
        self.bench = session.bench
        self.master = replayed(session)
        self.change = Change.from_json(key["change"], session.sources[key["change"]["source"]])
        self.wants = [Want(**want) for want in key["wants"]]

    def told(self, chosen: str, beliefs: list[str]) -> Json:
        right = self.key["right"]
        return {
            "chosen": TEXTS[chosen],
            "right": TEXTS[right],
            "happened": self._happened(chosen),
            "before": self._map(self.master),
            "before_caption": f"Before, {self._window()}",
            "after": self._after(chosen),
            "after_caption": f"After {TEXTS[chosen].lower()}",
            "instead": [] if chosen == right else self._happened(right),
            "instead_map": None if chosen == right else self._after(right),
            "instead_caption": f"After {TEXTS[right].lower()}",
            "others": self._others(chosen) if right == CANNOT else [],
            "advice": self.key["instead"] if right == CANNOT else "",
            "beliefs": [MISCONCEPTIONS[belief].learner for belief in beliefs],
            "rule": self.key["rule"],
        }

    def _outcome(self, mode: Mode) -> Outcome:
        return Outcome(Attempt(self.master, self.change, mode, self.bench), self.wants)

    def _happened(self, answer: str) -> list[str]:
        if answer == CANNOT:
            return []
        return self._outcome(Mode(answer)).told()

    def _after(self, answer: str) -> Json | None:
        return None if answer == CANNOT else self._map(self._outcome(Mode(answer)).tape)

    def _others(self, chosen: str) -> list[list[str]]:
        """Why the modes that were not chosen don't do it either: their names, the reason."""
        modes = [mode for mode in Mode if mode.value != chosen]
        reasons: dict[str, list[str]] = {}
        for mode in modes:
            reasons.setdefault(next(self._outcome(mode).wrong()), []).append(NAMES[mode])
        return [[begun("; ".join(names)), reason] for reason, names in reasons.items()]

    def _map(self, tape: Tape) -> Json:
        start, end = self.key["window"]
        marks = {"edit in": self.change.at, "edit out": self.change.end}
        return tape_map(tape, self.bench, start=start, end=end, marks=marks).as_json()

    def _window(self) -> str:
        start, end = self.key["window"]
        return span(start, end, self.bench.rate)
