from django.urls import path

from exercises.bench.views import practicals, replay, sheets, worktop

urlpatterns = [
    # /bench/…: the practice bench
    path("bench/", practicals.bench, name="bench-practice"),
    path("bench/sheet/", sheets.bench_sheet, name="bench-sheet"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/bench-sheet/",
        sheets.cohort_bench_sheet,
        name="cohort-bench-sheet",
    ),
    path("bench/shown/<str:token>/", worktop.bench_shown, name="bench-shown"),
    path("bench/at/<str:token>/", worktop.bench_run, name="bench-run"),
    path("bench/at/<str:token>/do/", worktop.bench_do, name="bench-do"),
    path("bench/at/<str:token>/step/", worktop.bench_step, name="bench-step"),
    path("bench/at/<str:token>/hint/", worktop.bench_hint, name="bench-hint"),
    path("bench/at/<str:token>/again/", practicals.bench_again, name="bench-again"),
    path("bench/at/<str:token>/debrief/", replay.bench_debrief, name="bench-debrief"),
    path("bench/at/<str:token>/steps/<int:number>/", replay.bench_replay, name="bench-replay"),
    path("bench/<slug:slug>/", practicals.practical, name="practical"),
]
