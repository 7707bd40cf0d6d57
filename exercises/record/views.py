"""A learner's own record: all that was asked of them and what they answered."""

from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from exercises.bench.reads import runs_of
from exercises.models import Attempt, BenchSheet
from exercises.practice.pages import attempts_page
from exercises.practice.sittings import sittings_of
from exercises.sign_offs.verbs import sign_offs_of
from exercises.standing.scores import skills_of

SITTINGS = RUNS = SHEETS = 10


@require_safe
@sign_in_required
def record(request: SignedInRequest) -> HttpResponse:
    attempts = Attempt.objects.filter(person=request.user).listed()
    context = {
        "page": attempts_page(request, attempts),
        "skills": skills_of(request.user),
        "sittings": sittings_of(request.user)[:SITTINGS],
        "sign_offs": sign_offs_of(request.user),
        "runs": runs_of(request.user)[:RUNS],
        "sheets": BenchSheet.objects.of(request.user)[:SHEETS],
    }
    return render(request, "record/record.html", context)
