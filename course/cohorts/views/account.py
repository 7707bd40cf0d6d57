"""One's own account: making it, looking at it, changing it."""

from django.conf import settings
from django.contrib import messages
from django.contrib.auth import login, update_session_auth_hash
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.accounts import NameTakenError, choose_words, just_made, make_account
from course.cohorts.forms import AccountForm, ChangePasswordForm, InWordsForm
from course.cohorts.joining import UnknownCodeError, cohort_of_code, read_code
from course.cohorts.known_browser import remember
from course.cohorts.models import Cohort, Person
from course.cohorts.notices import put_away
from course.cohorts.pages import unknown_code
from course.cohorts.passwords import person_signing_in, set_password
from course.pages.forms import form_page, posted
from course.pages.limits import limited

NAME_TAKEN = "Someone already signs in with this name. Choose another."


@require_safe
@sign_in_required
def account(request: SignedInRequest) -> HttpResponse:
    places = request.user.memberships.select_related("cohort").order_by("pk")
    taught = Cohort.objects.taught_by(request.user)
    links = request.user.reset_links.select_related("made_by")
    context = {"places": places, "taught": taught, "links": links}
    return render(request, "account/account.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def in_words(request: SignedInRequest) -> HttpResponse:
    form = InWordsForm(posted(request))
    if form.is_valid():
        choose_words(request.user, **form.cleaned_data)
        told = "described in words" if request.user.in_words else "shown and played"
        messages.success(request, f"Pictures and sounds are {told} from now on.")
    return redirect("account")


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def notices_read(request: SignedInRequest) -> HttpResponse:
    if request.method == "POST":
        put_away(request.user)
    return redirect("today")


@sensitive_post_parameters()
@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
@limited
def password(request: SignedInRequest) -> HttpResponse:
    person = request.user
    form = ChangePasswordForm(posted(request), person=person)
    if form.is_valid() and not person_signing_in(
        request, person.sign_in_name, form.cleaned_data["current_password"]
    ):
        form.add_error("current_password", "That is not your password now. Nothing is changed.")
    if not form.is_valid():
        return form_page(request, "account/password.html", form)
    set_password(person, form.cleaned_data["new_password"])
    update_session_auth_hash(request, person)
    messages.success(request, "Your password is changed. Other browsers have been signed out.")
    return redirect("account")


@sensitive_post_parameters()
@never_cache
@require_http_methods(["GET", "HEAD", "POST"])
@limited
def new_account(request: HttpRequest) -> HttpResponse:
    code = request.POST.get("code", request.GET.get("code", ""))
    if request.user.is_authenticated:
        plain = read_code(code)
        return redirect("join-link", plain) if plain else redirect("account")
    try:
        cohort = cohort_of_code(request, code) if code else None
    except UnknownCodeError as error:
        return unknown_code(request, error)
    if cohort is None and not settings.SELF_STUDY:
        return render(request, "account/code_needed.html", status=403)
    return make_or_ask(request, cohort)


def make_or_ask(request: HttpRequest, cohort: Cohort | None) -> HttpResponse:
    form = AccountForm(posted(request))
    if form.is_valid():
        person = made_from(request, form, cohort)
        if person:
            login(request, person)
            messages.success(request, welcome(cohort))
            return remember(request, redirect(settings.LOGIN_REDIRECT_URL), person)
        form.add_error("sign_in_name", NAME_TAKEN)
    return form_page(request, "account/new.html", form, cohort=cohort)


def made_from(request: HttpRequest, form: AccountForm, cohort: Cohort | None) -> Person | None:
    """The account that the form asks for; None if its sign-in name is somebody else's."""
    said = form.cleaned_data
    name, password = said["sign_in_name"], said["new_password"]
    try:
        return make_account(
            request,
            sign_in_name=name,
            name=said["name"],
            email=said["email"],
            password=password,
            cohort=cohort,
        )
    except NameTakenError:
        # A form that was sent twice finds its own name taken.
        return person_signing_in(request, name, password) if just_made(name) else None


def welcome(cohort: Cohort | None) -> str:
    return (
        f"Your account is made, and you have joined {cohort}."
        if cohort
        else "Your account is made."
    )
