"""Every address of the site, by prefix."""

from django.contrib import admin
from django.urls import include, path

handler500 = "course.away.server_error"

urlpatterns = [
    path("", include("exercises.urls")),  # first: an answer is looked for among them
    path("", include("course.cohorts.urls")),  # before the admin site, whose doors it has
    path("admin/", admin.site.urls),
    path("", include("course.lessons.urls")),
]
