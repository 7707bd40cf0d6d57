"""The one place that fetches people and cohorts for somebody, and checks that they may.

A page that is for instructors answers 403 to others; a cohort or a learner that is not
theirs answers 404, as one that does not exist.
"""

from collections.abc import Callable
from functools import wraps
from typing import Concatenate, ParamSpec

from django.conf import settings
from django.contrib.auth.views import redirect_to_login
from django.core.exceptions import PermissionDenied
from django.db.models import QuerySet
from django.http import Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.shortcuts import get_object_or_404, resolve_url
from django_htmx.http import HttpResponseClientRedirect
from django_htmx.middleware import HtmxDetails

from course.cohorts.models import Cohort, CohortQuerySet, LinkRequest, Person, RosterUpload

LONGEST_PATH = 2000  # characters; this site's longest has a few hundred


class SignedInRequest(HttpRequest):
    """A request by somebody who has signed in. For type checkers only, never made."""

    user: Person
    htmx: HtmxDetails


Arguments = ParamSpec("Arguments")
SignedInView = Callable[Concatenate[SignedInRequest, Arguments], HttpResponseBase]
View = Callable[Concatenate[HttpRequest, Arguments], HttpResponseBase]


def cohort_for(person: Person, pk: int) -> Cohort:
    """A cohort that the person teaches, or 404."""
    return get_object_or_404(Cohort.objects.taught_by(person).select_related("bench"), pk=pk)


def current_cohort_for(person: Person, pk: int) -> Cohort:
    """A cohort that the person teaches, to do something new in it; 403 where it is archived."""
    cohort = cohort_for(person, pk)
    if cohort.is_archived:
        raise PermissionDenied(f"{cohort} is archived. Open it again first.")
    return cohort


def learner_for(person: Person, cohort_pk: int, person_pk: int) -> Person:
    """A learner in a cohort that the person teaches, or 404."""
    cohort = cohort_for(person, cohort_pk)
    return get_object_or_404(Person.objects.learning_in(cohort), pk=person_pk)


def learners_taught_by(person: Person) -> QuerySet[Person]:
    """All learners in the cohorts that the person teaches."""
    taught = Cohort.objects.taught_by(person)
    return Person.objects.filter(memberships__cohort__in=taught, role=Person.Role.LEARNER)


def teaches(person: Person, learner: Person) -> bool:
    """Whether the learner is in a cohort that the person teaches: who may review them."""
    taught = Cohort.objects.taught_by(person).filter(memberships__person=learner)
    return learner.is_learner and taught.exists()


def pupil_for(person: Person, person_pk: int) -> Person:
    """A learner in any cohort that the person teaches, or 404."""
    taught = Cohort.objects.taught_by(person)
    pupils = Person.objects.filter(role=Person.Role.LEARNER, memberships__cohort__in=taught)
    return get_object_or_404(pupils.distinct(), pk=person_pk)


def link_request_for(person: Person, pk: int) -> LinkRequest:
    """Another instructor's request about a learner whom the person teaches, or 404."""
    return get_object_or_404(LinkRequest.objects.of_pupils(person), pk=pk)


def may_delete(instructor: Person, learner: Person) -> bool:
    """Whether all the cohorts that a learner is in are the instructor's own, and some is."""
    places = set(learner.memberships.values_list("cohort", flat=True))
    taught = set(Cohort.objects.taught_by(instructor).values_list("pk", flat=True))
    return learner.is_learner and bool(places) and places <= taught


def other_cohorts(person: Person, cohort: Cohort) -> CohortQuerySet:
    """Where the person may move the cohort's learners to."""
    return Cohort.objects.taught_by(person).current().exclude(pk=cohort.pk)


def fellow_for(person: Person, cohort_pk: int, fellow_pk: int) -> Person:
    """An instructor of a cohort that the person teaches, or 404."""
    return get_object_or_404(cohort_for(person, cohort_pk).instructors, pk=fellow_pk)


def roster_for(person: Person, token: str) -> RosterUpload:
    """A roster that the person sent, or 404; also where they teach its cohort no more."""
    upload = get_object_or_404(RosterUpload.objects.select_related("cohort"), token=token)
    if upload.person_id != person.pk:
        raise Http404
    if upload.cohort_id is not None:
        cohort_for(person, upload.cohort_id)
    return upload


def may_see_practice(person: Person, learner: Person) -> bool:
    """Whether it is their own, or that of a learner in a cohort they teach."""
    return person == learner or teaches(person, learner)


def sign_in_required(view: SignedInView[Arguments]) -> View[Arguments]:
    """Send strangers to the sign-in page, and back here when they have signed in."""

    @wraps(view)
    def guarded(
        request: HttpRequest, /, *args: Arguments.args, **kwargs: Arguments.kwargs
    ) -> HttpResponseBase:
        if not isinstance(request.user, Person):
            return to_sign_in(request)
        return view(request, *args, **kwargs)  # type: ignore[arg-type]

    return guarded


def instructor_required(view: SignedInView[Arguments]) -> View[Arguments]:
    """As `sign_in_required`, and 403 for whoever is not an instructor."""

    @sign_in_required
    @wraps(view)
    def guarded(
        request: SignedInRequest, /, *args: Arguments.args, **kwargs: Arguments.kwargs
    ) -> HttpResponseBase:
        if not request.user.is_instructor:
            raise PermissionDenied("This page is for instructors.")
        return view(request, *args, **kwargs)

    return guarded


def to_sign_in(request: HttpRequest) -> HttpResponse:
    """Redirect to the sign-in page; the whole page, where a fragment was asked for."""
    if request.htmx:  # type: ignore[attr-defined]
        return HttpResponseClientRedirect(redirect_to_login(page_asking(request)).url)
    # What was sent by POST can't be sent again by a redirect; its page answers GET.
    here = request.get_full_path() if request.method in {"GET", "HEAD"} else request.path
    return redirect_to_login(here, resolve_url(settings.LOGIN_URL))


def page_asking(request: HttpRequest) -> str:
    """The path of the page that asks for a fragment; empty where a browser would send no such."""
    try:
        path = request.htmx.current_url_abs_path or ""  # type: ignore[attr-defined]
    except ValueError:
        return ""
    return path if len(path) <= LONGEST_PATH else ""
