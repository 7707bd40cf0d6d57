"""The instructor's look at a cohort: people and skills, one learner, one attempt."""

from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.urls import reverse
from django.utils import timezone
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required, learner_for
from exercises.bench.reads import runs_of
from exercises.board.forms import BoardForm
from exercises.board.reads import readiness
from exercises.mastery.skills import SKILLS
from exercises.models import Attempt, BenchSheet, Sitting
from exercises.practice.pages import attempts_page
from exercises.practice.sittings import in_order
from exercises.standing.scores import beliefs_of, skills_of

RUNS = SHEETS = 10  # of the practice bench, and of the real one: the latest


@require_safe
@instructor_required
def cohort(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """The readiness board, as the address asks for it, and what else there is of a cohort."""
    found = cohort_for(request.user, cohort_pk)
    form = BoardForm(request.GET)
    asked = request.GET.get
    wanted = form.wanted(page=asked("page", ""), whole=asked("all") == "1")
    context = {
        "cohort": found,
        "form": form,
        "wanted": wanted,
        "board": readiness(found, wanted, now=timezone.now()),
        "join_link": request.build_absolute_uri(reverse("join-link", args=[found.join_code])),
    }
    status = 200 if form.is_valid() else 422
    return render(request, "board/cohort.html", context, status=status)


@require_safe
@instructor_required
def cohort_person(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    learner = learner_for(request.user, cohort_pk, person_pk)
    skill = SKILLS.get(request.GET.get("skill", ""))
    attempts = Attempt.objects.filter(person=learner).listed()
    if skill:
        attempts = attempts.filter(skill=skill.slug)
    context = {
        "skill": skill,
        "cohort": cohort_for(request.user, cohort_pk),
        "learner": learner,
        "page": attempts_page(request, attempts),
        "skills": skills_of(learner),
        "beliefs": beliefs_of(learner),
        "runs": runs_of(learner)[:RUNS],
        "sheets": BenchSheet.objects.of(learner)[:SHEETS],
    }
    return render(request, "board/cohort_person.html", context)


@require_safe
@instructor_required
def cohort_sitting(
    request: SignedInRequest, cohort_pk: int, person_pk: int, token: str
) -> HttpResponse:
    """One sitting of a learner, with its answers."""
    learner = learner_for(request.user, cohort_pk, person_pk)
    sitting = get_object_or_404(Sitting, token=token, person=learner)
    context = {
        "cohort": cohort_for(request.user, cohort_pk),
        "learner": learner,
        "sitting": sitting,
        "answers": in_order(sitting),
    }
    return render(request, "board/sitting.html", context)
