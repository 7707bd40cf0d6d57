from django.urls import path
from django.views.generic import RedirectView

from course.cohorts.views import (
    account,
    archive,
    bench,
    cohorts,
    joining,
    link_requests,
    people,
    reset,
    roster,
    signing_in,
)

# /sign-in/, /sign-out/, and the doors of Django's admin that lead here
door_urls = [
    path("sign-in/", signing_in.sign_in, name="sign-in"),
    path("sign-out/", signing_in.sign_out, name="sign-out"),
    path("admin/login/", signing_in.administration_door, name="administration-door"),
    path("admin/password_change/", RedirectView.as_view(pattern_name="password")),
]

# /account/…
account_urls = [
    path("account/", account.account, name="account"),
    path("account/new/", account.new_account, name="new-account"),
    path("account/in-words/", account.in_words, name="in-words"),
    path("account/notices/read/", account.notices_read, name="notices-read"),
    path("account/password/", account.password, name="password"),
    path("new-password/<str:uid>/<str:token>/", reset.new_password, name="new-password"),
]

# /join/…
join_urls = [
    path("join/", joining.join_by_code, name="join"),
    path("join/<str:code>/", joining.join_by_link, name="join-link"),
]

# /cohorts/…: the pages of one cohort are among the exercises
cohort_urls = [
    path("cohorts/", cohorts.cohorts, name="cohorts"),
    path("cohorts/new/", cohorts.new_cohort, name="new-cohort"),
    path("cohorts/<int:cohort_pk>/joining-code/", cohorts.joining_code, name="joining-code"),
    path(
        "cohorts/<int:cohort_pk>/joining-code/end/",
        cohorts.joining_code_end,
        name="joining-code-end",
    ),
    path("cohorts/<int:cohort_pk>/bench/", bench.bench_figures, name="bench-figures"),
    path("cohorts/<int:cohort_pk>/bench/choice/", bench.bench_choice, name="bench-choice"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/reset-link/",
        reset.reset_link,
        name="reset-link",
    ),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/reset-link/ask/",
        link_requests.ask_for_link,
        name="ask-for-link",
    ),
    path("cohorts/link-requests/<int:pk>/", link_requests.link_request, name="link-request"),
]

# /cohorts/…: those that are over
archive_urls = [
    path("cohorts/archived/", archive.archived_cohorts, name="archived-cohorts"),
    path("cohorts/<int:cohort_pk>/archive/", archive.archive_cohort, name="archive-cohort"),
    path("cohorts/<int:cohort_pk>/reopen/", archive.reopen_cohort, name="reopen-cohort"),
]

# /cohorts/<cohort>/…: who is in it, who teaches it
people_urls = [
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/move/",
        people.move_person,
        name="move-person",
    ),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/remove/",
        people.remove_person,
        name="remove-person",
    ),
    path("cohorts/<int:cohort_pk>/instructors/", people.instructors, name="instructors"),
    path(
        "cohorts/<int:cohort_pk>/instructors/<int:fellow_pk>/remove/",
        people.instructor_removed,
        name="instructor-removed",
    ),
]

# /cohorts/…roster/…: people by CSV
roster_urls = [
    path("cohorts/roster/", roster.roster, name="roster"),
    path("cohorts/roster/template/", roster.roster_template, name="roster-template"),
    path("cohorts/roster/<str:token>/", roster.roster_upload, name="roster-upload"),
    path("cohorts/<int:cohort_pk>/roster/", roster.roster, name="cohort-roster"),
]

urlpatterns = [
    *door_urls,
    *account_urls,
    *join_urls,
    *cohort_urls,
    *archive_urls,
    *people_urls,
    *roster_urls,
]
