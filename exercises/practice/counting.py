"""What a sitting counts: the answers that are given in it."""

from datetime import datetime

from django.db.models import Case, DateTimeField, F, Value, When

from exercises.models import Sitting


def count_answer(sitting: Sitting, now: datetime) -> None:
    """Count one more; the last one ends it, so that another can be begun at once.

    Within the transaction that adds the answer; of two at once both count.
    """
    last = When(ended_at=None, answered__gte=F("length") - 1, then=Value(now, DateTimeField()))
    Sitting.objects.filter(pk=sitting.pk).update(
        answered=F("answered") + 1, ended_at=Case(last, default="ended_at")
    )
    sitting.answered += 1
    if sitting.is_open and not sitting.left:
        sitting.ended_at = now
