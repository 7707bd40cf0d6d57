"""What an attempt counts for, kept in step with what instructors say of it."""

from exercises.models import Outcome, Review
from exercises.standing.summaries import refresh


def settle(review: Review) -> None:
    """Let a score that an instructor gave count. Call it in the transaction that adds the score.

    The caller holds the attempt's lock, so that of two scores at once the later one counts.
    Whatever is derived from attempts is brought in step here, as `take_in` does for a new one.
    """
    scored = {"review": review, "right": review.right, "score": review.score}
    Outcome.objects.update_or_create(attempt_id=review.attempt_id, defaults=scored)
    refresh(review.attempt.person_id)
