"""Today: what to do next, and why that. Strangers see what the site is for."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_safe

from course.cohorts.models import Person
from exercises.today.reads import today_of


@require_safe
def today(request: HttpRequest) -> HttpResponse:
    if not isinstance(request.user, Person):
        return render(request, "today/front.html")
    if request.user.is_instructor:
        return redirect("cohorts")
    return render(request, "today/today.html", today_of(request.user))
