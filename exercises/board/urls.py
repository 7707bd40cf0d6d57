from django.urls import path

from exercises.board import views

urlpatterns = [
    # /cohorts/<cohort>/…: what an instructor sees of a cohort's practice
    path("cohorts/<int:cohort_pk>/", views.cohort, name="cohort"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/",
        views.cohort_person,
        name="cohort-person",
    ),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/sittings/<str:token>/",
        views.cohort_sitting,
        name="cohort-sitting",
    ),
]
