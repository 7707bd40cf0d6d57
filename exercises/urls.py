from django.urls import include, path

# Addresses are tried in this order: what is asked for most often comes first.
ROOMS = (
    "practice",
    "own_data",
    "today",
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
