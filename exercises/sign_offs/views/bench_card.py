"""The bench card on paper, and the page that says whether a card is still good."""

from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, may_see_practice, sign_in_required
from course.cohorts.models import Cohort
from course.pages.forms import form_page, posted
from course.pages.limits import limited
from exercises.models import SignOff
from exercises.sign_offs.forms import CardCodeForm
from exercises.sign_offs.verbs import UnknownCardError, checked_card, plain_code, replaced_by

UNKNOWN = "No card has this code. Compare it with the card, letter by letter."


@require_safe
@sign_in_required
def bench_card(request: SignedInRequest, code: str) -> HttpResponse:
    """A sign-off as a card to print; for the learner, and for those who teach them."""
    found = SignOff.objects.select_related("person", "withdrawal").filter(code=code)
    sign_off = found.first()
    if sign_off is None or not may_see_practice(request.user, sign_off.person):
        raise Http404("There is no card of that code.")
    taught = Cohort.objects.taught_by(request.user).filter(pk=sign_off.cohort_id or 0)
    context = {
        "sign_off": sign_off,
        "taught_in": taught.first(),
        "later": replaced_by(sign_off),
        "check_at": request.build_absolute_uri(reverse("verify-card", args=[code])),
    }
    return render(request, "sign_offs/card.html", context)


@never_cache
@require_http_methods(["GET", "HEAD", "POST"])
def verify(request: HttpRequest) -> HttpResponse:
    """Ask for the code of a card."""
    form = CardCodeForm(posted(request))
    if form.is_valid() and (code := plain_code(form.cleaned_data["code"])):
        return redirect("verify-card", code)
    if form.is_bound and form.is_valid():
        form.add_error("code", UNKNOWN)
    return form_page(request, "sign_offs/verify.html", form)


@never_cache
@require_safe
@limited
def verify_card(request: HttpRequest, code: str) -> HttpResponse:
    """What the card of this code is worth today. Anybody who holds a card may ask."""
    try:
        found = checked_card(request, code)
    except UnknownCardError:
        context = {"form": CardCodeForm(), "unknown": UNKNOWN}
        return render(request, "sign_offs/verify.html", context, status=404)
    context = {"sign_off": found, "later": replaced_by(found)}
    return render(request, "sign_offs/verified.html", context)
