from django.urls import path

from exercises.sign_offs.views import bench_card, deciding

urlpatterns = [
    # /cohorts/<cohort>/…/sign-offs/…: who may work at the bench
    path("cohorts/<int:cohort_pk>/sign-offs/", deciding.sign_offs, name="sign-offs"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/sign-off/",
        deciding.sign_off_person,
        name="sign-off-person",
    ),
    path("cohorts/<int:cohort_pk>/sign-offs/<str:code>/", deciding.one_sign_off, name="sign-off"),
    path(
        "cohorts/<int:cohort_pk>/sign-offs/<str:code>/withdraw/",
        deciding.withdraw_sign_off,
        name="withdraw-sign-off",
    ),
    # /cards/…, /verify/…: what is printed of a sign-off, and whether it still holds
    path("cards/<str:code>/", bench_card.bench_card, name="bench-card"),
    path("verify/", bench_card.verify, name="verify"),
    path("verify/<str:code>/", bench_card.verify_card, name="verify-card"),
]
