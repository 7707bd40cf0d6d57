"""What people say about themselves: their name and their e-mail."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.forms import DetailsForm
from course.pages.forms import form_page, posted
from exercises.own_data.renaming import change_details


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def details(request: SignedInRequest) -> HttpResponse:
    now = {"name": request.user.name, "email": request.user.email}
    form = DetailsForm(posted(request), initial=now)
    if not form.is_valid():
        return form_page(request, "account/details.html", form)
    change_details(request.user, **form.cleaned_data)
    messages.success(request, "Your details are changed.")
    return redirect("account")
