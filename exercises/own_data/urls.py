from django.urls import path

from exercises.own_data.views import details, kept

urlpatterns = [
    # /account/details/: a name that others answer for
    path("account/details/", details.details, name="details"),
    # /account/…, /cohorts/<cohort>/people/…: all that is kept about somebody
    path("account/everything/", kept.own_data, name="own-data"),
    path("account/delete/", kept.delete_account, name="delete-account"),
    path(
        "cohorts/<int:cohort_pk>/people/<int:person_pk>/delete/",
        kept.delete_person,
        name="delete-person",
    ),
]
