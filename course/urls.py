"""Every address of the site, by prefix."""

from django.contrib import admin
from django.urls import include, path

handler500 = "course.away.server_error"

urlpatterns = [
    path("", include("course.cohorts.urls")),  # first: it has the doors of the admin site
    path("admin/", admin.site.urls),
    path("", include("course.lessons.urls")),
    path("", include("exercises.urls")),
]
