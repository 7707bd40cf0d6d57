"""An instructor signs learners off; everybody else reads what was decided of them."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    current_cohort_for,
    instructor_required,
    learner_for,
)
from course.cohorts.models import Cohort, Person
from course.pages.forms import form_page, posted
from exercises.forms.fields import refuse_used
from exercises.forms.keys import SentBeforeError
from exercises.models import SignOff
from exercises.sign_offs.forms import SignOffForm, WithdrawalForm
from exercises.sign_offs.verbs import (
    WithdrawnError,
    bench_named,
    lines_of,
    replaced_by,
    sign_off,
    sign_off_for,
    withdraw,
)
from exercises.standing.evidence import evidence_of

STATES = [*SignOff.State.choices, ("withdrawn", "Withdrawn"), ("none", "No sign-off yet")]


@require_safe
@instructor_required
def sign_offs(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Everybody of the cohort with what counts for them; `state` shows only those in it."""
    cohort = cohort_for(request.user, cohort_pk)
    lines = lines_of(cohort)
    state = request.GET.get("state", "")
    state = state if state in dict(STATES) else ""
    context = {
        "cohort": cohort,
        "lines": [line for line in lines if state in ("", line.state)],
        "state": state,
        "counts": [(*each, sum(line.state == each[0] for line in lines)) for each in STATES],
        "everybody": len(lines),
    }
    return render(request, "sign_offs/sign_offs.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def sign_off_person(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    """The evidence first, then the decision."""
    learner = learner_for(request.user, cohort_pk, person_pk)
    cohort = current_cohort_for(request.user, cohort_pk)
    first = {"bench": bench_named(cohort)}
    form = SignOffForm(posted(request), learner=learner, initial=first)
    if form.is_valid() and (made := signed(request, learner, cohort, form)):
        messages.success(request, f"{learner}: {made.get_state_display().lower()}. It is kept.")
        return redirect("sign-off", cohort.pk, made.code)
    before = SignOff.objects.filter(person=learner, cohort=cohort).latest_first()
    context = {
        "cohort": cohort,
        "learner": learner,
        "evidence": evidence_of(learner),
        "before": before.select_related("person", "withdrawal"),
    }
    return form_page(request, "sign_offs/decide.html", form, **context)


def signed(
    request: SignedInRequest, learner: Person, cohort: Cohort, form: SignOffForm
) -> SignOff | None:
    """What is kept of a valid form; None, and the form says why, where its key has kept another."""
    try:
        return sign_off(request.user, learner, cohort, form.decision())
    except SentBeforeError:
        refuse_used(form)
        return None


@require_safe
@instructor_required
def one_sign_off(request: SignedInRequest, cohort_pk: int, code: str) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    found = sign_off_for(cohort, code)
    context = {"cohort": cohort, "sign_off": found, "later": replaced_by(found)}
    return render(request, "sign_offs/sign_off.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def withdraw_sign_off(request: SignedInRequest, cohort_pk: int, code: str) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    found = sign_off_for(cohort, code)
    form = WithdrawalForm(posted(request))
    if form.is_valid():
        try:
            withdraw(request.user, found, form.cleaned_data["reason"])
        except WithdrawnError as error:
            form.add_error("reason", str(error))
        else:
            messages.success(request, f"The sign-off of {found.person} is withdrawn.")
            return redirect("sign-off", cohort.pk, found.code)
    context = {"cohort": cohort, "sign_off": found}
    return form_page(request, "sign_offs/withdraw.html", form, **context)
