from django.urls import path

from exercises.views import (
    assignment,
    assignments,
    bench_card,
    cohort,
    desk,
    details,
    items,
    own_data,
    practice,
    record,
    results,
    reviews,
    shown,
    sign_offs,
    sitting,
    today,
    uploads,
)

# /
today_urls = [
    path("", today.today, name="today"),
]

# /drills/…
drill_urls = [
    path("drills/", practice.drills, name="drills"),
    path("drills/<slug:slug>/", practice.drill, name="drill"),
    path("drills/<slug:slug>/ask/", practice.drill_ask, name="drill-ask"),
    path("answers/<str:token>/", practice.drill_answer, name="drill-answer"),
    path("answers/<str:token>/in-words/", practice.drill_in_words, name="drill-in-words"),
]

# /sittings/…
sitting_urls = [
    path("sittings/", sitting.new_sitting, name="new-sitting"),
    path("sittings/<str:token>/", sitting.sitting, name="sitting"),
    path("sittings/<str:token>/stop/", sitting.sitting_stop, name="sitting-stop"),
]

# /assignments/…: what is asked of a learner
assignment_urls = [path("assignments/<int:pk>/", assignment.assignment, name="assignment")]

# /cohorts/<cohort>/assignments/…: what an instructor asks for
cohort_assignment_urls = [
    path("cohorts/<int:cohort_pk>/assignments/", assignments.assignments, name="assignments"),
    path(
        "cohorts/<int:cohort_pk>/assignments/new/",
        assignments.new_assignment,
        name="new-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/",
        assignments.assignment_board,
        name="assignment-board",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/change/",
        assignments.change,
        name="change-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/withdraw/",
        assignments.withdraw,
        name="withdraw-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/assignments/<int:pk>/people/<int:person_pk>/",
        assignments.extension,
        name="extend-assignment",
    ),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/sittings/<str:token>/",
        cohort.cohort_sitting,
        name="cohort-sitting",
    ),
]

# /shown/…: pictures and sounds of questions
shown_urls = [
    path("shown/<str:token>/", shown.shown, name="shown"),
]

# /pictures/…: those that learners sent
upload_urls = [
    path("pictures/<str:name>/", uploads.sent_picture, name="sent-picture"),
    path("pictures/<str:name>/small/", uploads.sent_picture_small, name="sent-picture-small"),
]

# /desk/…: drills that instructors write
desk_urls = [
    path("desk/", desk.desk, name="desk"),
    path("desk/new/<slug:form>/", desk.new_own, name="new-own"),
    path("desk/draw/<slug:form>/", desk.draw, name="draw-own"),
    path("desk/<int:pk>/", desk.own_drill, name="own-drill"),
    path("desk/<int:pk>/revise/", desk.revise_own, name="revise-own"),
    path("desk/<int:pk>/try/", desk.try_own, name="try-own"),
    path("desk/<int:pk>/publish/", desk.publish_own, name="publish-own"),
    path("desk/<int:pk>/retire/", desk.retire_own, name="retire-own"),
]

# /record/…
record_urls = [
    path("record/", record.record, name="record"),
    path("record/<str:key>/", record.attempt, name="attempt"),
    path("record/<str:key>/reply/", reviews.reply_to_review, name="reply"),
    path("record/<str:key>/again/", reviews.answer_anew, name="answer-again"),
]

# /cohorts/reviews/: what waits for an instructor
review_urls = [
    path("cohorts/reviews/", reviews.reviews, name="reviews"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/attempts/<str:key>/review/",
        reviews.review_attempt,
        name="review-attempt",
    ),
]

# /cohorts/<cohort>/…: what an instructor sees of a cohort's practice
cohort_urls = [
    path("cohorts/<int:cohort_pk>/", cohort.cohort, name="cohort"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/",
        cohort.cohort_person,
        name="cohort-person",
    ),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/attempts/<str:key>/",
        cohort.cohort_attempt,
        name="cohort-attempt",
    ),
]

# /cohorts/<cohort>/items/…: what the answers say about the drills
item_urls = [
    path("cohorts/<int:cohort_pk>/items/", items.items, name="items"),
    path("cohorts/<int:cohort_pk>/items/<slug:slug>/", items.items_of_kind, name="items-of-kind"),
]

# /cohorts/<cohort>/…/sign-offs/…: who may work at the bench
sign_off_urls = [
    path("cohorts/<int:cohort_pk>/sign-offs/", sign_offs.sign_offs, name="sign-offs"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/sign-off/",
        sign_offs.sign_off_person,
        name="sign-off-person",
    ),
    path("cohorts/<int:cohort_pk>/sign-offs/<str:code>/", sign_offs.one_sign_off, name="sign-off"),
    path(
        "cohorts/<int:cohort_pk>/sign-offs/<str:code>/withdraw/",
        sign_offs.withdraw_sign_off,
        name="withdraw-sign-off",
    ),
]

# /cohorts/<cohort>/results/…: tables and packages to take away
result_urls = [
    path("cohorts/<int:cohort_pk>/results/", results.results, name="results"),
    path(
        "cohorts/<int:cohort_pk>/results/oneroster/",
        results.results_package,
        name="results-package",
    ),
    path(
        "cohorts/<int:cohort_pk>/results/<slug:table>/", results.results_table, name="results-table"
    ),
]

# /cards/…, /verify/…: what is printed of a sign-off, and whether it still holds
card_urls = [
    path("cards/<str:code>/", bench_card.bench_card, name="bench-card"),
    path("verify/", bench_card.verify, name="verify"),
    path("verify/<str:code>/", bench_card.verify_card, name="verify-card"),
]

# /account/details/: a name that others answer for
detail_urls = [path("account/details/", details.details, name="details")]

# /account/…, /cohorts/<cohort>/people/…: all that is kept about somebody
own_data_urls = [
    path("account/everything/", own_data.own_data, name="own-data"),
    path("account/delete/", own_data.delete_account, name="delete-account"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/delete/",
        own_data.delete_person,
        name="delete-person",
    ),
]

urlpatterns = [
    *detail_urls,
    *own_data_urls,
    *today_urls,
    *drill_urls,
    *sitting_urls,
    *assignment_urls,
    *cohort_assignment_urls,
    *shown_urls,
    *upload_urls,
    *desk_urls,
    *record_urls,
    *review_urls,
    *cohort_urls,
    *item_urls,
    *sign_off_urls,
    *result_urls,
    *card_urls,
]
