"""What an attempt counts for, kept in step with what instructors say of it."""

from exercises.models import Attempt, Outcome, Review
from exercises.standing.summaries import refresh


def settle(review: Review) -> None:
    """Let a score that an instructor gave count. Call it in the transaction that adds the score.

    The caller holds the attempt's lock, so that of two scores at once the later one counts.
    """
    scored = {"review": review, "right": review.right, "score": review.score}
    Outcome.objects.update_or_create(attempt_id=review.attempt_id, defaults=scored)
    outcome_changed(review.attempt)


def outcome_changed(attempt: Attempt) -> None:
    """Whatever is derived from attempts is brought in step here.

    It is called in the transaction that adds the attempt or a score for it, after both are
    written: `attempt.result` is what counts from now on.
    """
    refresh(attempt.person_id, attempt.skill)
