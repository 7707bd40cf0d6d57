"""In at the door and out again."""

from django.conf import settings
from django.contrib.auth import login, logout
from django.contrib.auth.views import redirect_to_login
from django.core.exceptions import PermissionDenied
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, resolve_url
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import LONGEST_PATH
from course.cohorts.forms import SignInForm
from course.cohorts.known_browser import remember
from course.cohorts.models import Person
from course.cohorts.passwords import person_signing_in
from course.pages.forms import form_page, posted
from course.pages.limits import limited

REFUSED = (
    "That name and password don’t belong together. Check both and try again. "
    "If the password is lost, your instructor can make you a link for a new one."
)


@sensitive_post_parameters("password")
@never_cache
@require_http_methods(["GET", "HEAD", "POST"])
@limited
def sign_in(request: HttpRequest) -> HttpResponse:
    form = SignInForm(posted(request))
    if request.user.is_authenticated and not form.is_bound:
        return redirect(next_page(request))
    if form.is_valid():
        person = person_signing_in(request, **form.cleaned_data)
        if person:
            login(request, person)
            return remember(request, redirect(next_page(request)), person)
        form.add_error(None, REFUSED)
    context = {"next": next_wanted(request), "self_study": settings.SELF_STUDY}
    return form_page(request, "account/sign_in.html", form, **context)


def next_wanted(request: HttpRequest) -> str:
    return request.POST.get("next", request.GET.get("next", ""))


def next_page(request: HttpRequest, otherwise: str = settings.LOGIN_REDIRECT_URL) -> str:
    """Where the person was going, if that is a path of this site."""
    wanted = next_wanted(request)
    path = wanted.startswith("/") and wanted.isprintable() and len(wanted) <= LONGEST_PATH
    safe = path and url_has_allowed_host_and_scheme(wanted, allowed_hosts=None)
    return wanted if safe else resolve_url(otherwise)


@require_http_methods(["GET", "HEAD", "POST"])
def sign_out(request: HttpRequest) -> HttpResponse:
    """Whoever comes by a link stays signed in: another site may have led them here."""
    if request.method == "POST":
        logout(request)
    return redirect(settings.LOGOUT_REDIRECT_URL)


@require_safe
def administration_door(request: HttpRequest) -> HttpResponse:
    """Where the admin site sends whoever may not see it: to the door whose tries are counted."""
    wanted = next_page(request, "admin:index")
    if not isinstance(request.user, Person):
        return redirect_to_login(wanted)
    if not request.user.is_administrator:
        raise PermissionDenied("This page is for administrators.")
    return redirect(wanted)
