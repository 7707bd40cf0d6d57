"""The site, as it is served, with one address more: the least that an answer could cost.

`POST /floor/` does what every answer must: know who asks, insert one row, render something.
"""

import os

from django.conf import settings
from django.http import HttpResponse
from django.template import engines
from django.urls import include, path

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "course.settings")

from course.wsgi import application as application

settings.ROOT_URLCONF = __name__

from course.cohorts.access import SignedInRequest, sign_in_required  # noqa: E402 - apps first
from course.cohorts.models import ResetLink  # noqa: E402

TINY = engines["django"].from_string("<p>{{ name }}: kept as {{ row.pk }}</p>")


@sign_in_required
def floor(request: SignedInRequest) -> HttpResponse:
    row = ResetLink.objects.create(made_by=request.user, for_person=request.user)
    return HttpResponse(TINY.render({"name": request.user.name, "row": row}, request))


urlpatterns = [path("floor/", floor), path("", include("course.urls"))]
