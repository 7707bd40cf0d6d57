from django.urls import path

from exercises.reviews import views

urlpatterns = [
    # an attempt, with what was said about it
    path("record/<str:key>/", views.attempt, name="attempt"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/attempts/<str:key>/",
        views.cohort_attempt,
        name="cohort-attempt",
    ),
    # /cohorts/reviews/: what waits for an instructor
    path("cohorts/reviews/", views.reviews, name="reviews"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/attempts/<str:key>/review/",
        views.review_attempt,
        name="review-attempt",
    ),
    # /record/…: what a learner says to a review
    path("record/<str:key>/reply/", views.reply_to_review, name="reply"),
    path("record/<str:key>/again/", views.answer_anew, name="answer-again"),
]
