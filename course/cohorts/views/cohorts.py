"""The cohorts that an instructor teaches, and their joining codes."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.forms import CohortForm
from course.cohorts.joining import NameInUseError, renew_code, start_cohort
from course.cohorts.models import Cohort, Notice
from course.cohorts.views.pages import form_page, posted


@require_safe
@instructor_required
def cohorts(request: SignedInRequest) -> HttpResponse:
    taught = Cohort.objects.taught_by(request.user)
    context = {
        "cohorts": taught.current().with_sizes(),
        "archived": taught.archived().count(),
        "told": Notice.objects.waiting_for(request.user),
    }
    return render(request, "cohorts/cohorts.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def new_cohort(request: SignedInRequest) -> HttpResponse:
    form = CohortForm(posted(request))
    if form.is_valid():
        try:
            cohort = start_cohort(request.user, form.cleaned_data["name"])
        except NameInUseError:
            form.add_error("name", "You already teach a cohort of this name. Choose another.")
        else:
            messages.success(request, f"{cohort} is ready. Give its joining code to your learners.")
            return redirect("cohorts")
    return form_page(request, "cohorts/new.html", form)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def joining_code(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Ask whether to renew the joining code; renew it by POST."""
    cohort = cohort_for(request.user, cohort_pk)
    if request.method != "POST":
        return render(request, "cohorts/joining_code.html", {"cohort": cohort})
    renew_code(cohort)
    messages.success(request, f"{cohort} has a new joining code. The old one no longer works.")
    return redirect("cohorts")
