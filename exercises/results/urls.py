from django.urls import path

from exercises.results import views

urlpatterns = [
    # /cohorts/<cohort>/results/…: tables and packages to take away
    path("cohorts/<int:cohort_pk>/results/", views.results, name="results"),
    path(
        "cohorts/<int:cohort_pk>/results/oneroster/",
        views.results_package,
        name="results-package",
    ),
    path(
        "cohorts/<int:cohort_pk>/results/<slug:table>/", views.results_table, name="results-table"
    ),
]
