"""What a practice sitting comes to, in four lines: tried, happened, why, next."""

from collections import Counter
from dataclasses import dataclass

from course.cohorts.equipping import bench_of
from course.lessons.shelf import LessonPlace, lesson_place
from exercises.mastery.misconceptions import MISCONCEPTIONS, Misconception
from exercises.mastery.progress import HOLDS
from exercises.models import Attempt, Sitting
from exercises.practice.sittings import in_order
from exercises.standing.scores import Progress, progress_of


@dataclass(frozen=True, kw_only=True)
class Debrief:
    """`why` says what the misses point at; `next_drill` or `next_place` is the one next step."""

    tried: str
    happened: str
    why: str
    why_place: LessonPlace | None
    next: str
    next_place: LessonPlace | None
    next_drill: Progress | None


def debrief(sitting: Sitting) -> Debrief:
    """A constant number of queries."""
    answers = in_order(sitting)
    belief = commonest_belief(answers)
    place = lesson_place(belief.lesson) if belief else None
    drill = None if place else drill_to_practise(sitting, answers)
    return Debrief(
        tried=tried(sitting, answers),
        happened=happened(answers),
        why=why(answers, belief),
        why_place=place,
        next=next_words(place, drill),
        next_place=place,
        next_drill=drill,
    )


def standing(answers: list[Attempt]) -> list[Attempt]:
    """Those that count for the sitting: what was sent back is answered again in its stead."""
    return [each for each in answers if not each.sent_back]  # type: ignore[attr-defined]


def tried(sitting: Sitting, answers: list[Attempt]) -> str:
    if not answers:
        return "Nothing yet: you stopped before the first answer."
    titles = dict.fromkeys(answer.kind.title for answer in answers)
    return f"{len(standing(answers))} of {sitting.length} questions: {', '.join(titles)}."


def happened(answers: list[Attempt]) -> str:
    """How many were right, partly right, not right; what waits is counted apart, for whomever."""
    back = sum(each.sent_back and not each.answered_again for each in answers)  # type: ignore[attr-defined]
    answers = standing(answers)
    waiting = sum(answer.result.waits for answer in answers)
    right = sum(answer.result.right for answer in answers)
    partly = sum(not answer.result.right and answer.result.score > 0 for answer in answers)
    wrong = len(answers) - waiting - right - partly
    counts = [(right, "right"), (partly, "partly right"), (wrong, "not right")]
    parts = [f"{count} {word}" for count, word in counts if count]
    if waiting:
        parts.append(f"{waiting} waiting for your instructor")
    if back:
        parts.append(f"{back} sent back to you")
    return f"{', '.join(parts)}." if parts else "Nothing was answered."


def wrong_ones(answers: list[Attempt]) -> list[Attempt]:
    return [each for each in answers if not (each.result.right or each.result.waits)]


def commonest_belief(answers: list[Attempt]) -> Misconception | None:
    """What most of the wrong answers point at; the critical first, then the earliest."""
    seen = Counter(belief for answer in wrong_ones(answers) for belief in answer.misconceptions)
    known = [(MISCONCEPTIONS[belief], times) for belief, times in seen.items()]
    return max(known, key=lambda each: (each[0].critical, each[1]))[0] if known else None


def why(answers: list[Attempt], belief: Misconception | None) -> str:
    if belief:
        return belief.learner
    missed = dict.fromkeys(answer.skill_title for answer in wrong_ones(answers))
    if missed:
        return f"No single belief stands behind it. What was missed is in: {', '.join(missed)}."
    return "Nothing went wrong, so there is nothing to explain." if answers else "–"


def drill_to_practise(sitting: Sitting, answers: list[Attempt]) -> Progress | None:
    """The drill of this set, at their bench, with the fewest right without a miss, not held yet."""
    inside = {answer.drill for answer in answers}
    bench = bench_of(sitting.person).as_settings()
    drills = [each for each in progress_of(sitting.person) if each.kind.is_at(bench)]
    undone = [each for each in drills if not (each.held or each.kind.by_hand)]
    ranked = sorted(undone, key=lambda each: (each.kind.slug not in inside, each.unbroken))
    return ranked[0] if ranked else None


def next_words(place: LessonPlace | None, drill: Progress | None) -> str:
    if place:
        return "Read this again, then begin another sitting:"
    if drill is None:
        return "Every drill is held. Come back in a few days, so that it stays."
    more = HOLDS - drill.unbroken
    return f"Not held yet, {more} more right without a miss:"
