from django.urls import path

from exercises.items import views

urlpatterns = [
    # /cohorts/<cohort>/items/…: what the answers say about the drills
    path("cohorts/<int:cohort_pk>/items/", views.items, name="items"),
    path("cohorts/<int:cohort_pk>/items/<slug:slug>/", views.items_of_kind, name="items-of-kind"),
]
