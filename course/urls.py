"""Every address of the site, by prefix."""

from django.contrib import admin
from django.urls import include, path

urlpatterns = [
    path("admin/", admin.site.urls),
    path("", include("course.cohorts.urls")),
    path("", include("course.lessons.urls")),
    path("", include("exercises.urls")),
]
