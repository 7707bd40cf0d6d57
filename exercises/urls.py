from django.urls import include, path

ROOMS = (
    "own_data",
    "today",
    "practice",
    "bench",
    "assignments",
    "desk",
    "reviews",
    "record",
    "board",
    "items",
    "sign_offs",
    "results",
)

urlpatterns = [path("", include(f"exercises.{room}.urls")) for room in ROOMS]
