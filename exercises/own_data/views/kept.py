"""What somebody may do with all that is kept about them: take it away, have it deleted."""

from django.contrib import messages
from django.contrib.auth import logout
from django.core.exceptions import PermissionDenied
from django.http import HttpResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase
from django.shortcuts import redirect
from django.utils import timezone
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    instructor_required,
    learner_for,
    may_delete,
    sign_in_required,
)
from course.cohorts.passwords import person_signing_in
from course.pages.forms import form_page, posted
from course.pages.limits import limited
from exercises.own_data.deletion import delete_learner, refuse
from exercises.own_data.forms import NameAgainForm, PasswordAgainForm
from exercises.own_data.zipped import files_of, zipped


@require_safe
@sign_in_required
def own_data(request: SignedInRequest) -> HttpResponseBase:
    now = timezone.now().isoformat(timespec="seconds")
    content = zipped(files_of(request.user, now))
    response = StreamingHttpResponse(content, content_type="application/zip")
    name = f"run-up-{timezone.localdate():%Y-%m-%d}.zip"
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


@sensitive_post_parameters()
@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
@limited
def delete_account(request: SignedInRequest) -> HttpResponse:
    """A learner's own deletion, for which the password is asked again."""
    person = request.user
    refuse(person)
    form = PasswordAgainForm(posted(request))
    if form.is_valid() and not person_signing_in(
        request, person.sign_in_name, form.cleaned_data["password"]
    ):
        form.add_error("password", "That is not your password. Nothing is deleted.")
    if not form.is_valid():
        return form_page(request, "own_data/own.html", form)
    delete_learner(person)
    logout(request)
    messages.success(request, "Your account is deleted, with all that was kept about you.")
    return redirect("today")


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def delete_person(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    """Deletion by the instructor of all of a learner's cohorts; the name is asked."""
    cohort = cohort_for(request.user, cohort_pk)
    learner = learner_for(request.user, cohort_pk, person_pk)
    refuse(learner)
    allowed = may_delete(request.user, learner)
    form = NameAgainForm(posted(request) if allowed else None, name=learner.name)
    if request.method == "POST" and not allowed:
        raise PermissionDenied("Somebody else teaches this learner, too.")
    if not form.is_valid():
        context = {"cohort": cohort, "learner": learner, "allowed": allowed}
        return form_page(request, "own_data/person.html", form, **context)
    delete_learner(learner)
    messages.success(request, f"The account of {learner.name} is deleted.")
    return redirect("cohort", cohort.pk)
