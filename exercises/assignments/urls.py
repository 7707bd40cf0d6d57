from django.urls import path

from exercises.assignments.views import instructor, learner

urlpatterns = [
    # /assignments/…: what is asked of a learner
    path("assignments/<int:pk>/", learner.assignment, name="assignment"),
    # /cohorts/<cohort>/assignments/…: what an instructor asks for
    path("cohorts/<int:cohort_pk>/assignments/", instructor.assignments, name="assignments"),
    path(
        "cohorts/<int:cohort_pk>/assignments/new/",
        instructor.new_assignment,
        name="new-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/",
        instructor.assignment_board,
        name="assignment-board",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/change/",
        instructor.change,
        name="change-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/withdraw/",
        instructor.withdraw,
        name="withdraw-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/people/<int:person_pk>/",
        instructor.extension,
        name="extend-assignment",
    ),
]
