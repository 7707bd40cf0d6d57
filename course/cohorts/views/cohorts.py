"""The cohorts that an instructor teaches, and their joining codes."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.forms import CodeEndForm, CohortForm
from course.cohorts.joining import NameInUseError, end_code, renew_code, start_cohort
from course.cohorts.models import Cohort, LinkRequest, Notice
from course.pages.forms import form_page, posted


@require_safe
@instructor_required
def cohorts(request: SignedInRequest) -> HttpResponse:
    taught = Cohort.objects.taught_by(request.user).with_sizes()
    context = {
        "cohorts": [cohort for cohort in taught if not cohort.is_archived],
        "archived": [cohort for cohort in taught if cohort.is_archived],
        "told": Notice.objects.waiting_for(request.user),
        "asked": LinkRequest.objects.waiting_for(request.user),
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
        return code_page(request, cohort, CodeEndForm(initial={"last_day": cohort.code_last_day}))
    renew_code(cohort)
    messages.success(request, f"{cohort} has a new joining code. The old one no longer works.")
    return redirect("cohorts")


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def joining_code_end(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Set until when the joining code works."""
    cohort = cohort_for(request.user, cohort_pk)
    form = CodeEndForm(posted(request))
    if not form.is_bound:
        return redirect("joining-code", cohort.pk)
    if not form.is_valid():
        return code_page(request, cohort, form)
    end_code(cohort, form.cleaned_data["last_day"])
    last = cohort.code_last_day
    told = f"until the end of {last:%-d %B %Y}" if last else "without an end"
    messages.success(request, f"The joining code of {cohort} works {told}.")
    return redirect("joining-code", cohort.pk)


def code_page(request: SignedInRequest, cohort: Cohort, form: CodeEndForm) -> HttpResponse:
    return form_page(request, "cohorts/joining_code.html", form, cohort=cohort)
