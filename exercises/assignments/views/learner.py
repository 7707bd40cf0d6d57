"""The learner's side of an assignment: what is asked, and a start."""

from django.conf import settings
from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.models import Person
from course.lessons.shelf import shelf
from exercises.assignments.assigned import AssignmentStanding, mine
from exercises.assignments.verbs import (
    NoTriesLeftError,
    OtherSetOpenError,
    begin_sitting,
    practical_of,
)
from exercises.assignments.work import Doing
from exercises.models import Asked, Assignment
from exercises.practice.pages import answer_form, question_context
from exercises.practice.sittings import open_sitting


def standing_for(person: Person, pk: int) -> AssignmentStanding:
    """How they stand with an assignment that is meant for them and has opened, or 404."""
    for each in mine(person, now=timezone.now()):
        if each.assignment.pk == pk:
            return each
    raise Http404("There is no such assignment for you.")


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def assignment(request: SignedInRequest, pk: int) -> HttpResponse:
    """What is asked; by POST, begin a sitting."""
    standing = standing_for(request.user, pk)
    found = standing.assignment
    if request.method == "POST" and found.what == Assignment.What.DRILLS:
        return begin(request, found)
    context = {
        "standing": standing,
        "assignment": found,
        "lesson": shelf().find(found.lesson),
        "zone": settings.TIME_ZONE,
        "tries_left": found.tries - standing.work.tries if found.tries else None,
    }
    if asks_for_report(standing):
        asked: Asked = practical_of(request.user, found)
        context |= question_context(asked, answer_form(asked))
    return render(request, "assignments/assignment.html", context)


def asks_for_report(standing: AssignmentStanding) -> bool:
    """Until a report is in, and again once it is sent back or not right yet."""
    practical = standing.assignment.what == Assignment.What.PRACTICAL
    return practical and standing.work.doing not in (Doing.WAITS, Doing.DONE)


def begin(request: SignedInRequest, found: Assignment) -> HttpResponse:
    try:
        return redirect(begin_sitting(request.user, found))
    except NoTriesLeftError:
        messages.info(request, "You have begun as many sittings as this assignment allows.")
    except OtherSetOpenError:
        messages.info(request, "Another sitting of yours is open. Finish it or stop it first.")
        going = open_sitting(request.user)
        if going:
            return redirect(going)
    return redirect(found)
